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
 * table and writes benchmarks.json. Times are medians; ratios are to the bare unpacking and parsing in the same run.
 */
public final class Benchmarks {

    private static final String YARDSTICK = "bareSax";
    private static final List<String> STREAMING =
            List.of(YARDSTICK, "bareAalto", "slotledger", "fastexcel", "poiEvents");

    private record Case(String title, int rows, List<String> readers, int rounds, int warmups, int shots, String heap) {}

    private record Line(String title, int rows, String heap, String reader, double millis, double ratio) {}

    private static final List<Case> CASES = List.of(
            new Case("first read of a new process", 300_000, STREAMING, 5, 0, 1, "1g"),
            new Case("warm", 300_000, STREAMING, 3, 2, 3, "1g"),
            new Case("warm", 30_000, List.of(YARDSTICK, "slotledger", "poiUsermodel"), 1, 2, 3, "3g"),
            new Case("first read of a new process", 1_000_000, STREAMING, 1, 0, 1, "2g"),
            new Case("in little memory", 1_000_000, List.of(YARDSTICK, "slotledger"), 3, 0, 1, "256m"));

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
        Map<String, List<Double>> times = new TreeMap<>();
        for (int round = 0; round < each.rounds; round++) {
            for (String reader : each.readers) {
                Options options = new OptionsBuilder()
                        .include(ReadingBenchmark.class.getName() + "." + reader + "$").forks(1)
                        .warmupIterations(each.warmups).measurementIterations(each.shots)
                        .param("rows", Integer.toString(each.rows)).param("folder", folder.toString())
                        .jvmArgs("-Xmx" + each.heap, "-XX:+UseSerialGC").shouldFailOnError(true)
                        .verbosity(VerboseMode.SILENT).build();
                for (RunResult result : new Runner(options).run()) {
                    result.getBenchmarkResults().forEach(fork -> fork.getIterationResults().forEach(shot ->
                            times.computeIfAbsent(reader, any -> new ArrayList<>())
                                    .add(shot.getPrimaryResult().getScore())));
                }
            }
        }
        double yardstick = median(times.get(YARDSTICK));
        return each.readers.stream().map(reader -> new Line(each.title, each.rows, each.heap, reader,
                median(times.get(reader)), median(times.get(reader)) / yardstick)).toList();
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    }

    private static void print(List<Line> lines) {
        Line first = lines.get(0);
        System.out.printf(Locale.ROOT, "%n%,d rows of %d cells, heap %s, %s%n", first.rows, LargeWorkbook.COLUMNS,
                first.heap, first.title);
        lines.forEach(line -> System.out.printf(Locale.ROOT, "  %-14s %8.0f ms  %5.2f%n", line.reader, line.millis,
                line.ratio));
    }

    private static String json(List<Line> lines) {
        return lines.stream().map(line -> String.format(Locale.ROOT, """
                  {"case": "%s", "rows": %d, "heap": "%s", "reader": "%s", "millis": %.1f, "ratio": %.3f}""",
                line.title, line.rows, line.heap, line.reader, line.millis, line.ratio))
                .collect(Collectors.joining(",\n", "[\n", "\n]\n"));
    }
}
