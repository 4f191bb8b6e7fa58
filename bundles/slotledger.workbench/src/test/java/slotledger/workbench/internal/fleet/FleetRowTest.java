package slotledger.workbench.internal.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.plan.Move;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Station;
import slotledger.workbench.internal.SmallFleet;
import slotledger.workbench.internal.session.Opened;

class FleetRowTest {

    private static final Population BARE = Population.empty(SmallFleet.BOARD);

    @Test
    void aMachineBelowItsTargetSaysSoInEveryColumn() {
        Machine machine = SmallFleet.machine("PC-1", "North", "Lab 1", BARE);
        assertEquals("PC-1|North|Lab 1|teaching|Tarn 210|4 GB · – · –|4 GB|8 GB||▼ below target",
                line(SmallFleet.lacking(machine, "4 GB usable memory instead of 8 GB")));
    }

    @Test
    void aMachineWithEnoughMemoryOverTooFewChannelsIsBelowItsTarget() {
        Machine machine = SmallFleet.machine("PC-1", "North", "Lab 1", BARE.with("S1", SmallFleet.dimm(4)));
        assertEquals("PC-1|North|Lab 1|teaching|Tarn 210|4 GB · 4 GB · –|8 GB|8 GB||▼ below target",
                line(SmallFleet.lacking(machine, "single channel instead of all memory over 2 channels")));
    }

    @Test
    void aMachineThatLacksNothingIsOnTarget() {
        assertEquals("PC-1|North|Lab 1|teaching|Tarn 210|4 GB · – · 4 GB|8 GB|8 GB||✓ on target",
                line(BARE.with("S2", SmallFleet.dimm(4))));
    }

    @Test
    void aSlotThatCouldNotBeReadLeavesTotalAndStateOpen() {
        assertEquals("PC-1|North|Lab 1|teaching|Tarn 210|4 GB · ? · –|not known|8 GB||? contents not fully read",
                line(BARE.with("S1", new SlotContent.Unread("4G?"))));
    }

    @Test
    void aFillerIsNamedInShort() {
        assertEquals("PC-1|North|Lab 1|teaching|Tarn 210|4 GB · filler · –|4 GB|8 GB||✓ on target",
                line(BARE.with("S1", Filler.CONTINUITY_184)));
    }

    @Test
    void aMachineOfUnknownBoardShowsWhatTheInventoryWrites() {
        Opened opened = SmallFleet.opened(List.of(), List.of(SmallFleet.unresolved("OLD-1")), List.of());
        assertEquals("OLD-1|North|Store|teaching|Tarn 4200?||not known|8 GB||? can’t be judged",
                line(FleetRow.of(opened, Optional.empty()).get(0)));
    }

    @Test
    void aPlanSaysWhatTheMachineWillHaveAndHowItEnds() {
        Machine machine = SmallFleet.machine("PC-1", "North", "Lab 1", BARE);
        Opened opened = SmallFleet.opened(machine);
        Population after = BARE.with("S2", SmallFleet.dimm(8));
        Move move = new Move(after.in("S2"), new Station.FromOrder("o"), new Station.InSlot(machine.tag(), "S2"));
        FleetRow row = FleetRow.of(opened, Optional.of(SmallFleet.plan(opened,
                SmallFleet.planned(machine, after, Outcome.REACHES_TARGET, move)))).get(0);
        assertEquals("PC-1|North|Lab 1|teaching|Tarn 210|4 GB · – · –|4 GB|8 GB|12 GB|✓ reaches its target", line(row));
    }

    @Test
    void everyOutcomeIsToldByASymbolAndItsWords() {
        for (Outcome outcome : Outcome.values()) {
            FleetState state = FleetState.planned(outcome);
            assertEquals(1, state.symbol().length());
            assertEquals(outcome.text(), state.word());
        }
    }

    private static String line(Population population) {
        return line(SmallFleet.opened(SmallFleet.machine("PC-1", "North", "Lab 1", population)));
    }

    private static String line(Opened opened) {
        return line(FleetRow.of(opened, Optional.empty()).get(0));
    }

    private static String line(FleetRow row) {
        return String.join("|", Arrays.stream(FleetColumn.values()).map(column -> column.text(row)).toList());
    }
}
