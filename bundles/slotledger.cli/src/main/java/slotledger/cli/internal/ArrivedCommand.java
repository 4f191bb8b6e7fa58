package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
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
        ArrivedText.lines(answer, delivery);
        settled.ifPresentOrElse(end -> ArrivedText.settlement(answer, end),
                () -> ArrivedText.machines(answer, delivery));
        if (out != null) {
            List<Path> written = settled.isPresent()
                    ? desk().exportWork(survey, settled.get(), out, force, progress)
                    : desk().exportWork(survey, delivery, out, force, progress);
            List<String> files = written.stream().map(Path::toString).toList();
            answer.items("Files", files).fact("files", files);
        }
        return answer.end(findings.isEmpty() ? ExitCode.OK : ExitCode.DIFFERS);
    }
}
