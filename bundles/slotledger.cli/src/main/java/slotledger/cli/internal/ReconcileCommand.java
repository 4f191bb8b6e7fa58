package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Reconciled;
import slotledger.model.machine.AssetTag;
import slotledger.model.observed.Comparison;
import slotledger.model.observed.Comparison.Outcome;
import slotledger.model.observed.Reconciliation;
import slotledger.model.observed.Testimony;
import slotledger.model.task.Progress;

/** Shows what spreadsheets and firmware say against each other. */
@Command(
        name = "reconcile",
        description = "Compare what spreadsheets and firmware say of each machine, fact by fact, and say who was "
                + "believed. A line such as \"trust memory = spreadsheet, firmware\" in the mapping file changes that.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger reconcile my-school", "  slotledger reconcile my-school --all --out compared.csv"})
final class ReconcileCommand extends DeskCommand {

    private static final int MOST_NAMES = 20;

    @Mixin
    private ProjectOptions project;

    @Option(names = "--all", description = "Show facts on which sources agree, too.")
    private boolean all;

    @Option(names = "--out", paramLabel = "FILE", description = "Also write every fact to a .csv file.")
    private Path out;

    @Option(names = "--force", description = "Replace the file of an earlier run.")
    private boolean force;

    ReconcileCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Reconciled reconciled = desk().firmware().reconcile(project.open(desk()), progress);
        Reconciliation found = reconciled.reconciliation();
        Answer.Builder answer = new Answer.Builder();
        AssetTag before = null;
        for (Comparison each : found.comparisons()) {
            if (all || each.outcome() == Outcome.DIFFER) {
                if (!each.machine().equals(before)) {
                    answer.line(each.machine().value());
                }
                before = each.machine();
                lines(each, answer);
            }
        }
        summary(found, answer);
        answer.fact("comparisons", found.comparisons().stream().map(ReconcileCommand::facts).toList())
                .fact("withoutFirmware", found.withoutFirmware().stream().map(AssetTag::value).toList())
                .fact("withoutSpreadsheet", found.withoutSheet().stream().map(AssetTag::value).toList());
        if (out != null) {
            desk().firmware().writeReconciliation(found, out, force);
            answer.item("Files", out.toString());
        }
        return answer.end(found.of(Outcome.DIFFER).isEmpty() ? ExitCode.OK : ExitCode.DIFFERS);
    }

    private static void lines(Comparison each, Answer.Builder answer) {
        answer.line("    " + each.fact() + ": " + each.outcome().text());
        String mark = each.outcome() == Outcome.DIFFER ? "believed  " : "          ";
        for (Testimony said : each.said()) {
            answer.line("        " + mark + said);
            mark = "          ";
        }
    }

    private static void summary(Reconciliation found, Answer.Builder answer) {
        List<String> counts = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            counts.add(found.of(outcome).size() + " " + outcome.text());
        }
        answer.item("Facts", String.join(", ", counts));
        if (!found.withoutFirmware().isEmpty()) {
            answer.wrapped("No firmware", names(found.withoutFirmware()));
        }
        if (!found.withoutSheet().isEmpty()) {
            answer.wrapped("No row", names(found.withoutSheet()));
        }
        if (found.comparisons().isEmpty()) {
            answer.line("There is nothing to compare: that needs a spreadsheet and firmware of the same machines.");
        }
    }

    private static String names(List<AssetTag> tags) {
        String names = String.join(", ", tags.stream().limit(MOST_NAMES).map(AssetTag::value).toList());
        return "%d machine%s: %s%s".formatted(tags.size(), tags.size() == 1 ? "" : "s", names,
                tags.size() > MOST_NAMES ? " and more" : "");
    }

    private static Map<String, Object> facts(Comparison each) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("machine", each.machine().value());
        facts.put("fact", each.fact());
        facts.put("outcome", each.outcome().text());
        facts.put("said", each.said().stream().map(said -> Map.of("source", said.ground().text(), "text", said.text(),
                "place", said.place().toString())).toList());
        return facts;
    }
}
