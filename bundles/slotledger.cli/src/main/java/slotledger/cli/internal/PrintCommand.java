package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** Prints a plan that was made earlier. */
@Command(
        name = "print",
        description = "Write order workbook, job sheets and lists again from the plan.json of an earlier run.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger print my-school --plan my-school-plan/plan.json --out printed-again")
final class PrintCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Option(names = "--plan", required = true, paramLabel = "FILE", description = "plan.json of an earlier run.")
    private Path plan;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    PrintCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = desk().survey(project.open(desk()), progress);
        Plan made = desk().reopen(plan, survey);
        List<Path> files = desk().export(survey, made, out, force, progress);
        Answer.Builder answer = new Answer.Builder();
        new PlanText(made).report(answer, files);
        return answer.end(ExitCode.OK);
    }
}
