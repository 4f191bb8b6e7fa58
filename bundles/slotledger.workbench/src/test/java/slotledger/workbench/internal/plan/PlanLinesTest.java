package slotledger.workbench.internal.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Target;
import slotledger.workbench.internal.SmallFleet;
import slotledger.workbench.internal.lines.Line;
import slotledger.workbench.internal.session.Opened;

class PlanLinesTest {

    private static final Machine ONE = SmallFleet.machine("PC-1", "North", "Lab", new Population(Map.of()));
    private static final Machine TWO = SmallFleet.machine("PC-2", "North", "Lab", new Population(Map.of()));
    private static final Opened OPENED = SmallFleet.opened(ONE, TWO);

    private final Plan plan = SmallFleet.plan(OPENED, withTarget(ONE, Outcome.ON_TARGET),
            withTarget(TWO, Outcome.NOT_HELPED));

    @Test
    void aRoleShowsItsWishAndHowManyReachIt() {
        Line role = section("Targets").children().get(0);
        assertEquals(List.of("teaching", "8 GB", "of 2: 1 now, 1 after the work"), role.cells());
        assertEquals(Optional.of(new AssetTag("PC-2")), role.machine());
    }

    @Test
    void machinesHeldBackByTheSameThingShareALine() {
        List<Line> bonds = section("What binds").children();
        assertEquals(1, bonds.size());
        assertEquals(List.of("budget", "50 more.", "1 machines"), bonds.get(0).cells());
        assertEquals("The money is spent.\n50 more.\nPC-2", bonds.get(0).inFull());
    }

    @Test
    void sectionsWithoutALineAreLeftOut() {
        assertEquals(List.of("Money", "Targets", "What binds", "How good the plan is"),
                PlanLines.of(plan).stream().map(line -> line.cell(0)).toList());
    }

    @Test
    void aBudgetStandsBesideWhatIsCountedAgainstIt() {
        Line budget = section("Money").children().get(2);
        assertEquals(List.of("Counted against the budget", "no limit", "EUR 0.00"), budget.cells());
    }

    private Line section(String heading) {
        return PlanLines.of(plan).stream().filter(line -> line.cell(0).equals(heading)).findFirst().orElseThrow();
    }

    private static MachinePlan withTarget(Machine machine, Outcome outcome) {
        MachinePlan plain = SmallFleet.planned(machine, machine.population(), outcome);
        Optional<Target> target = OPENED.survey().policy().flatMap(policy -> policy.target(machine.role()));
        Optional<Obstacle> obstacle = plain.obstacle();
        return new MachinePlan(machine, target, plain.after(), outcome, List.of(), plain.runsNow(), plain.runsAfter(),
                obstacle, plain.labour(), 0);
    }
}
