package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.function.Consumer;
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
                + "good for: so many at least, and no plan brings more than so many. \"plan --budget\" with a budget "
                + "makes the best plan for it.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger curve demo-fleet",
            "  slotledger curve demo-fleet --points 20 --out budgets.xlsx",
            "  slotledger curve demo-fleet --points 6 --exact",
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
            description = "About how many budgets to show, 2 to 200; ${DEFAULT-VALUE} unless given.")
    private int points;

    @Option(
            names = "--exact",
            description = "Make the best plan for each budget; takes as long as so many runs of \"plan\".")
    private boolean exact;

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
        Consumer<BudgetCurve> soFar = part -> progress.step(
                CurveText.soFar(part), (double) part.points().size() / points);
        BudgetCurve curve = exact
                ? desk().ask(survey, progress).curve(points, soFar, progress)
                : desk().curve(survey, points, soFar, progress);
        Answer.Builder answer = new Answer.Builder();
        CurveText.report(curve, answer);
        if (out != null) {
            desk().writeCurve(curve, survey.project().title(), out, force);
            answer.line("").item("Files", out.toString()).fact("file", out.toString());
        }
        return answer.end(ExitCode.OK);
    }
}
