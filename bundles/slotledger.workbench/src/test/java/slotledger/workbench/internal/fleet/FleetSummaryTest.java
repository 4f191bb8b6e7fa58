package slotledger.workbench.internal.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.plan.Outcome;
import slotledger.workbench.internal.SmallFleet;
import slotledger.workbench.internal.session.Opened;

class FleetSummaryTest {

    private static final Population BARE = Population.empty(SmallFleet.BOARD);

    @Test
    void withoutAProjectItSaysHowToOpenOne() {
        assertTrue(FleetSummary.of(Optional.empty(), Optional.empty()).contains("Open Project"));
    }

    @Test
    void unknownBoardsAreOnlyNamedWhereThereAreSome() {
        Machine machine = SmallFleet.machine("PC-1", "", "", BARE);
        assertEquals("1 machines", FleetSummary.of(Optional.of(SmallFleet.opened(machine)), Optional.empty()));
        assertEquals("2 machines · 1 can’t be judged", FleetSummary.of(Optional.of(SmallFleet.opened(
                List.of(machine), List.of(SmallFleet.unresolved("OLD-1")), List.of())), Optional.empty()));
    }

    @Test
    void aPlanIsSummedUpWithItsCostAndProof() {
        Machine machine = SmallFleet.machine("PC-1", "", "", BARE);
        Opened opened = SmallFleet.opened(machine);
        assertEquals("1 machines · 0 on target already, 0 reach it by the plan · 1 stay below"
                + " · EUR 0.00 to pay, EUR 0.00 of labour · proven to be the best",
                FleetSummary.of(Optional.of(opened), Optional.of(SmallFleet.plan(opened,
                        SmallFleet.planned(machine, BARE, Outcome.NOT_HELPED)))));
    }
}
