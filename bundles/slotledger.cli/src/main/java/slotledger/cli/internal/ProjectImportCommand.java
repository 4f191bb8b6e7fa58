package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.project.Entry;
import slotledger.model.project.Part;
import slotledger.model.task.Progress;

/** Brings files into a project, and shows where they disagree with what people decided. */
@Command(
        name = "import",
        description = "Bring files into a project. Each part among them (fleet, offers, shelf, policy, choices, "
                + "mapping, boards) is replaced as a whole; the earlier files stay in the history. Decisions "
                + "hold on, and where the new files disagree with one, it is shown.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project import school fleet-march.xlsx --why \"count of 3 March\"",
            "  slotledger project import school new-offers"
        })
final class ProjectImportCommand extends DeskCommand {

    /** What the check of a survey calls disagreements with decisions. */
    private static final Set<String> CONFLICTS = Set.of("correction-conflict", "correction-without-machine",
            "correction-no-longer-needed", "pin-conflict", "pin-without-machine", "pinned-twice", "pin-refused");

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "FILE",
            description = "Files named fleet*, offers* and so on, or folders of such.")
    private List<Path> sources;

    @Mixin
    private AuthorOptions author;

    ProjectImportCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Optional<Entry> entry = desk().projects().bringIn(project, sources, author.author());
        Answer.Builder answer = new Answer.Builder();
        if (entry.isEmpty()) {
            answer.line("The project has exactly these files already; nothing was changed.");
            return answer.fact("entries", List.of()).end(ExitCode.OK);
        }
        new HistoryReport(desk()).report(project, List.of(entry.get()), answer);
        if (desk().projects().history(project).state().parts().containsKey(Part.FLEET)) {
            Survey survey = desk().survey(desk().open(project), progress);
            new SurveyText(survey).summary(answer);
            List<Finding> conflicts = survey.findings().stream()
                    .filter(finding -> CONFLICTS.contains(finding.code())
                            || finding.severity() == Severity.WARNING && finding.message().contains(" Not muted: "))
                    .toList();
            conflicts.forEach(finding -> answer.line(finding.toString()));
            answer.fact("conflicts", conflicts.stream().map(Finding::toString).toList());
        }
        return answer.end(ExitCode.OK);
    }
}
