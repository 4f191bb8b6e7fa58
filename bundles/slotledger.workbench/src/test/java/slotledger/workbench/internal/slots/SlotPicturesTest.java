package slotledger.workbench.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.plan.Move;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Station;
import slotledger.model.source.Place;
import slotledger.workbench.internal.SmallFleet;
import slotledger.workbench.internal.session.Opened;

class SlotPicturesTest {

    private static final AssetTag TAG = new AssetTag("PC-1");
    private static final Population ONE = Population.empty(SmallFleet.BOARD).with("S1", SmallFleet.dimm(4));

    @Test
    void beforeAPlanThereIsOnePictureThatSaysWhatIsInUse() {
        List<SlotPicture> pictures =
                SlotPictures.of(SmallFleet.opened(machine(ONE)), Optional.empty(), TAG);
        assertEquals(1, pictures.size());
        assertEquals("Now", pictures.get(0).title());
        assertEquals("8 GB, single channel", pictures.get(0).facts());
        assertEquals("""
                Chips at 0,0: 4 GB; DDR4 soldered; ■ soldered
                S1 at 1,0: 4 GB; DDR4 DIMM; ● in use
                S2 at 1,1: –; ○ empty
                """, text(pictures.get(0)));
    }

    @Test
    void aContinuityModuleIsAFiller() {
        Population chained = ONE.with("S2", Filler.CONTINUITY_184);
        assertEquals("S2 at 1,1: 184-pin continuity module; ◌ filler",
                text(SlotPictures.of(SmallFleet.opened(machine(chained)), Optional.empty(), TAG).get(0)).lines()
                        .skip(2).findFirst().orElseThrow());
    }

    @Test
    void theSlotsAreWhereTheBoardHasThemWithoutItsGaps() {
        SlotPicture picture = SlotPictures.of(SmallFleet.opened(machine(ONE)), Optional.empty(), TAG).get(0);
        assertEquals(2, picture.rows());
        assertEquals(2, picture.columns());
    }

    @Test
    void aModuleThatChangesItsSlotIsMovedInBothPictures() {
        Population after = Population.empty(SmallFleet.BOARD)
                .with("S2", SmallFleet.dimm(4)).with("S1", SmallFleet.dimm(8));
        List<SlotPicture> pictures = planned(after,
                new Move(ONE.in("S1"), slot("S1"), slot("S2")),
                new Move(after.in("S1"), new Station.FromOrder("offer"), slot("S1")));
        assertEquals("""
                Chips at 0,0: 4 GB; DDR4 soldered; ■ soldered
                S1 at 1,0: 4 GB; DDR4 DIMM; → moved: to S2
                S2 at 1,1: –; ○ empty
                """, text(pictures.get(0)));
        assertEquals("""
                Chips at 0,0: 4 GB; DDR4 soldered; ■ soldered
                S1 at 1,0: 8 GB; DDR4 DIMM; + new: from the order
                S2 at 1,1: 4 GB; DDR4 DIMM; → moved: from S1
                """, text(pictures.get(1)));
    }

    @Test
    void modulesComeFromAndGoToOtherMachinesShelfAndDisposal() {
        Population after = Population.empty(SmallFleet.BOARD).with("S2", SmallFleet.dimm(8));
        Station other = new Station.InSlot(new AssetTag("PC-2"), "S1");
        assertEquals("− removed: to PC-2, slot S1", planned(after, new Move(ONE.in("S1"), slot("S1"), other),
                new Move(after.in("S2"), new Station.OnShelf(), slot("S2"))).get(0).boxes().get(1).mark());
        assertEquals("− removed: to disposal", planned(after,
                new Move(ONE.in("S1"), slot("S1"), new Station.Disposal())).get(0).boxes().get(1).mark());
        assertEquals("− removed: to the shelf", planned(after,
                new Move(ONE.in("S1"), slot("S1"), new Station.OnShelf())).get(0).boxes().get(1).mark());
        assertEquals("+ new: from the shelf", planned(after,
                new Move(after.in("S2"), new Station.OnShelf(), slot("S2"))).get(1).boxes().get(2).mark());
        assertEquals("+ new: from PC-2, slot S1", planned(after,
                new Move(after.in("S2"), other, slot("S2"))).get(1).boxes().get(2).mark());
    }

    @Test
    void whatStaysIsKept() {
        Population after = ONE.with("S2", SmallFleet.dimm(4));
        List<SlotPicture> pictures =
                planned(after, new Move(after.in("S2"), new Station.FromOrder("offer"), slot("S2")));
        assertEquals(SlotChange.KEPT, pictures.get(0).boxes().get(1).change());
        assertEquals(SlotChange.KEPT, pictures.get(1).boxes().get(1).change());
    }

    @Test
    void theTotalIsAtLeastWhatCouldBeRead() {
        Machine machine = machine(ONE.with("S2", new SlotContent.Unread("4G?")));
        SlotPicture picture = SlotPictures.of(SmallFleet.opened(machine), Optional.empty(), TAG).get(0);
        assertEquals("at least 8 GB, single channel", picture.facts());
        assertEquals("? not read", picture.boxes().get(2).mark());
    }

    @Test
    void aMachineOfUnknownBoardShowsItsModulesInARow() {
        ObservedSlot named = new ObservedSlot(
                Optional.of("DIMM1"), SlotContent.of(SmallFleet.dimm(2)), "", "", Place.NOWHERE);
        ObservedSlot counted = new ObservedSlot(Optional.empty(), SlotContent.EMPTY, "", "", Place.NOWHERE);
        Opened opened = SmallFleet.opened(
                List.of(), List.of(SmallFleet.unresolved("PC-1", named, counted)), List.of());
        assertEquals("""
                DIMM1 at 0,0: 2 GB; DDR4 DIMM; ● in use
                Module 2 at 0,1: –; ○ empty
                """, text(SlotPictures.of(opened, Optional.empty(), TAG).get(0)));
    }

    @Test
    void aMachineNobodyKnowsHasNoPicture() {
        assertEquals(List.of(), SlotPictures.of(SmallFleet.opened(), Optional.empty(), TAG));
    }

    private static Machine machine(Population population) {
        return SmallFleet.machine(TAG.value(), "North", "Lab 1", population);
    }

    private static Station slot(String label) {
        return new Station.InSlot(TAG, label);
    }

    private static List<SlotPicture> planned(Population after, Move... moves) {
        Opened opened = SmallFleet.opened(machine(ONE));
        return SlotPictures.of(opened, Optional.of(SmallFleet.plan(opened,
                SmallFleet.planned(machine(ONE), after, Outcome.REACHES_TARGET, moves))), TAG);
    }

    private static String text(SlotPicture picture) {
        StringBuilder text = new StringBuilder();
        for (SlotBox box : picture.boxes()) {
            text.append("%s at %d,%d: %s; %s%n".formatted(box.label(), box.row(), box.column(),
                    String.join("; ", box.lines()), box.mark()).replace(System.lineSeparator(), "\n"));
        }
        return text.toString();
    }
}
