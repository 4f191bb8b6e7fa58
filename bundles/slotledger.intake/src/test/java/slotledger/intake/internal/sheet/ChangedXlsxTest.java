package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.IntakeException;

/** Workbooks whose container is whole but whose parts were changed at random. */
class ChangedXlsxTest {

    private static final List<String> PARTS = List.of("xl/worksheets/sheet1.xml", "xl/sharedStrings.xml",
            "xl/styles.xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", "_rels/.rels");
    private static final String LETTERS = "<>/\"'=&;#x!-?[]019azAZ \n\0\u00e9";

    @TempDir
    private Path folder;

    private static HandmadeXlsx workbook() {
        return HandmadeXlsx.ofSheet("""
                <?xml version="1.0" encoding="UTF-8"?>\
                <worksheet xmlns="m"><cols><col min="1" max="2" hidden="1"/></cols><sheetData>\
                <row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" s="1"><v>45352</v></c></row>\
                <row r="2" hidden="1"><c r="A2" t="inlineStr"><is><r><t>x&amp;&#65;</t></r></is></c>\
                <c r="B2"><f>A1</f></c></row></sheetData>\
                <mergeCells><mergeCell ref="A1:B2"/></mergeCells><!-- end --></worksheet>""")
                .strings("<si><t xml:space=\"preserve\"> 8 GB</t></si>").styles("General", "yyyy-mm-dd");
    }

    @Test
    void neverBringAnythingButAFinding() throws IOException {
        Random random = new Random(2026);
        int refused = 0;
        int tries = 1_500;
        for (int i = 0; i < tries; i++) {
            String part = PARTS.get(random.nextInt(PARTS.size()));
            byte[] content = workbook().part(part);
            for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
                content[random.nextInt(content.length)] = random.nextInt(4) == 0 ? (byte) random.nextInt()
                        : (byte) LETTERS.charAt(random.nextInt(LETTERS.length()));
            }
            Path file = workbook().part(part, content).write(folder.resolve("book.xlsx"));
            try {
                Told.of(file);
            } catch (IntakeException expected) {
                refused++;
            } catch (RuntimeException | StackOverflowError escaped) {
                throw new AssertionError("try " + i + ", " + part + ": " + new String(content), escaped);
            }
        }
        assertTrue(refused > tries / 4, "refused: " + refused);
        assertTrue(refused < tries, "refused: " + refused);
    }
}
