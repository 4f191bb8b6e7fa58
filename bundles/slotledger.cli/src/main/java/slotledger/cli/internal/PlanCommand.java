package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.difference.Difference;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Wave;

/** The main job. */
@Command(
        name = "plan",
        description = "Find the cheapest purchase that brings the most machines to their targets, and write the order "
                + "workbook, job sheets, lists, findings and plan.json.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger plan my-school --out my-school-plan",
            "  slotledger plan my-school --budget 5000 --insights --out plan-for-5000",
            "  slotledger plan my-school --before my-school-plan --out planned-again",
            "  slotledger plan my-school --policy next-year.yaml --date 2027-01-15 --out next-year --json"
        })
final class PlanCommand extends DeskCommand {

    private static final int CHANGES_SHOWN = 10;

    @Mixin
    private ProjectOptions project;

    @Mixin
    private BudgetOption budget;

    @Mixin
    private BeforeOption before;

    @Option(
            names = "--insights",
            description = "Also find out what a larger or smaller budget would do, and what doing without each order "
                    + "line would cost; it stands on sheet \"What binds\" of the order workbook. Takes a search for "
                    + "each order line and budget.")
    private boolean insights;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    @Option(
            names = "--solver",
            paramLabel = "NAME",
            description = "Solver to use, by a part of its name such as SCIP or ojAlgo; the best that runs here unless "
                    + "given.")
    private String solver;

    PlanCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = budget.in(desk().survey(project.open(desk()), progress));
        List<Wave> waves = survey.policy().map(Policy::waves).orElse(List.of());
        if (!waves.isEmpty()) {
            if (budget.isGiven()) {
                throw new DeskException(Trouble.INPUT, "The policy plans in waves, and each wave has a budget of its"
                        + " own: --budget can't say which is meant. Change the budgets of the waves in the policy.");
            }
            return new WaveWork(desk(), this::planned, before.path()).work(survey, waves, out, force, progress);
        }
        if (before.path().isPresent()) {
            survey = BeforeOption.in(survey, before.path().get(), desk());
        }
        Plan made = planned(survey, progress);
        List<Path> files = desk().export(survey, made, out, force, progress);
        Answer.Builder answer = new Answer.Builder();
        new SurveyText(survey).summary(answer);
        new PlanText(made).report(answer, files);
        new PlanKeeper(desk()).keep(survey, out, answer);
        if (survey.before().isPresent()) {
            changes(answer, desk().compare(survey.before().get(), made));
        }
        return answer.end(ExitCode.OK);
    }

    private static void changes(Answer.Builder answer, Difference difference) {
        Answer.Builder part = new Answer.Builder();
        new DifferenceLines(difference).report(part, CHANGES_SHOWN);
        Answer changes = part.end(ExitCode.OK);
        answer.line("").line("What changed against the earlier plan").lines(changes)
                .fact("changes", changes.facts());
    }

    private Plan planned(Survey survey, Progress progress) throws DeskException {
        if (insights && solver != null) {
            throw new DeskException(Trouble.INPUT, "Say either --insights or --solver: insights are found by the best"
                    + " solver there is.");
        }
        if (insights) {
            return desk().ask(survey, progress).withInsights(progress);
        }
        return solver == null ? desk().plan(survey, progress) : desk().planWith(solver, survey, progress);
    }
}
