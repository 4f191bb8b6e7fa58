package slotledger.catalog.internal.resolve;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import slotledger.catalog.Catalog;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.board.SlotUse;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.observed.ObservedMachine;

/** Resolves one machine: its board, its processors, what is in its slots. */
public final class MachineResolver {

    private final Catalog catalog;

    public MachineResolver(Catalog catalog) {
        this.catalog = catalog;
    }

    /**
     * What became of one machine.
     *
     * @param machine  empty where it can't be resolved; then the findings say why
     * @param board    its board; empty where it isn't known
     * @param findings everything assumed or wrong
     */
    public record Resolution(Optional<Machine> machine, Optional<Board> board, List<Finding> findings) {
        public Resolution {
            findings = List.copyOf(findings);
            if (machine.isEmpty() && findings.isEmpty()) {
                throw new IllegalArgumentException("A machine that isn't resolved must have a finding that says why.");
            }
        }
    }

    public Resolution resolve(ObservedMachine observed) {
        Remarks remarks = new Remarks(observed);
        Optional<Board> board = BoardLookup.find(observed, catalog, remarks);
        Optional<Machine> machine = board
                .map(known -> onBoard(observed, known, remarks))
                .filter(resolved -> !remarks.hasErrors());
        return new Resolution(machine, board, remarks.findings());
    }

    private static Machine onBoard(ObservedMachine observed, Board board, Remarks remarks) {
        Placement placement = new Placement(board, observed, Listing.of(observed.slots(), board), remarks);
        int processors = ProcessorLookup.count(observed, board, placement.processorsNeeded(), remarks);
        Optional<String> processor = ProcessorLookup.name(observed, board, remarks);
        checkSlotCount(observed, board, processors, remarks);
        Population population = placement.place(processors);
        return new Machine(observed.tag(), observed.serial(), observed.where(), observed.costCentre(), observed.role(),
                board.id(), Math.max(1, processors), processor,
                Optional.of(observed.operatingSystem()).filter(name -> !name.isBlank()), Redundancy.NONE, population,
                observed.place());
    }

    private static void checkSlotCount(ObservedMachine observed, Board board, int processors, Remarks remarks) {
        // Inventories count dead connectors, soldered memory and slots of missing processors, or don't.
        int soldered = (int) board.slots().stream().filter(slot -> slot.use() == SlotUse.SOLDERED).count();
        int usable = FillOrder.usable(board, processors).size();
        Set<Integer> right = Set.copyOf(List.of(board.slots().size(), board.slots().size() - soldered,
                board.sockets().size(), usable, usable + soldered));
        if (observed.slotCount().isPresent() && !right.contains(observed.slotCount().getAsInt())) {
            remarks.warning("slot-count-differs", String.valueOf(observed.slotCount().getAsInt()),
                    "The board %s has another number of slots (%s).".formatted(board.name(), board.source()),
                    board.sockets().size() + " slots",
                    "Check the model; maybe it is another variant, or the inventory counts only some slots.");
        }
    }
}
