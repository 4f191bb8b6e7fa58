package slotledger.bench;

import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import slotledger.bench.fleet.FleetCase;
import slotledger.bench.fleet.Fleets;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.Planning;
import slotledger.planner.internal.insight.QuickAdvice;
import slotledger.rules.standard.StandardRules;

/** Works out the curve of budgets of one made-up fleet; prints when the first point was there, and when the last. */
public final class CurveRun {

    private static final double NANOSECONDS = 1e9;

    private CurveRun() {
    }

    /**
     * Works it out.
     *
     * @param arguments case, number of machines, which of all such fleets, how many points
     */
    public static void main(String[] arguments) throws Exception {
        FleetCase of = FleetCase.valueOf(arguments[0]);
        PlanRequest request = Fleets.request(of, Integer.parseInt(arguments[1]), Long.parseLong(arguments[2]));
        AtomicLong first = new AtomicLong();
        long begun = System.nanoTime();
        Planning planning = new Planning(StandardRules.create(), new ScipSolver());
        BudgetCurve curve = QuickAdvice.curve(planning, request, Integer.parseInt(arguments[3]),
                part -> first.compareAndSet(0, System.nanoTime() - begun), Progress.NONE);
        System.out.println(String.format(Locale.ROOT,
                "{\"case\": \"%s\", \"machines\": %s, \"points\": %d, \"firstAfter\": %.2f, \"allAfter\": %.2f}",
                of, arguments[1], curve.points().size(), first.get() / NANOSECONDS,
                (System.nanoTime() - begun) / NANOSECONDS));
    }
}
