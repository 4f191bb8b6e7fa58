package slotledger.workbench.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.app.Project;
import slotledger.app.Survey;
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
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.source.Source;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Target;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Operation;
import slotledger.workbench.internal.session.Opened;

/** Machines of one made-up board with two sockets and a soldered module, each a line of text away. */
public final class SmallFleet {

    public static final Board BOARD = board();

    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));

    private SmallFleet() {
    }

    public static ModuleKind dimm(int gibibytes) {
        return ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(gibibytes));
    }

    /** A machine with its own soldered 4 GB, and nothing else unless added. */
    public static Machine machine(String tag, String site, String room, Population population) {
        return new Machine(new AssetTag(tag), "", new Whereabouts(site, room), "", "teaching", BOARD.id(), 1,
                Optional.empty(), Optional.empty(), Redundancy.NONE, population, Place.NOWHERE);
    }

    public static ObservedMachine unresolved(String tag, ObservedSlot... slots) {
        return new ObservedMachine(new AssetTag(tag), "", "Tarn", "4200?", new Whereabouts("North", "Store"), "",
                "teaching", "", "", OptionalInt.empty(), "", OptionalInt.empty(), Optional.empty(), List.of(slots),
                Place.NOWHERE);
    }

    public static Opened opened(List<Machine> machines, List<ObservedMachine> unresolved, List<Finding> findings) {
        Project project = new Project("Spring", List.of(), Optional.empty(), List.of(), List.of(), List.of(),
                Optional.empty(), LocalDate.of(2026, 3, 2));
        Policy policy = new Policy(NOTHING.currency(), List.of(Target.of("teaching", Capacity.ofGiB(8))),
                Optional.empty(), Map.of(), NOTHING, NOTHING, 0, false, true, false, Policy.LeaveAlone.NONE);
        Survey survey = new Survey(project, List.of(), machines.size() + unresolved.size(), List.of(BOARD),
                new Fleet(machines, Map.of(BOARD.id(), BOARD)), unresolved, Market.NONE, Shelf.EMPTY,
                Optional.of(policy), findings);
        return new Opened(survey, machines.stream()
                .collect(Collectors.toMap(Machine::tag, machine -> operation(machine.population()))), Map.of());
    }

    public static Opened opened(Machine... machines) {
        return opened(List.of(machines), List.of(), List.of());
    }

    /** The same project with a machine that lacks something of its target. */
    public static Opened lacking(Machine machine, String... lacks) {
        Opened opened = opened(machine);
        return new Opened(opened.survey(), opened.runsNow(), Map.of(machine.tag(), List.of(lacks)));
    }

    public static MachinePlan planned(Machine machine, Population after, Outcome outcome, Move... moves) {
        Optional<Obstacle> obstacle = outcome == Outcome.NOT_HELPED
                ? Optional.of(new Obstacle(Obstacle.Kind.BUDGET, "The money is spent.", "50 more.", List.of()))
                : Optional.empty();
        return new MachinePlan(machine, Optional.empty(), after, outcome, List.of(moves),
                operation(machine.population()), operation(after), obstacle, NOTHING, moves.length == 0 ? 0 : 1);
    }

    public static Plan plan(Opened opened, MachinePlan... machines) {
        return new Plan("Spring", LocalDate.of(2026, 3, 2), opened.survey().policy().orElseThrow(), List.of(machines),
                List.of(), List.of(), new Spending(NOTHING, Map.of(), NOTHING, Map.of()),
                new Optimality(1, 1, NOTHING, NOTHING, "none", List.of(), false), List.of());
    }

    public static Operation operation(Population population) {
        Capacity total = population.total();
        return new Operation(total, total, total, new ChannelMode(1, total, Capacity.NONE), Optional.empty(), "",
                Bandwidth.NONE, false);
    }

    private static Board board() {
        List<Slot> slots = new ArrayList<>();
        slots.add(new Slot("Chips", "A", 1, SlotUse.SOLDERED, 0, 0, Optional.empty(),
                Optional.of(ModuleKind.of(Generation.DDR4, Form.SOLDERED, Capacity.ofGiB(4)))));
        slots.add(new Slot("S1", "A", 2, SlotUse.SOCKET, 2, 0, Optional.empty(), Optional.empty()));
        slots.add(new Slot("S2", "B", 1, SlotUse.SOCKET, 2, 3, Optional.empty(), Optional.empty()));
        Takes takes = new Takes(Set.of(), Generation.DDR4, Set.of(Form.DIMM), Set.of(), EccOutcome.UNKNOWN, Set.of(),
                Set.of(), Optional.empty(), Optional.empty(), Set.of(), Optional.empty(), Optional.empty(),
                OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
        return new Board(new BoardId("tarn-210"), "Tarn", "210", List.of(), BoardForm.DESKTOP, 1, List.of(),
                List.of(new Channel("A", 1), new Channel("B", 1)), slots, List.of(takes), Optional.empty(),
                Optional.empty(), Fill.ANY, Banks.NONE, List.of(),
                Interleave.FLEXIBLE, List.of(), List.of(), Source.of(Ground.PERSON), Map.of());
    }
}
