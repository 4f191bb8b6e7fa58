package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lists such as people export, in all delimiters and encodings, come back as they were. */
class CsvRoundTripTest {

    private static final String[] VALUES = {"8GB", "8,5", "12.30", "2x4 GB, DDR4", "a; b", "\u00fc\u00e9",
        "line\nbreak", "say \"hi\"", "15\"", "DDR4-2666", "1.234,50", "x", "A\u20ac", "n/a", "PC 1"};
    private static final List<Charset> CHARSETS = List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE, Charset.forName("windows-1252"));

    @TempDir
    private Path folder;

    @Test
    void listsOfAnyKindComeBackAsTheyWere() throws Exception {
        Random random = new Random(5);
        for (int i = 0; i < 1_000; i++) {
            char delimiter = ",;\t".charAt(random.nextInt(3));
            Charset charset = CHARSETS.get(random.nextInt(CHARSETS.size()));
            List<List<String>> rows = rows(random);
            Path file = write(rows, delimiter, charset, random.nextBoolean() ? "\r\n" : "\n");
            Told.Sheet sheet = Told.of(file).sheet();
            List<List<String>> found = new ArrayList<>();
            sheet.rows.values().forEach(cells -> {
                List<String> values = new ArrayList<>();
                for (Cell cell : cells) {
                    while (values.size() < cell.column() - 1) {
                        values.add("");
                    }
                    values.add(cell.text());
                }
                while (values.size() < rows.get(0).size()) {
                    values.add("");
                }
                found.add(values);
            });
            assertEquals(rows, found, "list %d, delimiter '%s', %s: %s".formatted(i, delimiter, charset,
                    Files.readString(file, charset)));
        }
    }

    private static List<List<String>> rows(Random random) {
        int columns = 2 + random.nextInt(9);
        List<List<String>> rows = new ArrayList<>();
        List<String> heading = new ArrayList<>();
        for (int j = 0; j < columns; j++) {
            heading.add("Column " + (j + 1));
        }
        rows.add(heading);
        for (int count = 1 + random.nextInt(40); count > 0; count--) {
            List<String> row = new ArrayList<>();
            row.add("A" + count);
            for (int j = 1; j < columns; j++) {
                row.add(random.nextInt(5) == 0 ? "" : VALUES[random.nextInt(VALUES.length)]);
            }
            rows.add(row);
        }
        return rows;
    }

    private Path write(List<List<String>> rows, char delimiter, Charset charset, String lineEnd) throws IOException {
        Path file = folder.resolve("list.csv");
        CSVFormat format = CSVFormat.Builder.create().setDelimiter(delimiter).setRecordSeparator(lineEnd).get();
        try (Writer out = Files.newBufferedWriter(file, charset); CSVPrinter printer = new CSVPrinter(out, format)) {
            for (List<String> row : rows) {
                printer.printRecord(row);
            }
        }
        return file;
    }
}
