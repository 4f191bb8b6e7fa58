package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.task.Progress;

/** Large files in a virtual machine of its own with a small heap. */
class LittleMemoryTest {

    private static final int ROWS = 120_000;
    private static final int COLUMNS = 8;

    @TempDir
    private Path folder;

    /** In the small machine: reads the file and prints how many rows and cells there were. */
    public static final class Counting {

        private Counting() {
        }

        public static void main(String[] arguments) throws Exception {
            long[] counts = new long[2];
            new SheetFiles().read(Path.of(arguments[0]), new SheetVisitor() {
                @Override
                public void startSheet(String name, boolean hidden) {
                }

                @Override
                public void row(int number, List<Cell> cells) {
                    counts[0]++;
                    counts[1] += cells.size();
                }

                @Override
                public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
                }
            }, Progress.NONE);
            System.out.println("rows " + counts[0] + " cells " + counts[1]);
        }
    }

    @Test
    void aWorkbookLargerThanTheHeapIsRead() throws Exception {
        Path file = folder.resolve("large.xlsx");
        long bytes = writeLarge(file);
        assertTrue(bytes > 32 << 20, "bytes unpacked: " + bytes);
        assertEquals("rows %d cells %d".formatted(ROWS, (long) ROWS * COLUMNS), readIn("32m", file));
    }

    @Test
    void aLargeTextFileIsRead() throws Exception {
        Path file = Files.writeString(folder.resolve("large.csv"), "PC-0001;8 GB;DDR4\n".repeat(2_000_000));
        assertEquals("rows 2000000 cells 6000000", readIn("16m", file));
    }

    private String readIn(String heap, Path file) throws IOException, InterruptedException {
        Path log = folder.resolve("log.txt");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + heap, "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"),
                Counting.class.getName(), file.toString())
                .redirectErrorStream(true).redirectOutput(log.toFile()).start();
        if (!process.waitFor(120, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
        return Files.readString(log).strip();
    }

    /** Every eighth cell holds a text that no other has. */
    private static long writeLarge(Path file) throws IOException {
        long bytes = 0;
        try (ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            Path frame = HandmadeXlsx.ofRows("").without("xl/sharedStrings.xml").without("xl/worksheets/sheet1.xml")
                    .write(file.resolveSibling("frame.xlsx"));
            try (java.util.zip.ZipFile parts = new java.util.zip.ZipFile(frame.toFile())) {
                for (ZipEntry entry : java.util.Collections.list(parts.entries())) {
                    zip.putNextEntry(new ZipEntry(entry.getName()));
                    parts.getInputStream(entry).transferTo(zip);
                }
            }
            zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
            zip.write("<sst>".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < ROWS; i++) {
                zip.write("<si><t>Asset number %d of the school</t></si>".formatted(i)
                        .getBytes(StandardCharsets.UTF_8));
            }
            zip.write("</sst>".getBytes(StandardCharsets.UTF_8));
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            zip.write("<worksheet><sheetData>".getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < ROWS; i++) {
                StringBuilder row = new StringBuilder("<row r=\"").append(i + 1).append("\" spans=\"1:8\">");
                row.append("<c r=\"A").append(i + 1).append("\" s=\"0\" t=\"s\"><v>").append(i).append("</v></c>");
                for (int j = 1; j < COLUMNS; j++) {
                    row.append("<c r=\"").append((char) ('A' + j)).append(i + 1).append("\" s=\"0\"><v>").append(i * j)
                            .append("</v></c>");
                }
                byte[] line = row.append("</row>").toString().getBytes(StandardCharsets.UTF_8);
                bytes += line.length;
                zip.write(line);
            }
            zip.write("</sheetData></worksheet>".getBytes(StandardCharsets.UTF_8));
        }
        return bytes;
    }
}
