package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** What can be done with what arrived so far. */
@Command(
        name = "arrived",
        description = "Compare what arrived with the order of a plan, say which machines can be done now and which "
                + "wait, and write job sheets and rounds for those that can be done.",
        footerHeading = "%nExample:%n",
        footer = {
            "  slotledger arrived my-school --plan my-school-plan/plan.json --received received.csv --out now",
            "  slotledger arrived my-school --plan my-school-plan/plan.json --received received.csv --final --out end",
            "  The list has the headings supplier, part, packs (or modules) and unusable."
        })
final class ArrivedCommand extends DeskCommand {

    private static final int WAITING_SHOWN = 10;

    @Mixin
    private ProjectOptions project;

    @Option(names = "--plan", required = true, paramLabel = "FILE", description = "plan.json of an earlier run.")
    private Path plan;

    @Option(
            names = "--received",
            required = true,
            paramLabel = "FILE",
            description = "List of what arrived (.xlsx, .xls, .csv); give all lists so far.")
    private List<Path> received;

    @Option(
            names = "--done",
            paramLabel = "FILE",
            description = "Text file with the asset tag of a machine that is finished on each line.")
    private Path done;

    @Option(
            names = "--final",
            description = "Nothing more will come: what is there is given to the machines anew, as far as that is "
                    + "needed, nothing is bought, and a new plan is made of it.")
    private boolean ends;

    @Option(names = "--out", paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    ArrivedCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = desk().survey(project.open(desk()), progress);
        Plan made = desk().reopen(plan, survey);
        Optional<Settlement> settled = ends
                ? Optional.of(desk().settle(survey, made, received, Optional.ofNullable(done), progress))
                : Optional.empty();
        Delivery delivery = settled.isPresent() ? settled.get().delivery()
                : desk().arrived(made, received, Optional.ofNullable(done), progress);
        Answer.Builder answer = new Answer.Builder();
        List<Finding> findings =
                delivery.findings().stream().filter(finding -> finding.severity() != Severity.NOTE).toList();
        findings.forEach(finding -> answer.line(finding.toString()));
        answer.fact("findings", findings.stream().map(Finding::toString).toList());
        lines(answer, delivery);
        settled.ifPresentOrElse(end -> settlement(answer, end), () -> machines(answer, delivery));
        if (out != null) {
            List<Path> written = settled.isPresent()
                    ? desk().exportWork(survey, settled.get(), out, force, progress)
                    : desk().exportWork(survey, delivery, out, force, progress);
            List<String> files = written.stream().map(Path::toString).toList();
            answer.items("Files", files).fact("files", files);
        }
        return answer.end(findings.isEmpty() ? ExitCode.OK : ExitCode.DIFFERS);
    }

    private static void lines(Answer.Builder answer, Delivery delivery) {
        for (Delivery.Line line : delivery.lines()) {
            answer.item("Order", line.purchase().offer().id() + ": " + line.state().text() + ", " + line.usable()
                    + " of " + line.purchase().modules()
                    + (line.unusable() == 0 ? "" : ", " + line.unusable() + " more not usable"));
        }
        answer.fact("lines", delivery.lines().stream().map(ArrivedCommand::facts).toList());
        answer.fact("complete", delivery.isComplete());
    }

    private static Map<String, Object> facts(Delivery.Line line) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("offer", line.purchase().offer().id());
        facts.put("state", line.state().name());
        facts.put("ordered", line.purchase().modules());
        facts.put("usable", line.usable());
        facts.put("unusable", line.unusable());
        return facts;
    }

    private static void machines(Answer.Builder answer, Delivery delivery) {
        List<String> now = delivery.now().work().stream().map(MachinePlan::machine)
                .map(machine -> machine.tag().value()).toList();
        answer.item("Now", now.size() + " machines can be done, " + delivery.done().size() + " are done, "
                + delivery.waiting().size() + " wait");
        delivery.waiting().stream().limit(WAITING_SHOWN).forEach(waiting -> answer.item("Waits", text(waiting)));
        if (delivery.waiting().size() > WAITING_SHOWN) {
            answer.item("", (delivery.waiting().size() - WAITING_SHOWN) + " more wait; --json names them all");
        }
        int missing = delivery.lines().stream().mapToInt(Delivery.Line::missing).sum();
        answer.item("Plan", missing == 0 ? "it stays: everything that was ordered is there"
                : "it stays if " + missing + " modules are still delivered or replaced; if not, plan again with what "
                        + "is there, by --final");
        answer.fact("now", now).fact("missing", missing);
        answer.fact("waiting", delivery.waiting().stream().map(each -> each.machine().value()).toList());
    }

    private static void settlement(Answer.Builder answer, Settlement settled) {
        Plan plan = settled.plan();
        List<String> now = plan.work().stream().map(machine -> machine.machine().tag().value()).toList();
        List<String> without = plan.machines().stream().filter(machine -> machine.obstacle().isPresent())
                .map(machine -> machine.machine().tag().value()).toList();
        int missing = settled.delivery().lines().stream().mapToInt(Delivery.Line::missing).sum();
        answer.item("Now", now.size() + " machines can be done, " + settled.delivery().done().size() + " are done; "
                + Difference.onTarget(plan) + " are on target then, " + without.size() + " with a target are not");
        answer.item("Money", "what was ordered stays spent: " + plan.spending().payable()
                + (missing == 0 ? "" : "; " + missing + " modules did not come, ask the suppliers for their price"));
        answer.fact("now", now).fact("missing", missing).fact("notOnTarget", without);
        Answer.Builder part = new Answer.Builder();
        new DifferenceLines(settled.difference()).report(part, WAITING_SHOWN);
        Answer changes = part.end(ExitCode.OK);
        answer.line("").line("What changed against the plan").lines(changes).line("")
                .fact("changes", changes.facts());
    }

    private static String text(Delivery.Waiting waiting) {
        return waiting.machine() + " for " + waiting.needs().entrySet().stream()
                .map(need -> need.getValue() + " x " + need.getKey()).sorted().collect(Collectors.joining(", "));
    }
}
