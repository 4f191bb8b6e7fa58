package slotledger.bench;

import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.bench.fleet.FleetCase;
import slotledger.bench.fleet.Fleets;
import slotledger.model.plan.BoughtAlone;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Policy;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.Planning;
import slotledger.rules.standard.StandardRules;

/** Plans one made-up fleet in a process of its own; prints its steps as they come, and one line of JSON at the end. */
public final class PlannerRun {

    private PlannerRun() {
    }

    /**
     * Plans.
     *
     * @param arguments case, number of machines, which of all such fleets, and "apart" where pulled modules are not
     *                  used elsewhere
     */
    public static void main(String[] arguments) throws Exception {
        FleetCase of = FleetCase.valueOf(arguments[0]);
        int size = Integer.parseInt(arguments[1]);
        Fleets.request(of, 10, 1);
        long before = HeapWatch.used();
        PlanRequest request = Fleets.request(of, size, Long.parseLong(arguments[2]));
        if (arguments.length > 3 && arguments[3].equals("apart")) {
            request = apart(request);
        }
        long bytes = (HeapWatch.used() - before) / size;
        StageClock clock = new StageClock();
        Plan plan = new Planning(StandardRules.create(), new ScipSolver()).plan(request, clock);
        double total = clock.total();
        System.out.println(json(of, size, bytes, clock.stages(), total, plan));
    }

    private static PlanRequest apart(PlanRequest request) {
        Policy policy = request.policy();
        Policy apart = new Policy(policy.currency(), policy.targets(), policy.budget(), policy.costCentreBudgets(),
                policy.perMachine(), policy.perModule(), policy.sparePercent(), policy.atLeastOneSpare(), false, false,
                policy.leaveAlone());
        return new PlanRequest(request.title(), request.fleet(), request.market(), request.shelf(), apart,
                request.date());
    }

    private static String json(FleetCase of, int size, long bytes, Map<StageClock.Stage, Double> stages, double total,
            Plan plan) throws Exception {
        BoughtAlone alone = plan.insights().alone().orElseThrow();
        Optimality proof = plan.optimality();
        String seconds = stages.entrySet().stream()
                .map(stage -> String.format(Locale.ROOT, "\"%s\": %.2f",
                        stage.getKey().name().toLowerCase(Locale.ROOT), stage.getValue()))
                .collect(Collectors.joining(", "));
        return String.format(Locale.ROOT, """
                {"case": "%s", "machines": %d, "bytesAMachine": %d, %s, "total": %.2f, "weight": %d, \
                "weightBound": %d, "weightSafe": %d, "cost": %d, "costBound": %d, "costSafe": %d, "aloneCost": %d, \
                "aloneWeight": %d, "opened": %d, \
                "notHelped": %d, "heapMiB": %d, "processMiB": %d}""",
                of.name(), size, bytes, seconds, total, proof.weightOnTarget(), proof.weightBound(),
                proof.weightSafe(), proof.cost().minor(), proof.costBound().minor(), proof.costSafe().minor(),
                alone.total().minor(), alone.weight(),
                plan.machines().stream().filter(machine -> machine.isOpened()).count(),
                plan.count(Outcome.NOT_HELPED), HeapWatch.mostHeap(), HeapWatch.mostOfProcess());
    }
}
