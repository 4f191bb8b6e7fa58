package slotledger.app.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import slotledger.catalog.Catalog;
import slotledger.catalog.CatalogException;
import slotledger.catalog.CatalogReading;
import slotledger.catalog.ResolvedFleet;
import slotledger.catalog.internal.DefaultCatalogReader;
import slotledger.catalog.internal.DefaultFleetResolver;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.plan.Plan;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Target;
import slotledger.model.unit.Money;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Planning;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.Tryouts;
import slotledger.rules.standard.StandardRules;

/** A board from a file as a user writes it, and what the product makes of modules on it. */
final class PrintedBoard {

    private static final MemoryRules RULES = StandardRules.create();
    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));
    private static final Whereabouts NOWHERE = new Whereabouts("", "");
    private static final AssetTag TAG = new AssetTag("M-1");

    /** Rules about which sockets are filled, and how. */
    private static final Set<String> FILLING =
            Set.of("fill-order", "fill-table", "matched-sets", "ranks-first", "redundancy");

    private final Catalog catalog;
    private final Board board;
    private final int processors;
    private final Redundancy redundancy;

    private PrintedBoard(Catalog catalog, int processors, Redundancy redundancy) {
        this.catalog = catalog;
        this.board = catalog.boards().get(0);
        this.processors = processors;
        this.redundancy = redundancy;
    }

    static PrintedBoard read(String name) throws IOException {
        String text;
        try (InputStream stream = PrintedBoard.class.getResourceAsStream(name + ".yaml")) {
            text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
        try {
            CatalogReading reading = new DefaultCatalogReader(
                    List.of(() -> List.of(new BoardFile(name + ".yaml", text)))).read(List.of());
            assertEquals(List.of(), reading.findings());
            return new PrintedBoard(reading.catalog(), 1, Redundancy.NONE);
        } catch (CatalogException e) {
            throw new IllegalStateException(e);
        }
    }

    PrintedBoard with(int installed) {
        return new PrintedBoard(catalog, installed, redundancy);
    }

    PrintedBoard mirrored() {
        return new PrintedBoard(catalog, processors, Redundancy.MIRRORED);
    }

    Board board() {
        return board;
    }

    /** The sockets of the installed processors. */
    List<String> sockets() {
        return Tryouts.sockets(setup(Population.empty(board)));
    }

    private Setup setup(Population population) {
        return new Setup(board, processors, Optional.empty(), Optional.empty(), redundancy, population);
    }

    /** The kind in these sockets; others hold what the board wants in an empty one. */
    Population population(Collection<String> slots, ModuleKind kind) {
        return Tryouts.population(setup(Population.empty(board)), slots, kind);
    }

    Operation operate(Collection<String> slots, ModuleKind kind) {
        return RULES.operate(setup(population(slots, kind)));
    }

    Verdict judge(Population population) {
        return RULES.judge(setup(population));
    }

    Verdict judge(Collection<String> slots, ModuleKind kind) {
        return judge(population(slots, kind));
    }

    /** What speaks against filling these sockets: whatever blocks, or that the document wants others. */
    List<String> objections(Population population) {
        return judge(population).reasons().stream()
                .filter(reason -> reason.weight() == Weight.BLOCKS
                        || reason.weight() != Weight.PASSES && FILLING.contains(reason.rule()))
                .map(Reason::toString)
                .toList();
    }

    List<String> objections(Collection<String> slots, ModuleKind kind) {
        return objections(population(slots, kind));
    }

    /** The sockets in which the product takes so many equal modules to be that an inventory only counts. */
    Set<String> whereCounted(int count, ModuleKind kind) {
        List<ObservedSlot> slots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            slots.add(new ObservedSlot(Optional.empty(), SlotContent.of(kind), "", "", Place.NOWHERE));
        }
        return filled(resolve(slots).fleet().machines().get(0).population());
    }

    /** What the product makes of a machine with such slots in an inventory. */
    ResolvedFleet resolve(List<ObservedSlot> slots) {
        ObservedMachine machine = new ObservedMachine(TAG, "", board.maker(), board.model(), NOWHERE, "", "", "", "",
                OptionalInt.of(processors), redundancy.text(), OptionalInt.empty(), Optional.empty(), slots,
                Place.NOWHERE);
        ResolvedFleet resolved =
                new DefaultFleetResolver().resolve(new ObservedFleet(List.of(machine), List.of()), catalog);
        assertEquals(List.of(), resolved.unresolved(),
                () -> resolved.findings().stream().map(Finding::toString).collect(Collectors.joining("\n")));
        return resolved;
    }

    /** The sockets into which a plan puts so many modules, all there are, of an empty machine. */
    Set<String> wherePlanned(int count, ModuleKind kind, Operation needed) {
        Machine machine = new Machine(TAG, "", NOWHERE, "", "any", board.id(), processors, Optional.empty(),
                Optional.empty(), redundancy, population(List.of(), kind), Place.NOWHERE);
        Policy policy = new Policy(NOTHING.currency(), List.of(Target.of("any", needed.usable())), Optional.empty(),
                Map.of(), NOTHING, NOTHING, 0, false, true, false, Policy.LeaveAlone.NONE);
        PlanRequest request = new PlanRequest("printed", new Fleet(List.of(machine), Map.of(board.id(), board)),
                Market.NONE, new Shelf(Map.of(kind, count)), policy, LocalDate.of(2026, 11, 25));
        try {
            Plan plan = new Planning(RULES, new ScipSolver()).plan(request, Progress.NONE);
            return filled(plan.machines().get(0).after());
        } catch (PlannerException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Set<String> filled(Population population) {
        return population.contents().entrySet().stream()
                .filter(entry -> entry.getValue().module().isPresent())
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * The printed sockets are what the product chooses for so many equal modules and what its rules accept; with any
     * one of them exchanged for another they are not.
     */
    void assertChosen(List<String> printed, ModuleKind kind) {
        Set<String> wanted = new TreeSet<>(printed);
        assertEquals(wanted, whereCounted(printed.size(), kind), "where they are taken to be");
        assertEquals(wanted, wherePlanned(printed.size(), kind, operate(printed, kind)), "where a plan puts them");
        assertAccepted(printed, kind);
    }

    void assertAccepted(List<String> printed, ModuleKind kind) {
        assertEquals(List.of(), objections(printed, kind), printed.toString());
        for (String left : printed) {
            for (String taken : sockets()) {
                if (!printed.contains(taken)) {
                    List<String> wrong = new ArrayList<>(printed);
                    wrong.set(wrong.indexOf(left), taken);
                    assertEquals(false, objections(wrong, kind).isEmpty(), wrong + " was accepted");
                }
            }
        }
    }
}
