package slotledger.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import slotledger.intake.Reading;
import slotledger.intake.internal.DefaultIntake;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.task.CancelledException;
import slotledger.model.task.Progress;

/**
 * Reads a folder with a firmware table for each of 100,000 invented machines, beside the bare cost of reading the
 * bytes. Fails where a machine is lost, where progress goes backwards, or where the work can't be stopped at once.
 */
public final class FirmwareBenchmarks {

    private static final int MACHINES = 100_000;
    private static final int FOLDER_SIZE = 1_000;
    private static final double SECOND = 1e9;

    private FirmwareBenchmarks() {
    }

    /**
     * Runs all.
     *
     * @param arguments the folder for tables and result, and how many machines
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target").toAbsolutePath();
        int count = arguments.length > 1 ? Integer.parseInt(arguments[1]) : MACHINES;
        Path tables = folder.resolve("firmware-" + count);
        if (!Files.exists(tables)) {
            write(tables, count);
        }
        List<String> lines = new ArrayList<>();
        lines.add("%-28s %8s %8s %10s".formatted("machines " + count, "s", "cpu s", "heap MiB"));
        for (int round = 1; round <= 2; round++) {
            lines.add(measured("bytes alone, round " + round, () -> bytes(tables)));
            lines.add(measured("whole fleet, round " + round, () -> fleet(tables, count)));
        }
        lines.add(measured("stopped at a tenth", () -> stopped(tables)));
        lines.forEach(System.out::println);
        Files.write(folder.resolve("firmware-benchmarks.txt"), lines);
    }

    /** What is measured; the value keeps what it made alive until the heap was looked at. */
    private interface Work {
        Object run() throws Exception;
    }

    private static String measured(String what, Work work) throws Exception {
        long start = System.nanoTime();
        long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Object made = work.run();
        double seconds = (System.nanoTime() - start) / SECOND;
        double spent = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor) / SECOND;
        long heap = HeapWatch.used();
        return String.format(Locale.ROOT, "%-28s %8.1f %8.1f %10d%s", what, seconds, spent, heap >> 20,
                made == null ? " (nothing made)" : "");
    }

    private static Object bytes(Path tables) throws IOException {
        long sum = 0;
        List<Path> files;
        try (Stream<Path> walk = Files.walk(tables)) {
            files = walk.filter(Files::isRegularFile).sorted().toList();
        }
        for (Path file : files) {
            sum += Files.readAllBytes(file).length;
        }
        return sum;
    }

    private static Object fleet(Path tables, int count) throws Exception {
        double[] last = {0};
        Reading<ObservedFleet> reading = DefaultIntake.plain().readFleet(List.of(tables), Optional.empty(),
                new Progress() {
                    @Override
                    public void step(String what, double done) {
                        if (done >= 0 && done < last[0]) {
                            throw new IllegalStateException("The progress (%s) must not go back.".formatted(done));
                        }
                        last[0] = Math.max(last[0], done);
                    }

                    @Override
                    public boolean isCancelled() {
                        return false;
                    }
                });
        if (reading.value().machines().size() != count || last[0] < 1) {
            throw new IllegalStateException("There must be %d machines, but there are %d, at progress %s."
                    .formatted(count, reading.value().machines().size(), last[0]));
        }
        return reading;
    }

    private static Object stopped(Path tables) throws Exception {
        AtomicInteger asked = new AtomicInteger();
        double[] last = {0};
        try {
            DefaultIntake.plain().readFleet(List.of(tables), Optional.empty(), new Progress() {
                @Override
                public void step(String what, double done) {
                    last[0] = done;
                }

                @Override
                public boolean isCancelled() {
                    asked.incrementAndGet();
                    return last[0] >= 0.1;
                }
            });
        } catch (CancelledException right) {
            return asked.get();
        }
        throw new IllegalStateException("The work must stop where it is told to.");
    }

    /** Tables of SMBIOS 2.7 (DSP0134) of invented machines: 20 models, two to four slots. */
    private static void write(Path tables, int count) throws IOException {
        for (int i = 0; i < count; i++) {
            Path folder = tables.resolve("room-" + i / FOLDER_SIZE);
            if (i % FOLDER_SIZE == 0) {
                Files.createDirectories(folder);
            }
            Files.write(folder.resolve("K-" + i + ".bin"), table(i));
        }
    }

    private static byte[] table(int machine) {
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        int slots = 2 + machine % 3;
        structure(table, "01 1B 01 00 01 02 03 04" + " 00".repeat(16) + " 06 00 00", "Kestrin",
                "KB-" + (500 + machine % 20), "1", "S" + machine);
        structure(table, "04 2A 04 00 01 03 C6 02" + " 00".repeat(8) + " 03" + " 00".repeat(25), "CPU0", "Corvid",
                "Corvid 5 8400");
        structure(table, "10 17 10 00 03 03 03 00 00 00 04 FE FF %02X 00".formatted(slots) + " 00".repeat(8));
        for (int slot = 0; slot < slots; slot++) {
            boolean filled = slot < 1 + machine % 2;
            structure(table, "11 22 %02X 00 10 00 FE FF 40 00 40 00 %s 09 00 01 02 1A 80 40 6A 0A 03 04 00 05 01"
                    .formatted(0x11 + slot, filled ? "00 20" : "00 00") + " 00 00 00 00 6A 0A",
                    "DIMM" + (slot + 1), "BANK " + slot, "Tallow", "%08X".formatted(machine * 4 + slot), "TL-8G-2666");
        }
        structure(table, "7F 04 FF FE");
        return table.toByteArray();
    }

    private static void structure(ByteArrayOutputStream table, String hex, String... texts) {
        for (String digits : hex.split(" ")) {
            table.write(Integer.parseInt(digits, 16));
        }
        for (String text : texts) {
            table.writeBytes(text.getBytes(StandardCharsets.ISO_8859_1));
            table.write(0);
        }
        table.write(0);
        if (texts.length == 0) {
            table.write(0);
        }
    }
}
