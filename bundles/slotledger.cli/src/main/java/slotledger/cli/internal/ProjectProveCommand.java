package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.Deviation;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.task.Progress;
import slotledger.model.work.WorkWords;

/** Proves the plan of a project, and ends the jobs of machines where all agrees. */
@Command(
        name = "prove",
        description = "Compare an inventory taken after the work with the plan that is carried out. Jobs where all "
                + "agrees end as done by themselves; what differs is named with its likely causes, those first that "
                + "are looked at with the least effort, and with the cheapest repair.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger project prove school --after inventory.xlsx --out proof.xlsx",
            "  slotledger project prove school --after inventory.xlsx --firmware dumps"})
final class ProjectProveCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--after", required = true, paramLabel = "FILE", description = "Inventory taken after the work; "
            + "may be given again.")
    private List<Path> after;

    @Option(names = "--firmware", paramLabel = "PATH", description = "Firmware tables or listings of machines, files "
            + "or folders: they tell the rate that is set, whether errors are corrected, and serial numbers.")
    private List<Path> firmware = new ArrayList<>();

    @Option(names = "--out", paramLabel = "FILE", description = "Proof workbook to write (.xlsx).")
    private Path out;

    @Option(names = "--force", description = "Replace the proof workbook of an earlier run.")
    private boolean force;

    @Mixin
    private AuthorOptions author;

    ProjectProveCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        ClosingProof closing = desk().coordinator().prove(project, after, firmware, desk().open(project),
                author.author(), progress);
        Answer.Builder answer = new Answer.Builder();
        Set<Deviation.Kind> kinds = new TreeSet<>();
        for (Deviation each : closing.deviations()) {
            answer.wrapped(each.machine().value(), words(each));
            kinds.add(each.kind());
        }
        for (Deviation.Kind kind : kinds) {
            answer.line("").line("Where it says \"" + kind.text()
                    + "\", look in this order:");
            int number = 1;
            for (Deviation.Cause cause : kind.causes()) {
                answer.wrapped(number++ + ".", cause.toString());
            }
        }
        answer.line("");
        for (ProofOutcome outcome : ProofOutcome.values()) {
            answer.item(closing.proof().count(outcome) + "", outcome.text());
        }
        answer.wrapped("Closed", closing.closed().isEmpty() ? "no job by this proof"
                : WorkWords.count(closing.closed().size(), "job") + ", because all agrees: " + closing.closed().stream()
                        .map(AssetTag::value).collect(Collectors.joining(", ")));
        answer.item("Serials", WorkWords.count(closing.serials(), "slot")
                + " with the serial number that was read at the work");
        answer.fact("clean", closing.isClean()).fact("serials", closing.serials());
        answer.fact("closed", closing.closed().stream().map(AssetTag::value).toList());
        answer.fact("deviations", closing.deviations().stream().map(ProjectProveCommand::facts).toList());
        if (out != null) {
            desk().writeProof(closing.proof(), out, force);
            answer.item("Files", out.toString()).fact("file", out.toString());
        }
        return answer.end(closing.isClean() ? ExitCode.OK : ExitCode.DIFFERS);
    }

    private static String words(Deviation each) {
        return (each.where().isEmpty() ? "" : each.where() + ": ") + each.kind().text() + "; planned " + each.planned()
                + "; found " + each.found() + "." + (each.repair().isEmpty() ? "" : " " + each.repair());
    }

    private static Map<String, Object> facts(Deviation each) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("machine", each.machine().value());
        facts.put("kind", each.kind().name());
        facts.put("where", each.where());
        facts.put("planned", each.planned());
        facts.put("found", each.found());
        facts.put("repair", each.repair());
        facts.put("causes", each.kind().causes().stream().map(Deviation.Cause::toString).toList());
        return facts;
    }
}
