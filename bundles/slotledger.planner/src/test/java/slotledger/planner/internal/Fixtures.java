package slotledger.planner.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
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
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.source.Source;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;
import slotledger.planner.PlanRequest;

/** Short ways to write fleets, offers and policies of tests; grows a request bit by bit. */
final class Fixtures {

    static final Currency EUR = Currency.getInstance("EUR");
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    final List<Machine> machines = new ArrayList<>();
    final Map<BoardId, Board> boards = new LinkedHashMap<>();
    final List<Offer> offers = new ArrayList<>();
    final Map<String, Supplier> suppliers = new LinkedHashMap<>();
    final Map<Piece, Integer> shelf = new LinkedHashMap<>();
    final List<Target> targets = new ArrayList<>();
    final Map<String, Money> centreBudgets = new LinkedHashMap<>();
    Optional<Money> budget = Optional.empty();
    int perMachine = 500;
    int perModule = 100;
    int sparePercent;
    boolean atLeastOneSpare;
    Buying buying = Buying.PLAIN;
    boolean reusePulled = true;
    boolean harvest;
    Policy.LeaveAlone leaveAlone = Policy.LeaveAlone.NONE;

    static ModuleKind kind(int gib) {
        return kind(Generation.DDR4, gib, 2666);
    }

    static ModuleKind kind(Generation generation, int gib, int rate) {
        return ModuleKind.of(generation, Form.DIMM, Capacity.ofGiB(gib)).with(Rate.of(rate)).withRanks(1)
                .with(ChipWidth.X8).with(ChipSize.ofGbit(gib)).with(ErrorCheck.NONE).with(Buffering.UNBUFFERED)
                .with(Voltage.ofMillivolts(generation == Generation.DDR4 ? 1200 : 1500));
    }

    static Money eur(long minor) {
        return new Money(minor, EUR);
    }

    /** A DDR4 board with two channels; slots A1, B1, A2, B2 and so on. */
    Board board(String id, int slots, int largestModule, int largestTotal, int setSize) {
        List<Slot> made = new ArrayList<>();
        List<String> order = new ArrayList<>();
        for (int i = 0; i < slots; i++) {
            String channel = i % 2 == 0 ? "A" : "B";
            String label = channel + (i / 2 + 1);
            made.add(new Slot(label, channel, i / 2 + 1, SlotUse.SOCKET, 0, i, Optional.empty(), Optional.empty()));
            order.add(label);
        }
        Takes takes = new Takes(Set.of(), Generation.DDR4, Set.of(Form.DIMM), Set.of(), EccOutcome.UNKNOWN, Set.of(),
                Set.of(), Optional.empty(), Optional.of(Capacity.ofGiB(largestModule)), Set.of(), Optional.empty(),
                Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(),
                Optional.empty());
        Board board = new Board(new BoardId(id), "Orrin", id, List.of(), BoardForm.DESKTOP, 1, List.of(),
                List.of(new Channel("A", 1), new Channel("B", 1)), made, List.of(takes),
                Optional.of(Capacity.ofGiB(largestTotal)), Optional.empty(),
                new Fill(order, List.of(), Binding.RECOMMENDED, false, setSize, false, false, Optional.empty()),
                Banks.NONE, List.of(), Interleave.FLEXIBLE, List.of(),
                List.of(), Source.of(Ground.MEMORY), Map.of());
        boards.put(board.id(), board);
        return board;
    }

    /** A board of four slots whose second slots come first, as on many desktops. */
    Board secondSlotsFirst(String id) {
        Board plain = board(id, 4, 8, 32, 1);
        Fill fill = new Fill(List.of("A2", "B2", "A1", "B1"), List.of(), Binding.RECOMMENDED, false, 1, false, false,
                Optional.empty());
        Board board = new Board(plain.id(), plain.maker(), plain.model(), plain.aliases(), plain.form(),
                plain.processorSockets(), plain.processors(), plain.channels(), plain.slots(), plain.takes(),
                plain.largestTotal(), Optional.empty(), fill, Banks.NONE, List.of(), plain.interleave(),
                plain.rateLimits(), plain.notes(), plain.source(),
                plain.sources());
        boards.put(board.id(), board);
        return board;
    }

