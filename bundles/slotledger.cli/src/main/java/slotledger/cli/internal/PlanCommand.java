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

/** The main job. */
@Command(
        name = "plan",
        description = "Find the cheapest purchase that brings the most machines to their targets, and write the order "
                + "workbook, job sheets, lists, findings and plan.json.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger plan my-school --out my-school-plan",
            "  slotledger plan my-school --budget 5000 --insights --out plan-for-5000",
            "  slotledger plan my-school --policy next-year.yaml --date 2027-01-15 --out next-year --json"
        })
final class PlanCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Mixin
    private BudgetOption budget;

    @Option(
            names = "--insights",
            description = "Also find out what a larger or smaller budget would do, and what doing without each order "
                    + "line would cost; it stands on sheet \"What binds\" of the order workbook. Takes a search for each "
                    + "order line and budget: about half a minute more for 600 machines.")
    private boolean insights;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    PlanCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = budget.in(desk().survey(project.open(desk()), progress));
        Plan made = insights ? desk().ask(survey, progress).withInsights(progress) : desk().plan(survey, progress);
        List<Path> files = desk().export(survey, made, out, force, progress);
        Answer.Builder answer = new Answer.Builder();
        new SurveyText(survey).summary(answer);
        new PlanText(made).report(answer, files);
        return answer.end(ExitCode.OK);
    }
}
