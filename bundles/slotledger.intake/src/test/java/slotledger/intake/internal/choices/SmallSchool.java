package slotledger.intake.internal.choices;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.intake.Known;
import slotledger.model.board.Banks;
import slotledger.model.board.Binding;
import slotledger.model.board.Board;
import slotledger.model.board.BoardForm;
import slotledger.model.board.BoardId;
import slotledger.model.board.Channel;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Fill;
import slotledger.model.board.Interleave;
import slotledger.model.board.Redundancy;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.source.Source;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.unit.Rate;

/** Two machines of one board, with a soldered slot and two sockets, and three offers. */
final class SmallSchool {

    static final ModuleKind SLOW = kind(8, 2133);
    static final ModuleKind FAST = kind(8, 2400);
    static final ModuleKind LARGE = kind(16, 2400);

    private SmallSchool() {
    }

    private static ModuleKind kind(int gib, int rate) {
        return ModuleKind.of(Generation.DDR4, Form.SO_DIMM, Capacity.ofGiB(gib)).with(Rate.of(rate)).withRanks(1);
    }

    static Known known() {
        Board board = board();
        List<Machine> machines = new ArrayList<>();
        for (String tag : List.of("PC-1", "PC-2")) {
            machines.add(new Machine(new AssetTag(tag), "", new Whereabouts("Main", "Room 7"), "", "pc", board.id(), 1,
                    Optional.empty(), Optional.empty(), Redundancy.NONE, Population.empty(board), Place.NOWHERE));
        }
        List<Offer> offers = List.of(offer("Alder", "A-1", SLOW, "Farrow"), offer("Alder", "A-2", FAST, "Marl"),
                offer("Birch", "B-1", LARGE, "Farrow"));
        return new Known(new Fleet(machines, Map.of(board.id(), board)), List.of(),
                new Market(offers, Map.of("Alder", supplier("Alder"), "Birch", supplier("Birch"))), Shelf.EMPTY);
    }

    private static Supplier supplier(String name) {
        return new Supplier(name, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Offer offer(String supplier, String part, ModuleKind kind, String maker) {
        Money price = new Money(1000, Currency.getInstance("EUR"));
        return new Offer(supplier + "/" + part, supplier, part, Optional.of(maker), kind, 1,
                List.of(new PriceStep(1, price)), PriceRule.ALL_PACKS, OptionalInt.empty(), OptionalInt.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Place.NOWHERE);
    }

    private static Board board() {
        List<Slot> slots = List.of(
                new Slot("On board", "A", 1, SlotUse.SOLDERED, 0, 0, Optional.empty(), Optional.of(SLOW)),
                new Slot("DIMM1", "A", 2, SlotUse.SOCKET, 0, 1, Optional.empty(), Optional.empty()),
                new Slot("DIMM2", "B", 1, SlotUse.SOCKET, 0, 2, Optional.empty(), Optional.empty()));
        Takes takes = new Takes(Set.of(), Generation.DDR4, Set.of(Form.SO_DIMM), Set.of(), EccOutcome.UNKNOWN,
                Set.of(), Set.of(), Optional.empty(), Optional.of(Capacity.ofGiB(16)), Set.of(), Optional.empty(),
                Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(),
                Optional.empty());
        return new Board(new BoardId("pc"), "Orrin", "PC", List.of(), BoardForm.DESKTOP, 1, List.of(),
                List.of(new Channel("A", 2), new Channel("B", 1)), slots, List.of(takes), Optional.empty(),
                Optional.empty(), new Fill(List.of("DIMM1", "DIMM2"), List.of(), Binding.RECOMMENDED, false, 1, false,
                        false, Optional.empty()), Banks.NONE, List.of(), Interleave.FLEXIBLE, List.of(), List.of(),
                Source.of(Ground.MEMORY), Map.of());
    }

}
