package slotledger.workbench.internal.slots;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;
import slotledger.workbench.internal.Texts;

/** Where the modules of one machine come from and go to, in words. */
final class SlotWays {

    private final AssetTag machine;
    private final List<Move> moves;

    SlotWays(AssetTag machine, List<Move> moves) {
        this.machine = machine;
        this.moves = List.copyOf(moves);
    }

    /** Where the module that is in the slot before the work goes; empty where it stays. */
    Optional<Station> leaves(String slot) {
        return find(slot, Move::from, Move::to);
    }

    /** Where the module that is in the slot after the work comes from; empty where it was there before. */
    Optional<Station> arrives(String slot) {
        return find(slot, Move::to, Move::from);
    }

    boolean isHere(Station station) {
        return station instanceof Station.InSlot inSlot && inSlot.machine().equals(machine);
    }

    String to(Station station) {
        return station instanceof Station.InSlot inSlot
                ? Texts.with(Texts.way_to, name(inSlot))
                : station instanceof Station.OnShelf ? Texts.way_to_shelf : Texts.way_to_disposal;
    }

    String from(Station station) {
        return station instanceof Station.InSlot inSlot
                ? Texts.with(Texts.way_from, name(inSlot))
                : station instanceof Station.OnShelf ? Texts.way_from_shelf : Texts.way_from_order;
    }

    private String name(Station.InSlot inSlot) {
        return inSlot.machine().equals(machine) ? inSlot.slot()
                : Texts.with(Texts.way_machine, inSlot.machine(), inSlot.slot());
    }

    private Optional<Station> find(String slot, Function<Move, Station> known, Function<Move, Station> wanted) {
        Station here = new Station.InSlot(machine, slot);
        return moves.stream().filter(move -> known.apply(move).equals(here)).map(wanted).findFirst();
    }
}
