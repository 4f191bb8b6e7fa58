package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.model.finding.Finding;

class HostileXlsxTest {

    @TempDir
    private Path folder;

    private Finding refusal(HandmadeXlsx workbook) throws IOException {
        return Told.refusal(workbook.write(folder.resolve("book.xlsx")));
    }

    @Test
    void anExternalEntityIsRefusedWhereverItStands() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "secret");
        String doctype = "<!DOCTYPE x [<!ENTITY e SYSTEM \"%s\">]>".formatted(secret.toUri());
        String sheet = "<worksheet><sheetData><row><c t=\"inlineStr\"><is><t>&e;</t></is></c></row></sheetData>"
                + "</worksheet>";
        assertEquals("workbook-hostile", refusal(HandmadeXlsx.ofSheet(doctype + sheet)).code());
        HandmadeXlsx plain = HandmadeXlsx.ofRows("<row><c t=\"s\"><v>0</v></c></row>");
        assertEquals("workbook-hostile", refusal(plain.part("xl/sharedStrings.xml",
                doctype + "<sst><si><t>&e;</t></si></sst>")).code());
        assertEquals("workbook-hostile", refusal(plain.part("xl/styles.xml", doctype + "<styleSheet/>")).code());
        assertEquals("workbook-hostile", refusal(plain.part("_rels/.rels", doctype + "<Relationships/>")).code());
    }

    @Test
    void entitiesThatMultiplyAreRefused() throws IOException {
        assertEquals("workbook-hostile", refusal(HandmadeXlsx.ofSheet("""
                <!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>
                <worksheet><sheetData><row><c t="str"><v>&b;</v></c></row></sheetData></worksheet>""")).code());
        assertEquals("workbook-hostile", refusal(HandmadeXlsx.ofRows("<row><c t=\"str\"><v>&b;</v></c></row>")).code());
    }

    @Test
    void aZipBombIsRefusedBeforeItIsUnpacked() throws IOException {
        Path file = bomb("xl/worksheets/sheet1.xml", "<worksheet><sheetData>", "<row/>", 200 << 20);
        assertTrue(Files.size(file) < 1 << 20);
        assertEquals("file-too-large", Told.refusal(file).code());
    }

    @Test
    void aTextThatFillsTheMemoryIsRefused() throws IOException {
        assertEquals("file-too-large", Told.refusal(
                bomb("xl/worksheets/sheet1.xml", "<worksheet><sheetData><row><c><v>", "0000000000", 8 << 20)).code());
        assertEquals("file-too-large", Told.refusal(
                bomb("xl/worksheets/sheet1.xml", "<worksheet a='", "0000000000", 8 << 20)).code());
        assertEquals("file-too-large", Told.refusal(
                bomb("xl/sharedStrings.xml", "<sst><si>", "<t>aaaaaaaaaaaa</t>", 64 << 20)).code());
    }

    private Path bomb(String part, String start, String filling, int length) throws IOException {
        Path source = HandmadeXlsx.ofRows("").without(part).write(folder.resolve("source.xlsx"));
        Path file = folder.resolve("bomb.xlsx");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file));
                ZipOutputStream zip = new ZipOutputStream(out);
                java.util.zip.ZipFile parts = new java.util.zip.ZipFile(source.toFile())) {
            for (ZipEntry entry : java.util.Collections.list(parts.entries())) {
                zip.putNextEntry(new ZipEntry(entry.getName()));
                parts.getInputStream(entry).transferTo(zip);
            }
            zip.putNextEntry(new ZipEntry(part));
            zip.write(start.getBytes(StandardCharsets.US_ASCII));
            byte[] block = filling.repeat(10_000).getBytes(StandardCharsets.US_ASCII);
            for (long written = 0; written < length; written += block.length) {
                zip.write(block);
            }
        }
        return file;
    }

    @Test
    void aWorkbookCutOffAnywhereIsRefused() throws IOException {
        byte[] whole = Files.readAllBytes(HandmadeXlsx.ofRows("<row><c><v>1</v></c></row>")
                .write(folder.resolve("whole.xlsx")));
        for (int length = 4; length < whole.length; length += 37) {
            Path cut = Files.write(folder.resolve("cut.xlsx"), Arrays.copyOf(whole, length));
            assertEquals("workbook-truncated", Told.refusal(cut).code(), "after %d bytes".formatted(length));
        }
    }

    @Test
    void aSingleChangedByteIsNoticed() throws IOException {
        Path file = HandmadeXlsx.ofRows("<row><c><v>" + "1234567890".repeat(3) + "</v></c></row>")
                .write(folder.resolve("book.xlsx"));
        byte[] bytes = Files.readAllBytes(file);
        int refused = 0;
        int tries = 0;
        int directory = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("PK\1\2");
        for (int at = 40; at < directory; at += 11) {
            byte[] changed = bytes.clone();
            changed[at] ^= 0x10;
            tries++;
            try {
                String told = Told.of(Files.write(folder.resolve("changed.xlsx"), changed)).toString();
                assertEquals("1: A/N=1.23456789012346E+29\n", told, "byte " + at + " changed what is read");
            } catch (slotledger.intake.IntakeException expected) {
                refused++;
            }
        }
        assertTrue(refused * 2 > tries, "%d of %d".formatted(refused, tries));
    }

    @Test
    void aNameWithAPathReachesNothingOutside() throws Exception {
        Path inner = Files.createDirectories(folder.resolve("a/b"));
        Path file = HandmadeXlsx.ofRows("<row><c><v>1</v></c></row>").part("../../evil.txt", "evil")
                .part("/../evil2.txt", "evil").write(inner.resolve("book.xlsx"));
        assertEquals("1: A/N=1\n", Told.of(file).toString());
        assertFalse(Files.exists(folder.resolve("evil.txt")));
        assertFalse(Files.exists(inner.resolve("evil2.txt")));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<row r='1'><c r='A1' t='s'><v>99</v></c></row>",
        "<row r='1'><c r='A1' t='s'><v>x</v></c></row>",
        "<row r='1'><c r='A1'><v>eight</v></c></row>",
        "<row r='1'><c r='A1'><v>NaN</v></c></row>",
        "<row r='1'><c r='A1' t='zz'><v>1</v></c></row>",
        "<row r='1'><c r='XFE1'><v>1</v></c></row>",
        "<row r='1'><c r='11'><v>1</v></c></row>",
        "<row r='99999999999'><c><v>1</v></c></row>",
        "<row r='0'><c><v>1</v></c></row>",
        "<row r='1'><c><v>1</c></row>",
        "<row r='1'><c><v>1</v></c></row></sheetData></worksheet><worksheet><sheetData>"})
    void damageSaysWhereItIs(String rows) throws IOException {
        Finding finding = refusal(HandmadeXlsx.ofRows(rows));
        assertEquals("workbook-damaged", finding.code());
        assertEquals("book.xlsx", finding.place().file());
        assertEquals("Data", finding.place().sheet());
    }

    @Test
    void damageNamesItsRow() throws IOException {
        Finding finding = refusal(HandmadeXlsx.ofRows("<row r='7'><c r='A7'><v>eight</v></c></row>"));
        assertEquals(OptionalInt.of(7), finding.place().row());
        assertTrue(finding.message().contains("eight"), finding.message());
    }

    @Test
    void missingPartsAreDamage() throws IOException {
        for (String part : new String[] {"xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/sharedStrings.xml",
            "xl/_rels/workbook.xml.rels"}) {
            assertEquals("workbook-damaged", refusal(HandmadeXlsx.ofRows("").without(part)).code(), part);
        }
    }

    @Test
    void nestingWithoutEndIsDamage() throws IOException {
        assertEquals("workbook-damaged", refusal(HandmadeXlsx.ofRows("<a>".repeat(100_000))).code());
    }
}
