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
    private final Blanks blanks;

    /** @param blanks gathers what is assumed of empty sockets */
    public MachineResolver(Catalog catalog, Blanks blanks) {
        this.catalog = catalog;
        this.blanks = blanks;
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
                .filter(resolved -> !remarks.hasErrors())
                .map(resolved -> withBlanks(resolved, board.get()));
        return new Resolution(machine, board, remarks.findings());
    }

    private Machine withBlanks(Machine machine, Board board) {
        Population population = blanks.in(board, machine.population(), machine.place());
        return new Machine(machine.tag(), machine.serial(), machine.where(), machine.costCentre(), machine.role(),
                machine.board(), machine.processors(), machine.processor(), machine.operatingSystem(),
                machine.redundancy(), population, machine.place());
    }

    private static Machine onBoard(ObservedMachine observed, Board board, Remarks remarks) {
        Placement placement = new Placement(board, observed, Listing.of(observed.slots(), board), remarks);
        int processors = ProcessorLookup.count(observed, board, placement.processorsNeeded(), remarks);
        Optional<String> processor = ProcessorLookup.name(observed, board, remarks);
        Redundancy redundancy = RedundancyWords.read(observed, remarks);
        checkSlotCount(observed, board, processors, remarks);
        Population population = placement.place(processors, redundancy);
        return new Machine(observed.tag(), observed.serial(), observed.where(), observed.costCentre(), observed.role(),
                board.id(), Math.max(1, processors), processor,
                Optional.of(observed.operatingSystem()).filter(name -> !name.isBlank()), redundancy, population,
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
