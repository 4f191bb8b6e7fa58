package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.task.CancelledException;
import slotledger.model.task.Progress;

class SheetFilesTest {

    @TempDir
    private Path folder;

    private void refused(String code, Path file) {
        Finding finding = Told.refusal(file);
        assertEquals(code, finding.code());
        assertEquals(Severity.ERROR, finding.severity());
        assertEquals(BadSheetException.nameOf(file), finding.place().file());
        assertFalse(finding.expected().isEmpty());
        assertFalse(finding.remedy().isEmpty());
    }

    private Path file(String name, String content) throws IOException {
        return Files.writeString(folder.resolve(name), content, StandardCharsets.ISO_8859_1);
    }

    private Path zip(String name, String... parts) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (String part : parts) {
                zip.putNextEntry(new ZipEntry(part));
                zip.write(part.getBytes(StandardCharsets.UTF_8));
            }
        }
        return file;
    }

    @Test
    void whatIsNotThereOrNoFileIsRefused() {
        refused("file-missing", folder.resolve("none.xlsx"));
        refused("file-is-folder", folder);
    }

    @Test
    void anEmptyFileIsRefusedWhateverItsName() throws IOException {
        for (String name : List.of("a.xlsx", "a.xls", "a.csv")) {
            refused("file-empty", file(name, ""));
        }
    }

    @Test
    void otherKindsOfFileAreNamedWhateverTheirName() throws IOException {
        refused("file-is-archive", zip("fleet.xlsx", "fleet.csv"));
        refused("file-is-other-spreadsheet", zip("fleet2.xlsx", "mimetype", "content.xml"));
        refused("file-is-other-spreadsheet", zip("fleet3.xlsx", "[Content_Types].xml", "xl/workbook.bin"));
        refused("file-is-other-spreadsheet", zip("fleet4.xlsx", "Index/Document.iwa"));
        refused("file-is-document", zip("fleet5.xlsx", "[Content_Types].xml", "word/document.xml"));
        refused("file-is-pdf", file("fleet6.xlsx", "%PDF-1.7\n1 0 obj"));
        refused("file-is-web-page", file("fleet.xls", "\n<html xmlns:x='urn'><table><tr><td>8 GB</td></tr></table>"));
        refused("file-is-web-page", file("fleet7.xls", "<!DOCTYPE html><table>"));
        refused("file-is-other-spreadsheet",
                file("fleet8.xls", "<?xml version='1.0'?><?mso-application progid=\"Excel.Sheet\"?><Workbook/>"));
        refused("file-is-xml", file("fleet9.xls", "<?xml version='1.0'?><machines/>"));
        refused("file-is-archive", file("fleet.csv", "\u001f\u008b\b\0\0"));
        refused("file-is-archive", file("fleet10.csv", "Rar!\u001a\u0007"));
        refused("file-is-document", file("fleet11.csv", "{\\rtf1\\ansi"));
        refused("workbook-truncated", file("fleet12.xlsx", "PK\3\4"));
    }

    @Test
    void textThatBeginsLikeAPictureIsText() throws Exception {
        assertEquals("1: A=BMC address B=RAM\n2: A=x B=8\n",
                Told.of(file("bmc.csv", "BMC address;RAM\nx;8\n")).toString());
    }

    @Test
    void aTextFileNamedLikeAWorkbookIsRead() throws Exception {
        assertEquals("1: A=Asset B=RAM\n2: A=1 B=8\n", Told.of(file("export.xls", "Asset\tRAM\n1\t8\n")).toString());
    }

    @Test
    void aWorkbookLockedByAPasswordIsRefused() throws Exception {
        Path file = folder.resolve("locked.xlsx");
        try (POIFSFileSystem container = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.standard).getEncryptor();
            encryptor.confirmPassword("open sesame");
            try (OutputStream out = encryptor.getDataStream(container)) {
                out.write(Files.readAllBytes(HandmadeXlsx.ofRows("").write(folder.resolve("plain.xlsx"))));
            }
            try (OutputStream out = Files.newOutputStream(file)) {
                container.writeFilesystem(out);
            }
        }
        refused("workbook-locked", file);
    }

    @Test
    void anOldWorkbookLockedByAPasswordIsRefused() throws Exception {
        Path file = folder.resolve("locked.xls");
        Biff8EncryptionKey.setCurrentUserPassword("open sesame");
        try (HSSFWorkbook workbook = new HSSFWorkbook(); OutputStream out = Files.newOutputStream(file)) {
            workbook.createSheet("Data").createRow(0).createCell(0).setCellValue(8);
            workbook.write(out);
        } finally {
            Biff8EncryptionKey.setCurrentUserPassword(null);
        }
        refused("workbook-locked", file);
    }

    @Test
    void anOldDocumentIsRefused() throws Exception {
        Path file = folder.resolve("letter.xls");
        try (POIFSFileSystem container = new POIFSFileSystem(); OutputStream out = Files.newOutputStream(file)) {
            container.createDocument(new java.io.ByteArrayInputStream(new byte[] {1}), "WordDocument");
            container.writeFilesystem(out);
        }
        refused("file-is-document", file);
    }

    @Test
    void progressRunsToTheEndInEveryKindOfFile() throws Exception {
        Path csv = file("many.csv", "Asset,RAM\n" + "PC,8 GB\n".repeat(200_000));
        Path xlsx = HandmadeXlsx.ofRows("<row><c><v>1</v></c></row>".repeat(50_000)).write(folder.resolve("many.xlsx"));
        for (Path file : List.of(csv, xlsx)) {
            List<Double> steps = new ArrayList<>();
            new SheetFiles().read(file, new Told(), new Progress() {
                @Override
                public void step(String what, double done) {
                    assertEquals("Reading " + file.getFileName(), what);
                    steps.add(done);
                }

                @Override
                public boolean isCancelled() {
                    return false;
                }
            });
            assertTrue(steps.size() > 4, "steps " + steps);
            assertEquals(steps.stream().sorted().toList(), steps);
            assertEquals(1.0, steps.get(steps.size() - 1));
        }
    }

    @Test
    void cancellingStopsInTheMiddle() throws Exception {
        Path csv = file("many.csv", "Asset,RAM\n" + "PC,8 GB\n".repeat(200_000));
        Path xlsx = HandmadeXlsx.ofRows("<row><c><v>1</v></c></row>".repeat(50_000)).write(folder.resolve("many.xlsx"));
        for (Path file : List.of(csv, xlsx)) {
            int[] rows = {0};
            SheetVisitor counting = new SheetVisitor() {
                @Override
                public void startSheet(String name, boolean hidden) {
                }

                @Override
                public void row(int number, List<Cell> cells) {
                    rows[0]++;
                }

                @Override
                public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
                }
            };
            Progress impatient = new Progress() {
                @Override
                public void step(String what, double done) {
                }

                @Override
                public boolean isCancelled() {
                    return rows[0] > 100;
                }
            };
            assertThrows(CancelledException.class, () -> new SheetFiles().read(file, counting, impatient));
            assertTrue(rows[0] < 49_000, "rows told before it stopped: " + rows[0]);
        }
    }

    @Test
    void whatTheVisitorThrowsComesThroughUnchanged() throws Exception {
        Path xls = folder.resolve("one.xls");
        try (HSSFWorkbook workbook = new HSSFWorkbook(); OutputStream out = Files.newOutputStream(xls)) {
            workbook.createSheet("Data").createRow(0).createCell(0).setCellValue(8);
            workbook.write(out);
        }
        Path xlsx = HandmadeXlsx.ofRows("<row><c><v>1</v></c></row>").write(folder.resolve("one.xlsx"));
        for (Path file : List.of(xls, xlsx, file("one.csv", "a,b\n"))) {
            assertThrows(UnsupportedOperationException.class, () -> new SheetFiles().read(file, new SheetVisitor() {
                @Override
                public void startSheet(String name, boolean hidden) {
                }

                @Override
                public void row(int number, List<Cell> cells) {
                    throw new UnsupportedOperationException();
                }

                @Override
                public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
                }
            }, Progress.NONE), file.toString());
        }
    }
}
