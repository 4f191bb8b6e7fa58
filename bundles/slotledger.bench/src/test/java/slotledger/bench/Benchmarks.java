package slotledger.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Measures all readers in turns, several rounds, so that what else the machine does meets all of them alike; prints a
 * table and writes benchmarks.json. Times are medians, by the clock and of the reading thread's processor; ratios are
 * to the bare unpacking and parsing in the same run.
 */
public final class Benchmarks {

    private static final String YARDSTICK = "bareSax";
    private static final List<String> STREAMING =
            List.of(YARDSTICK, "bareAalto", "slotledger", "fastexcel", "poiEvents");

    private record Case(String title, int rows, List<String> readers, int rounds, int warmups, int shots,
            String flags) {}

    private record Times(List<Double> clock, List<Double> processor) {
        Times() {
            this(new ArrayList<>(), new ArrayList<>());
        }
    }

    private record Line(Case of, String reader, double clock, double clockRatio, double processor,
            double processorRatio) {}

    private static final List<Case> CASES = List.of(
            new Case("first read of a new process", 300_000, STREAMING, 3, 0, 1, "-Xmx1g"),
            new Case("first read, quick-start compiler", 300_000, STREAMING, 3, 0, 1, "-Xmx1g -XX:TieredStopAtLevel=1"),
            new Case("warm", 300_000, STREAMING, 2, 2, 3, "-Xmx1g"),
            new Case("warm", 30_000, List.of(YARDSTICK, "slotledger", "poiUsermodel"), 1, 2, 3, "-Xmx3g"),
            new Case("first read of a new process", 1_000_000, STREAMING, 1, 0, 1, "-Xmx2g"),
            new Case("in little memory", 1_000_000, List.of(YARDSTICK, "slotledger"), 3, 0, 1, "-Xmx256m"));

    private Benchmarks() {
    }

    /**
     * Runs all.
     *
     * @param arguments the folder for workbooks and the result
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target").toAbsolutePath();
        List<Line> lines = new ArrayList<>();
        for (Case each : CASES) {
            LargeWorkbook.inFolder(folder, each.rows);
            List<Line> measured = measure(each, folder);
            lines.addAll(measured);
            print(measured);
        }
        Files.writeString(folder.resolve("benchmarks.json"), json(lines));
    }

    private static List<Line> measure(Case each, Path folder) throws RunnerException {
        Map<String, Times> times = new TreeMap<>();
        for (int round = 0; round < each.rounds; round++) {
            for (String reader : each.readers) {
                Options options = new OptionsBuilder()
                        .include(ReadingBenchmark.class.getName() + "." + reader + "$").forks(1)
                        .warmupIterations(each.warmups).measurementIterations(each.shots)
                        .param("rows", Integer.toString(each.rows)).param("folder", folder.toString())
                        .jvmArgs(("-XX:+UseSerialGC " + each.flags).split(" ")).shouldFailOnError(true)
                        .verbosity(VerboseMode.SILENT).build();
                for (RunResult result : new Runner(options).run()) {
                    result.getBenchmarkResults().forEach(fork -> fork.getIterationResults().forEach(shot -> {
                        Times all = times.computeIfAbsent(reader, any -> new Times());
                        all.clock.add(shot.getPrimaryResult().getScore());
                        all.processor.add(shot.getSecondaryResults().get("millis").getScore());
                    }));
                }
            }
        }
        Times yardstick = times.get(YARDSTICK);
        return each.readers.stream().map(reader -> {
            double clock = median(times.get(reader).clock);
            double processor = median(times.get(reader).processor);
            return new Line(each, reader, clock, clock / median(yardstick.clock), processor,
                    processor / median(yardstick.processor));
        }).toList();
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }

    private static void print(List<Line> lines) {
        Case of = lines.get(0).of;
        System.out.printf(Locale.ROOT, "%n%,d rows of %d cells, %s, %s%n", of.rows, LargeWorkbook.COLUMNS, of.title,
                of.flags);
        System.out.printf("  %-14s %11s %6s  %14s %6s%n", "reader", "clock", "ratio", "processor", "ratio");
        lines.forEach(line -> System.out.printf(Locale.ROOT, "  %-14s %8.0f ms %6.2f  %11.0f ms %6.2f%n", line.reader,
                line.clock, line.clockRatio, line.processor, line.processorRatio));
    }

    private static String json(List<Line> lines) {
        return lines.stream().map(line -> String.format(Locale.ROOT, """
                  {"case": "%s", "flags": "%s", "rows": %d, "reader": "%s", "clockMillis": %.1f, "clockRatio": %.3f, \
                "processorMillis": %.1f, "processorRatio": %.3f}""", line.of.title, line.of.flags, line.of.rows,
                line.reader, line.clock, line.clockRatio, line.processor, line.processorRatio))
                .collect(Collectors.joining(",\n", "[\n", "\n]\n"));
    }
}
