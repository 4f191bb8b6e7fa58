package slotledger.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Measures the rules on boards of two, four and sixteen sockets, counts all populations of a server, prints both. */
public final class RuleBenchmarks {

    private RuleBenchmarks() {
    }

    /**
     * Runs all.
     *
     * @param arguments the folder for the result
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target").toAbsolutePath();
        Options options = new OptionsBuilder()
                .include(RuleBenchmark.class.getName() + ".*").forks(1)
                .warmupIterations(4).warmupTime(TimeValue.seconds(1))
                .measurementIterations(5).measurementTime(TimeValue.seconds(1))
                .jvmArgs("-XX:+UseSerialGC", "-Xmx512m").shouldFailOnError(true)
                .verbosity(VerboseMode.SILENT).build();
        List<String> lines = new ArrayList<>();
        for (RunResult result : new Runner(options).run()) {
            String name = result.getParams().getBenchmark();
            lines.add(String.format(Locale.ROOT, "%2s sockets, %-8s %-8s %8.2f us +- %.2f",
                    result.getParams().getParam("sockets"),
                    result.getParams().getParam("allowed").equals("true") ? "allowed" : "anyhow",
                    name.substring(name.lastIndexOf('.') + 1), result.getPrimaryResult().getScore(),
                    result.getPrimaryResult().getScoreError()));
        }
        lines.sort(null);
        lines.forEach(System.out::println);
        lines.addAll(PopulationCount.run(16));
        Files.write(folder.resolve("rule-benchmarks.txt"), lines);
    }
}
