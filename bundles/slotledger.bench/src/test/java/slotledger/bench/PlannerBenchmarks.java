package slotledger.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Plans made-up fleets of all kinds and sizes, each in a process of its own, one after the other; prints a table and
 * writes planner-benchmarks.md and planner-benchmarks.json.
 */
public final class PlannerBenchmarks {

    private static final Pattern MEMBER = Pattern.compile("\"(\\w+)\": (?:\"([^\"]*)\"|([^,}]+))");
    private static final int HUNDRED = 100;

    private enum Kind { PLAN, UNGROUPED }

    private record Case(Kind kind, String heap, List<String> arguments, String earlier) {}

    private static final List<Case> CASES = List.of(
            plan("2g", "OFFICE", 100, ""),
            plan("2g", "OFFICE", 1_000, "8.4 s, 0.20 %"),
            plan("2g", "OFFICE", 10_000, ""),
            plan("2g", "OFFICE", 100_000, ""),
            plan("3g", "OFFICE", 1_000_000, "5.0 s, 0.0017 %"),
            plan("3g", "TRAPS", 1_000, ""),
            plan("3g", "TRAPS", 1_000_000, "8.4 s, 0.003 %"),
            plan("3g", "PULLED", 1_000, ""),
            plan("3g", "PULLED", 1_000_000, "1.4 s, 0.0014 %"),
            plan("3g", "TIGHT", 1_000, ""),
            plan("3g", "TIGHT", 1_000_000, ""),
            plan("2g", "SERVERS", 100_000, "24.3 s, 0.011 %"),
            plan("4g", "BOARDS_300", 100_000, "17.7 s, 0.031 %"),
            plan("4g", "BOARDS_1000", 100_000, "198 s, 0.17 %"),
            plan("4g", "ALL_DIFFERENT", 1_000_000, "100.7 s, 0.010 %"),
            ungrouped("HIGHS", 1_000, "2.0 % after 45 s"), ungrouped("CBC", 1_000, "6.7 % after 45 s"),
            ungrouped("SCIP", 1_000, ""), ungrouped("HIGHS", 10_000, ""),
            ungrouped("CBC", 10_000, "no plan after 60 s"), ungrouped("SCIP", 10_000, ""));

    private PlannerBenchmarks() {
    }

    /**
     * Runs all, or those of which a case's words contain what is asked for.
     *
     * @param arguments the folder for the result; then words such as OFFICE or UNGROUPED or 1000
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments.length > 0 ? arguments[0] : "target").toAbsolutePath();
        List<String> asked = List.of(arguments).subList(Math.min(1, arguments.length), arguments.length);
        List<String> json = new ArrayList<>();
        List<String> plans = new ArrayList<>(List.of(
                "| case | machines | classes, s | listing, s | solving, s | expanding, s | audit, s | in all, s"
                        + " | gap searched | gap exact | heap, MiB | process, MiB | bytes a machine | cost"
                        + " | machine by machine | prototype |",
                "|---" + "|---:".repeat(14) + "|---|"));
        List<String> others = new ArrayList<>(List.of(
                "| solver, one row a machine | machines | limit, s | outcome | gap | prototype |",
                "|---|---:|---:|---|---:|---|"));
        for (Case each : CASES) {
            List<String> words = new ArrayList<>(each.arguments());
            words.add(each.kind().name());
            if (!asked.isEmpty() && !words.containsAll(asked)) {
                continue;
            }
            Optional<String> line = run(each);
            line.ifPresent(json::add);
            String row = each.kind() == Kind.PLAN ? planRow(each, line) : otherRow(each, line);
            (each.kind() == Kind.PLAN ? plans : others).add(row);
            System.out.println(row);
            Files.write(folder.resolve("planner-benchmarks.json"), List.of(
                    json.stream().collect(Collectors.joining(",\n", "[\n", "\n]"))));
            Files.writeString(folder.resolve("planner-benchmarks.md"),
                    String.join("\n", plans) + "\n\n" + String.join("\n", others) + "\n");
        }
    }

    private static Case plan(String heap, String of, int machines, String earlier) {
        return new Case(Kind.PLAN, heap, List.of(of, Integer.toString(machines), "1"), earlier);
    }

    private static Case ungrouped(String solver, int machines, String earlier) {
        return new Case(Kind.UNGROUPED, "4g", List.of("OFFICE", Integer.toString(machines), "1", solver, "60"),
                earlier);
    }

    /** The line of JSON the process ends with; nothing where it fails, which its own output tells. */
    private static Optional<String> run(Case each) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx" + each.heap(),
                "-XX:+UseParallelGC", "-classpath", System.getProperty("java.class.path"),
                (each.kind() == Kind.PLAN ? PlannerRun.class : UngroupedRun.class).getName()));
        command.addAll(each.arguments());
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines().filter(line -> line.startsWith("{")).toList();
        return process.waitFor() == 0 && !lines.isEmpty() ? Optional.of(lines.get(lines.size() - 1)) : Optional.empty();
    }

    private static String planRow(Case each, Optional<String> line) {
        if (line.isEmpty()) {
            return "| %s | %s | failed%s %s |".formatted(each.arguments().get(0), each.arguments().get(1),
                    " |".repeat(13), each.earlier());
        }
        Map<String, String> found = members(line.get());
        return "| " + String.join(" | ", found.get("case"), found.get("machines"), found.get("classes"),
                found.get("listing"), found.get("solving"), found.get("expanding"), found.get("audit"),
                found.get("total"), gap(found, "costBound", "weightBound"), gap(found, "costSafe", "weightSafe"),
                found.get("heapMiB"), found.get("processMiB"), found.get("bytesAMachine"), found.get("cost"),
                alone(found), each.earlier()) + " |";
    }

    /** Of the cost; where that isn't all, of the weight as well. */
    private static String gap(Map<String, String> found, String costBound, String weightBound) {
        double cost = number(found, "cost");
        double weight = number(found, "weight");
        String text = String.format(Locale.ROOT, "%.4f %%", HUNDRED * (cost - number(found, costBound)) / cost);
        double more = number(found, weightBound) - weight;
        return more == 0 ? text : text + String.format(Locale.ROOT, ", weight %.4f %%", HUNDRED * more / weight);
    }

    private static String alone(Map<String, String> found) {
        return String.format(Locale.ROOT, "%+.1f %%, weight %+.1f %%",
                HUNDRED * (number(found, "aloneCost") / number(found, "cost") - 1),
                HUNDRED * (number(found, "aloneWeight") / number(found, "weight") - 1));
    }

    private static String otherRow(Case each, Optional<String> line) {
        Map<String, String> found = line.map(PlannerBenchmarks::members).orElse(Map.of());
        String gap = found.getOrDefault("gap", "null");
        return "| " + String.join(" | ", each.arguments().get(3), each.arguments().get(1), each.arguments().get(4),
                found.getOrDefault("status", "failed"),
                gap.equals("null") ? "no plan" : String.format(Locale.ROOT, "%.2f %%",
                        HUNDRED * Double.parseDouble(gap)),
                each.earlier()) + " |";
    }

    private static double number(Map<String, String> found, String name) {
        return Double.parseDouble(found.get(name));
    }

    private static Map<String, String> members(String json) {
        return MEMBER.matcher(json).results().collect(Collectors.toMap(
                match -> match.group(1), match -> Optional.ofNullable(match.group(2)).orElse(match.group(3))));
    }
}
