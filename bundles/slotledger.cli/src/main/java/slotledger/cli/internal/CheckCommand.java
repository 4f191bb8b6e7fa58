package slotledger.cli.internal;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.finding.Severity;
import slotledger.model.task.Progress;

/** Reads everything and says what is doubtful. */
@Command(
        name = "check",
        description = "Read a project's files, say how each column was understood and what is doubtful.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger check my-school", "  slotledger check my-school --findings findings.xlsx"})
final class CheckCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Option(
            names = "--findings",
            paramLabel = "FILE",
            description = "Also write the inventories as a workbook with notes on the cells concerned.")
    private Path findings;

    @Option(names = "--all", description = "Print every finding, not only errors and warnings.")
    private boolean all;

    @Option(names = "--force", description = "Replace the findings workbook of an earlier run.")
    private boolean force;

    CheckCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = desk().survey(project.open(desk()), progress);
        Answer.Builder answer = new Answer.Builder();
        SurveyText text = new SurveyText(survey);
        text.columns(answer);
        survey.findings().stream()
                .filter(finding -> all || finding.severity() != Severity.NOTE)
                .forEach(finding -> answer.line(finding.toString()));
        text.summary(answer);
        text.facts(answer);
        if (findings != null) {
            desk().writeFindings(survey, findings, force);
            answer.item("Files", findings.toString()).fact("file", findings.toString());
        }
        return answer.end(text.hasErrors() ? ExitCode.DIFFERS : ExitCode.OK);
    }
}