    /** A machine; kinds from the first slot on, null for an empty one. */
    Machine machine(String tag, Board board, String role, Piece... kinds) {
        return machine(tag, board, role, "", kinds);
    }

    Machine machine(String tag, Board board, String role, String costCentre, Piece... kinds) {
        Population population = Population.empty(board);
        for (int i = 0; i < kinds.length; i++) {
            if (kinds[i] != null) {
                population = population.with(board.slots().get(i).label(), kinds[i]);
            }
        }
        Machine machine = new Machine(new AssetTag(tag), "", new Whereabouts("Main", "Room " + tag.charAt(0)),
                costCentre,
                role, board.id(), 1, Optional.empty(), Optional.empty(), Redundancy.NONE, population, Place.NOWHERE);
        machines.add(machine);
        return machine;
    }

    Offer offer(String supplier, Piece kind, int packSize, int stock, int... prices) {
        suppliers.computeIfAbsent(supplier,
                name -> new Supplier(name, Optional.empty(), Optional.empty(), Optional.empty()));
        List<PriceStep> steps = new ArrayList<>();
        for (int i = 0; i < prices.length; i += 2) {
            steps.add(new PriceStep(prices[i], eur(prices[i + 1])));
        }
        String part = "P" + (offers.size() + 1);
        Offer offer = new Offer(supplier + "/" + part, supplier, part, kind, packSize, steps,
                stock < 0 ? OptionalInt.empty() : OptionalInt.of(stock), OptionalInt.empty(), Optional.empty(),
                Optional.empty(), Place.NOWHERE);
        offers.add(offer);
        return offer;
    }

    /** Each price of the offer holds for the packs from its quantity on. */
    Offer furtherPacks(Offer offer) {
        return change(offer, PriceRule.FURTHER_PACKS, offer.leadDays(), offer.validUntil(), offer.tax());
    }

    Offer arrivingIn(int days, Offer offer) {
        return change(offer, offer.rule(), OptionalInt.of(days), offer.validUntil(), offer.tax());
    }

    Offer holdingUntil(LocalDate day, Offer offer) {
        return change(offer, offer.rule(), offer.leadDays(), Optional.of(day), offer.tax());
    }

    Offer taxed(int percent, Offer offer) {
        return change(offer, offer.rule(), offer.leadDays(), offer.validUntil(), Optional.of(Percent.of(percent)));
    }

    private Offer change(
            Offer offer, PriceRule rule, OptionalInt days, Optional<LocalDate> until, Optional<Percent> tax) {
        Offer changed = new Offer(offer.id(), offer.supplier(), offer.part(), offer.maker(), offer.piece(),
                offer.packSize(), offer.steps(), rule, offer.stock(), days, offer.priceDate(), until, tax,
                offer.place());
        offers.set(offers.indexOf(offer), changed);
        return changed;
    }

    void terms(String name, long shipping, long freeFrom, long minimum) {
        suppliers.put(name, new Supplier(name, some(shipping), some(freeFrom), some(minimum)));
    }

    private static Optional<Money> some(long minor) {
        return minor < 0 ? Optional.empty() : Optional.of(eur(minor));
    }

    void target(String role, int gib, int weight) {
        target(role, Capacity.ofGiB(gib), weight);
    }

    void target(String role, Capacity capacity, int weight) {
        targets.add(new Target(role, capacity, false, false, Optional.empty(), weight));
    }

    void add(Board board) {
        boards.put(board.id(), board);
    }

    Policy policy() {
        return new Policy(EUR, targets, budget, centreBudgets, eur(perMachine), eur(perModule), sparePercent,
                atLeastOneSpare, reusePulled, harvest, leaveAlone, buying, List.of());
    }

    PlanRequest request() {
        return new PlanRequest("test", new Fleet(machines, boards), new Market(offers, suppliers),
                new Shelf(shelf), policy(), DAY);
    }
}
