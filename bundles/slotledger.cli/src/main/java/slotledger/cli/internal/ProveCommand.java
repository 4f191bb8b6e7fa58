package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.task.Progress;

/** Proves that the work was done. */
@Command(
        name = "prove",
        description = "Compare an inventory taken after the work with the plan: "
                + "done, done differently, not done, worse.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger prove my-school --plan my-school-plan/plan.json --after inventory.xlsx --out proof.xlsx")
final class ProveCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Option(names = "--plan", required = true, paramLabel = "FILE", description = "plan.json of the plan.")
    private Path plan;

    @Option(
            names = "--after",
            required = true,
            paramLabel = "FILE",
            description = "Inventory taken after the work; may be given again.")
    private List<Path> after;

    @Option(names = "--out", paramLabel = "FILE", description = "Proof workbook to write (.xlsx).")
    private Path out;

    @Option(names = "--force", description = "Replace the proof workbook of an earlier run.")
    private boolean force;

    ProveCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Proof proof = desk().prove(plan, after, project.open(desk()), progress);
        Answer.Builder answer = new Answer.Builder();
        proof.machines().stream()
                .filter(machine -> machine.outcome() != ProofOutcome.DONE)
                .forEach(machine -> answer.line(text(machine)));
        Map<String, Object> counts = new LinkedHashMap<>();
        for (ProofOutcome outcome : ProofOutcome.values()) {
            counts.put(outcome.name(), proof.count(outcome));
            answer.item(proof.count(outcome) + "", outcome.text());
        }
        answer.fact("outcomes", counts).fact("complete", proof.isComplete());
        answer.fact("machines", proof.machines().stream().map(ProveCommand::facts).toList());
        if (out != null) {
            desk().writeProof(proof, out, force);
            answer.item("Files", out.toString()).fact("file", out.toString());
        }
        return answer.end(proof.isComplete() ? ExitCode.OK : ExitCode.DIFFERS);
    }

    private static String text(MachineProof machine) {
        StringBuilder text = new StringBuilder(machine.plan().machine().tag() + ": " + machine.outcome().text());
        text.append(machine.remark().isEmpty() ? "" : ". " + machine.remark());
        machine.differences().forEach(each -> text.append(System.lineSeparator()).append("    ")
                .append(each.where()).append(": planned ").append(each.planned())
                .append("; found ").append(each.found()));
        return text.toString();
    }

    private static Map<String, Object> facts(MachineProof machine) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("machine", machine.plan().machine().tag().value());
        facts.put("outcome", machine.outcome().name());
        facts.put("remark", machine.remark());
        facts.put("differences", machine.differences().stream()
                .map(each -> Map.of("where", each.where(), "planned", each.planned(), "found", each.found()))
                .toList());
        return facts;
    }
}
