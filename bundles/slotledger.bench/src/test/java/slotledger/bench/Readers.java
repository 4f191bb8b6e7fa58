package slotledger.bench;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.sheet.SheetFiles;
import slotledger.intake.internal.sheet.SheetVisitor;
import slotledger.model.task.Progress;

/** One way each to read a workbook; all return the number of cells, and those that give values look at each. */
final class Readers {

    /** The parts that every reader has to go through. */
    private static final List<String> PARTS = List.of("xl/sharedStrings.xml", "xl/worksheets/sheet1.xml");

    private Readers() {
    }

    /** The yardstick: unpacks and parses the bytes, and does nothing with what it finds. */
    static long bareSax(Path file) throws Exception {
        long[] cells = {0};
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (String part : PARTS) {
                try (InputStream in = zip.getInputStream(zip.getEntry(part))) {
                    SAXParserFactory.newDefaultInstance().newSAXParser().parse(in, new DefaultHandler() {
                        @Override
                        public void startElement(String uri, String local, String name, Attributes attributes) {
                            cells[0] += name.equals("c") ? 1 : 0;
                        }
                    });
                }
            }
        }
        return cells[0];
    }

    /** The same with the parser ours is built on. */
    static long bareAalto(Path file) throws Exception {
        long cells = 0;
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (String part : PARTS) {
                try (InputStream in = zip.getInputStream(zip.getEntry(part))) {
                    XMLStreamReader xml = new InputFactoryImpl().createXMLStreamReader(in);
                    while (xml.hasNext()) {
                        boolean starts = xml.next() == XMLStreamConstants.START_ELEMENT;
                        cells += starts && xml.getLocalName().equals("c") ? 1 : 0;
                    }
                    xml.close();
                }
            }
        }
        return cells;
    }

    static long slotledger(Path file) throws Exception {
        long[] cells = {0};
        new SheetFiles().read(file, new SheetVisitor() {
            @Override
            public void startSheet(String name, boolean hidden) {
                // only cells are counted
            }

            @Override
            public void row(int number, List<Cell> row) {
                for (Cell cell : row) {
                    cells[0] += cell.text().isEmpty() ? 0 : 1;
                }
            }

            @Override
            public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
                // only cells are counted
            }
        }, Progress.NONE);
        return cells[0];
    }

    static long fastexcel(Path file) throws Exception {
        long cells = 0;
        try (ReadableWorkbook workbook = new ReadableWorkbook(file.toFile());
                Stream<Row> rows = workbook.getFirstSheet().openStream()) {
            for (var iterator = rows.iterator(); iterator.hasNext();) {
                for (org.dhatim.fastexcel.reader.Cell cell : iterator.next()) {
                    cells += cell != null && !cell.getText().isEmpty() ? 1 : 0;
                }
            }
        }
        return cells;
    }

    static long poiEvents(Path file) throws Exception {
        long[] cells = {0};
        try (OPCPackage container = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
            XSSFReader reader = new XSSFReader(container);
            var counting = new XSSFSheetXMLHandler.SheetContentsHandler() {
                @Override
                public void startRow(int row) {
                    // only cells are counted
                }

                @Override
                public void endRow(int row) {
                    // only cells are counted
                }

                @Override
                public void cell(String name, String text, XSSFComment comment) {
                    cells[0] += text.isEmpty() ? 0 : 1;
                }
            };
            XMLReader xml = XMLHelper.newXMLReader();
            xml.setContentHandler(new XSSFSheetXMLHandler(reader.getStylesTable(), null,
                    new ReadOnlySharedStringsTable(container), counting, new DataFormatter(), false));
            try (InputStream sheet = reader.getSheetsData().next()) {
                xml.parse(new InputSource(sheet));
            }
        }
        return cells[0];
    }

    static long poiUsermodel(Path file) throws Exception {
        long cells = 0;
        DataFormatter formatter = new DataFormatter();
        try (OPCPackage container = OPCPackage.open(file.toFile(), PackageAccess.READ);
                XSSFWorkbook workbook = new XSSFWorkbook(container)) {
            for (org.apache.poi.ss.usermodel.Row row : workbook.getSheetAt(0)) {
                for (org.apache.poi.ss.usermodel.Cell cell : row) {
                    cells += formatter.formatCellValue(cell).isEmpty() ? 0 : 1;
                }
            }
            container.revert();
        }
        return cells;
    }
}
