package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** Files that are not what they claim to be, and texts that try to become something else on the way out. */
class HostileInputTest {

    private static final String LONG_TAG = "L".repeat(300);

    private static final List<String> TAGS = List.of(
            "../../../escaped", "..\\..\\escaped", "/etc/cron.d/escaped", "=1+1", "+1+1", "-1+1", "@SUM(1)",
            "A\u202E1-TXE", LONG_TAG, "CON", "a<b>&\"'", "=HYPERLINK(\"file:x\")");

    @TempDir
    Path top;

    private FleetDesk desk;
    private Path project;

    @BeforeEach
    void layOut() throws IOException {
        desk = Demo.desk();
        Path demo = Demo.folder();
        project = Files.createDirectory(top.resolve("project"));
        Path boards = Files.createDirectory(project.resolve("boards"));
        try (Stream<Path> files = Files.list(demo.resolve("boards"))) {
            for (Path file : files.toList()) {
                Files.copy(file, boards.resolve(file.getFileName()));
            }
        }
        Files.copy(demo.resolve("offers.xlsx"), project.resolve("offers.xlsx"));
        Files.copy(demo.resolve("policy.yaml"), project.resolve("policy.yaml"));
    }

    @Test
    void anEmptyFileIsRefusedByName() throws IOException {
        refused("fleet.xlsx", new byte[0]);
    }

    @Test
    void aRenamedArchiveIsRefusedByName() throws IOException {
        Path zip = top.resolve("x.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            out.putNextEntry(new ZipEntry("../../escaped.txt"));
            out.write("no workbook".getBytes(StandardCharsets.UTF_8));
        }
        refused("fleet.xlsx", Files.readAllBytes(zip));
    }

    @Test
    void aTruncatedWorkbookIsRefusedByName() throws IOException {
        byte[] whole = Files.readAllBytes(project.resolve("offers.xlsx"));
        refused("fleet.xlsx", Arrays.copyOf(whole, whole.length / 2));
    }

    @Test
    void aWorkbookLockedByAPasswordSaysSo() throws IOException {
        Path locked = project.resolve("fleet.xls");
        Biff8EncryptionKey.setCurrentUserPassword("secret");
        try (HSSFWorkbook book = new HSSFWorkbook(); OutputStream out = Files.newOutputStream(locked)) {
            book.createSheet("x").createRow(0).createCell(0).setCellValue("Asset tag");
            book.write(out);
        } finally {
            Biff8EncryptionKey.setCurrentUserPassword(null);
        }
        assertTrue(message().contains("password"), message());
    }

    @Test
    void externalEntitiesAreNeverFetched() throws IOException {
        Path secret = Files.writeString(top.resolve("secret.txt"), "TOP-SECRET");
        Path file = project.resolve("fleet.xlsx");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            entry(out, "[Content_Types].xml", "<?xml version=\"1.0\"?><Types xmlns=\"http://schemas.openxmlformats.org/"
                    + "package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd."
                    + "openxmlformats-package.relationships+xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType="
                    + "\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/></Types>");
            entry(out, "_rels/.rels", "<?xml version=\"1.0\"?><Relationships xmlns=\"http://schemas.openxmlformats.org/"
                    + "package/2006/relationships\"><Relationship Id=\"r1\" Type=\"http://schemas.openxmlformats.org/"
                    + "officeDocument/2006/relationships/officeDocument\" Target=\"xl/workbook.xml\"/>"
                    + "</Relationships>");
            entry(out, "xl/workbook.xml", "<?xml version=\"1.0\"?><!DOCTYPE w [<!ENTITY x SYSTEM \"" + secret.toUri()
                    + "\">]><workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheets>"
                    + "<sheet name=\"&x;\" sheetId=\"1\"/></sheets></workbook>");
        }
        assertFalse(message().contains("TOP-SECRET"), message());
        assertTrue(message().contains("fleet.xlsx"), message());
    }

    @Test
    void noTagBecomesAFormulaOrLeavesTheOutputFolder() throws Exception {
        Files.writeString(project.resolve("fleet.csv"), TAGS.stream()
                .map(tag -> '"' + tag.replace("\"", "\"\"") + "\",Kestrin,KB-515,R1,Lab PC,4GB DDR4-2400,")
                .collect(Collectors.joining("\n", "Asset tag,Make,Model,Room,Use,DIMM1,DIMM2\n", "\n")));
        Set<String> outside = names(top);
        Survey survey = desk.survey(Demo.open(project), Progress.NONE);
        assertEquals(TAGS, survey.fleet().machines().stream().map(Machine::tag).map(Object::toString).toList());
        Plan plan = desk.plan(survey, Progress.NONE);
        assertFalse(plan.work().isEmpty());
        desk.export(survey, plan, top.resolve("out"), false, Progress.NONE);

        Set<String> added = names(top);
        added.removeAll(outside);
        added.removeIf(name -> name.equals("out") || name.startsWith("out" + File.separator));
        assertEquals(Set.of(), added, "files outside the output folder");
        try (Stream<Path> files = Files.walk(top.resolve("out"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".xlsx")).toList()) {
                noFormulaHoldsATag(file);
            }
        }
        for (String tag : TAGS) {
            assertTrue(desk.reopen(top.resolve("out/plan.json"), survey)
                    .find(new AssetTag(tag)).isPresent(), tag);
        }
    }

    private static void noFormulaHoldsATag(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file); Workbook book = WorkbookFactory.create(in)) {
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            String formula = cell.getCellFormula();
                            assertFalse(formula.equals("1+1") || formula.equals("SUM(1)")
                                            || formula.contains("HYPERLINK"),
                                    file.getFileName() + " " + sheet.getSheetName() + " " + cell.getAddress());
                        }
                    }
                }
            }
        }
    }

    private void refused(String name, byte[] bytes) throws IOException {
        Files.write(project.resolve(name), bytes);
        Set<String> before = names(top);
        assertTrue(message().contains(name), message());
        assertEquals(before, names(top));
    }

    private String message() {
        DeskException refused =
                assertThrows(DeskException.class, () -> desk.survey(Demo.open(project), Progress.NONE));
        assertEquals(DeskException.Trouble.INPUT, refused.trouble());
        return refused.getMessage();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(folder::relativize).map(Path::toString).collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
