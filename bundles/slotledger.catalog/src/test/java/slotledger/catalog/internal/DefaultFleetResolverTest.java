package slotledger.catalog.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import slotledger.catalog.Catalog;
import slotledger.catalog.CatalogException;
import slotledger.catalog.ResolvedFleet;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;

class DefaultFleetResolverTest {

    private static final Catalog CATALOG = demoCatalog();

    private static Catalog demoCatalog() {
        try {
            return new DefaultCatalogReader(List.of()).read(List.of(DemoBoards.folder())).catalog();
        } catch (CatalogException e) {
            throw new IllegalStateException(e);
        }
    }

    @Property(tries = 2000)
    void everyMachineIsInTheFleetOrUnresolvedWithAFinding(@ForAll("fleets") List<ObservedMachine> machines) {
        ResolvedFleet resolved = new DefaultFleetResolver().resolve(new ObservedFleet(machines, List.of()), CATALOG);

        List<AssetTag> ended = new ArrayList<>(resolved.fleet().machines().stream().map(Machine::tag).toList());
        ended.addAll(resolved.unresolved().stream().map(ObservedMachine::tag).toList());
        assertEquals(machines.stream().map(ObservedMachine::tag).sorted().toList(), ended.stream().sorted().toList());

        Set<AssetTag> explained = new HashSet<>();
        resolved.findings().forEach(finding -> finding.machine().ifPresent(explained::add));
        resolved.unresolved().forEach(machine -> assertTrue(explained.contains(machine.tag()), machine.toString()));
    }

    @Property(tries = 2000)
    void noModuleIsLostOrInvented(@ForAll("fleets") List<ObservedMachine> machines) {
        ResolvedFleet resolved = new DefaultFleetResolver().resolve(new ObservedFleet(machines, List.of()), CATALOG);

        for (ObservedMachine observed : machines) {
            Optional<Machine> machine = resolved.fleet().find(observed.tag());
            if (machine.isPresent() && !observed.slots().isEmpty()) {
                Board board = resolved.fleet().boardOf(machine.get());
                assertEquals(board.slots().stream().map(Slot::label).toList(),
                        List.copyOf(machine.get().population().contents().keySet()));
                assertTrue(accountsFor(observed, machine.get(), board), observed + " became " + machine.get());
            }
        }
    }

    /** All that was listed is in sockets; but for what the board has soldered, which the inventory may list or not. */
    private static boolean accountsFor(ObservedMachine observed, Machine machine, Board board) {
        Capacity listed = observed.slots().stream()
                .map(slot -> slot.content().capacity())
                .reduce(Capacity.NONE, Capacity::plus);
        Capacity soldered = board.slots().stream()
                .flatMap(slot -> slot.soldered().stream())
                .map(ModuleKind::capacity)
                .reduce(Capacity.NONE, Capacity::plus);
        Capacity total = machine.population().total();
        boolean nothingListed = listed.isNone() && !machine.population().hasUnread();
        return total.equals(listed) || total.equals(listed.plus(soldered))
                || nothingListed && observed.total().equals(Optional.of(total));
    }

    @Property(tries = 500)
    void resolvingTwiceGivesTheSame(@ForAll("fleets") List<ObservedMachine> machines) {
        ObservedFleet fleet = new ObservedFleet(machines, List.of());

        DefaultFleetResolver resolver = new DefaultFleetResolver();
        assertEquals(resolver.resolve(fleet, CATALOG), resolver.resolve(fleet, CATALOG));
    }

    @Example
    void anAssetTagThatOccursTwiceIsResolvedOnce() {
        ObservedMachine machine = machine(new Names("Kestrin", "KB-515"), List.of(), 8, 0).apply("PC-1");

        ResolvedFleet resolved =
                new DefaultFleetResolver().resolve(new ObservedFleet(List.of(machine, machine), List.of()), CATALOG);

        assertEquals(2, resolved.unresolved().size() + resolved.fleet().machines().size());
        assertTrue(resolved.findings().stream().map(Finding::code).anyMatch("duplicate-asset-tag"::equals));
    }

    private record Names(String maker, String model) {
    }

    private interface Tagged {
        ObservedMachine apply(String tag);
    }

    @Provide
    Arbitrary<List<ObservedMachine>> fleets() {
        Arbitrary<Names> known = Arbitraries.of(CATALOG.boards()).map(board -> new Names(board.maker(), board.model()));
        Arbitrary<Names> unknown = Arbitraries.of(
                new Names("", ""), new Names("Kestrin", "KB-4l0"), new Names("Nobody", "T1000"),
                new Names("", "N-250"));
        Arbitrary<Names> names = Arbitraries.frequencyOf(
                Tuple.of(5, known), Tuple.of(1, unknown));
        return Combinators.combine(names, slot().list().ofMaxSize(6), Arbitraries.integers().between(0, 16),
                        Arbitraries.integers().between(0, 8))
                .as(DefaultFleetResolverTest::machine)
                .list().ofMinSize(1).ofMaxSize(4)
                .map(machines -> {
                    List<ObservedMachine> tagged = new ArrayList<>();
                    machines.forEach(machine -> tagged.add(machine.apply("PC-" + tagged.size())));
                    return tagged;
                });
    }

    private static Tagged machine(Names names, List<ObservedSlot> slots, int total, int slotCount) {
        return tag -> new ObservedMachine(new AssetTag(tag), "", names.maker(), names.model(), new Whereabouts("", ""),
                "", "", "", slotCount % 3 == 0 ? "Corvid 5 8400" : "",
                slotCount == 7 ? OptionalInt.of(2) : OptionalInt.empty(), "",
                slotCount == 0 ? OptionalInt.empty() : OptionalInt.of(slotCount),
                total == 0 ? Optional.empty() : Optional.of(Capacity.ofGiB(total)), slots, Place.ofRow("f.csv", "", 2));
    }

    private static Arbitrary<ObservedSlot> slot() {
        List<String> labels = new ArrayList<>(List.of("", "Slot 1", "Slot 2", "BANK 0", "DIMM1", "DIMM 2", "onboard"));
        CATALOG.boards().forEach(board -> board.slots().forEach(slot -> labels.add(slot.label())));
        return Combinators.combine(Arbitraries.of(labels), content()).as((label, content) -> new ObservedSlot(
                Optional.of(label).filter(text -> !text.isEmpty()), content, "", "", Place.NOWHERE));
    }

    private static Arbitrary<SlotContent> content() {
        Arbitrary<SlotContent> module = Combinators.combine(Arbitraries.of(1, 2, 4, 8, 16),
                        Arbitraries.of(Generation.DDR3, Generation.DDR4, Generation.DDR5).optional(),
                        Arbitraries.of(Form.DIMM, Form.SO_DIMM, Form.SOLDERED).optional())
                .as((size, generation, form) -> {
                    ModuleKind kind = ModuleKind.ofCapacity(Capacity.ofGiB(size));
                    ModuleKind made = generation.map(kind::with).orElse(kind);
                    return SlotContent.of(form.map(made::with).orElse(made));
                });
        return Arbitraries.oneOf(module, module, Arbitraries.just(SlotContent.EMPTY),
                Arbitraries.just(new SlotContent.Unread("?")));
    }
}
