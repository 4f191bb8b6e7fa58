package slotledger.app.internal;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import slotledger.catalog.ResolvedFleet;
import slotledger.model.board.Banks;
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
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Buffering;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.plan.Station;
import slotledger.model.proof.Proof;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.source.Source;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceStep;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.unit.Voltage;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Operation;
import slotledger.rules.MemoryRules;
import slotledger.rules.standard.StandardRules;

/** A board with two slots of at most 16 GB, and machines and plans on it. */
final class SmallWorld {

    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    private final MemoryRules rules = StandardRules.create();
    private final Board board = board();

    Fleet fleet(Machine... machines) {
        return new Fleet(List.of(machines), Map.of(board.id(), board));
    }

    Machine machine(String tag, String population) {
        return new Machine(new AssetTag(tag), "", new Whereabouts("", ""), "", "lab", board.id(), 1, Optional.empty(),
                Optional.empty(), Redundancy.NONE, population(population), Place.NOWHERE);
    }

    MachinePlan plan(String tag, String before, String after) {
        Machine machine = machine(tag, before);
        boolean opened = !before.equals(after);
        List<Move> moves = opened
                ? List.of(new Move(SlotContent.of(kind("8")), new Station.OnShelf(),
                        new Station.InSlot(machine.tag(), "S2")))
                : List.of();
        return new MachinePlan(machine, Optional.empty(), population(after),
                opened ? Outcome.REACHES_TARGET : Outcome.ON_TARGET, moves, runs(before), runs(after),
                Optional.empty(), NOTHING, opened ? 1 : 0);
    }

    Proof prove(List<MachinePlan> machines, ResolvedFleet after, List<Finding> findings) {
        return prove(machines, after, Set.of(), findings);
    }

    Proof prove(
            List<MachinePlan> machines, ResolvedFleet after, Set<AssetTag> namingFillers, List<Finding> findings) {
        return new ProofMaker(rules).prove(plan(machines), after, namingFillers, findings, DAY);
    }

    static Plan plan(List<MachinePlan> machines) {
        Policy policy = new Policy(NOTHING.currency(), List.of(), Optional.empty(), Map.of(), NOTHING, NOTHING, 0,
                false, true, false, Policy.LeaveAlone.NONE);
        return new Plan("small", DAY, policy, machines, List.of(), List.of(),
                new Spending(NOTHING, Map.of(), NOTHING, Map.of()),
                new Optimality(0, 0, NOTHING, NOTHING, "none", List.of(), false), List.of());
    }

    /** A plan that orders so many modules of 8 GB in packs of one, all of them spares. */
    static Plan ordering(String supplier, String part, int modules) {
        Money price = Money.of(BigDecimal.TEN, NOTHING.currency());
        Offer offer = new Offer(supplier + "/" + part, supplier, part, kind("8"), 1, List.of(new PriceStep(1, price)),
                OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), Place.NOWHERE);
        Plan none = plan(List.of());
        return new Plan(none.title(), DAY, none.policy(), List.of(),
                List.of(new Purchase(offer, modules, List.of(), modules, 0)), List.of(), none.spending(),
                none.optimality(), List.of());
    }

    private static Operation runs(String population) {
        Capacity total = population(population).total();
        return new Operation(total, total, total, new ChannelMode(1, total, Capacity.NONE), Optional.empty(), "",
                Bandwidth.NONE, false);
    }

    private static Population population(String text) {
        String[] slots = text.split(" ");
        return new Population(new TreeMap<>(Map.of("S1", content(slots[0]), "S2", content(slots[1]))));
    }

    private static SlotContent content(String text) {
        return switch (text) {
            case "-" -> SlotContent.EMPTY;
            case "b" -> SlotContent.of(Filler.AIR_BLANK);
            default -> SlotContent.of(kind(text));
        };
    }

    private static ModuleKind kind(String gibibytes) {
        return ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(Long.parseLong(gibibytes)))
                .with(Buffering.UNBUFFERED);
    }

    private static Board board() {
        Takes takes = new Takes(Set.of(), Generation.DDR4, Set.of(Form.DIMM), Set.of(Buffering.UNBUFFERED),
                EccOutcome.IGNORED, Set.of(Voltage.ofMillivolts(1200)), Set.of(), Optional.empty(),
                Optional.of(Capacity.ofGiB(16)), Set.of(), Optional.empty(), Optional.empty(), OptionalInt.empty(),
                OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
        return new Board(new BoardId("small"), "Small", "One", List.of(), BoardForm.DESKTOP, 1, List.of(),
                List.of(new Channel("A", 1), new Channel("B", 1)),
                List.of(slot("S1", "A", 0), slot("S2", "B", 1)), List.of(takes), Optional.empty(), Optional.empty(),
                Fill.ANY, Banks.NONE, List.of(),
                Interleave.FLEXIBLE, List.of(), List.of(), Source.of(Ground.MEMORY), Map.of());
    }

    private static Slot slot(String label, String channel, int column) {
        return new Slot(label, channel, 1, SlotUse.SOCKET, 0, column, Optional.empty(), Optional.empty());
    }
}
