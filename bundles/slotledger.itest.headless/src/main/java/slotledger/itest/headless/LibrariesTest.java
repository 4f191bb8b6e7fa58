package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import com.lowagie.text.Document;
import com.lowagie.text.Paragraph;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfWriter;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.librepdf.openpdf.fonts.Liberation;
import slotledger.lib.solver.NativeSolver;
import slotledger.lib.solver.NativeSolverException;

/** The wrapped libraries do their work inside the framework, where class loaders differ from a plain class path. */
class LibrariesTest {

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aWorkbookIsWrittenAndReadAgain(boolean xml) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = xml ? new XSSFWorkbook() : new HSSFWorkbook()) {
            workbook.createSheet("fleet").createRow(0).createCell(0).setCellValue("8 GB");
            workbook.write(bytes);
        }
        try (Workbook workbook = WorkbookFactory.create(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertEquals("8 GB", workbook.getSheet("fleet").getRow(0).getCell(0).getStringCellValue());
        }
    }

    @Test
    void aPageIsWrittenWithAFontOfOurOwn() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Document document = new Document();
        PdfWriter.getInstance(document, bytes);
        document.open();
        document.add(new Paragraph("Slot A1 → 8 GB", Liberation.SANS.create()));
        document.close();
        try (PdfReader reader = new PdfReader(bytes.toByteArray())) {
            assertEquals("Slot A1 → 8 GB", new PdfTextExtractor(reader).getTextFromPage(1).strip());
        }
    }

    @Test
    void theSolverLoadsFromItsFragment() throws NativeSolverException {
        NativeSolver.load();
        MPSolver solver = MPSolver.createSolver("HIGHS");
        solver.setSolverSpecificParametersAsString("output_flag=false");
        MPVariable packs = solver.makeIntVar(0, 100, "packs");
        solver.makeConstraint(7, 100, "modules needed").setCoefficient(packs, 2);
        solver.objective().setCoefficient(packs, 1);
        assertEquals(MPSolver.ResultStatus.OPTIMAL, solver.solve());
        assertEquals(4, Math.round(packs.solutionValue()));
    }
}
