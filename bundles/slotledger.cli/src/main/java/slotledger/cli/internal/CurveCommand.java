package slotledger.cli.internal;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.task.Progress;

/** Budget against machines on target. */
@Command(
        name = "curve",
        description = "Show how many machines each budget brings to their targets, from nothing to all that money is "
                + "good for. \"plan --budget\" with the budget of a line makes the plan of that line.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger curve demo-fleet",
            "  slotledger curve demo-fleet --points 20 --out budgets.xlsx",
            "  slotledger plan demo-fleet --budget 5000 --out plan-for-5000"
        })
final class CurveCommand extends DeskCommand {

    private static final int MOST_POINTS = 200;

    @Mixin
    private ProjectOptions project;

    @Mixin
    private BudgetOption budget;

    @Option(
            names = "--points",
            paramLabel = "N",
            defaultValue = "12",
            description = "About how many budgets to plan for, 2 to 200; ${DEFAULT-VALUE} unless given. Each takes a "
                    + "search.")
    private int points;

    @Option(names = "--out", paramLabel = "FILE", description = "Also write a workbook with a chart (.xlsx).")
    private Path out;

    @Option(names = "--force", description = "Replace the workbook of an earlier run.")
    private boolean force;

    CurveCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        if (points < 2 || points > MOST_POINTS) {
            throw new DeskException(Trouble.INPUT, "The number of points (%d) must be from 2 to %d."
                    .formatted(points, MOST_POINTS));
        }
        Survey survey = budget.in(desk().survey(project.open(desk()), progress));
        BudgetCurve curve = desk().ask(survey, progress).curve(points, unused -> { }, progress);
        Answer.Builder answer = new Answer.Builder();
        CurveText.report(curve, answer);
        if (out != null) {
            desk().writeCurve(curve, survey.project().title(), out, force);
            answer.line("").item("Files", out.toString()).fact("file", out.toString());
        }
        return answer.end(ExitCode.OK);
    }
}
