package slotledger.rules;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.Processor;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;

/**
 * A population on a board, with what else decides how it runs.
 *
 * @param board           the board
 * @param processors      how many processors are installed
 * @param processor       which processor; empty means unknown
 * @param operatingSystem as an inventory names it; empty means unknown
 * @param redundancy      whether memory is kept back against errors
 * @param population      what is in the slots
 */
public record Setup(
        Board board,
        int processors,
        Optional<Processor> processor,
        Optional<String> operatingSystem,
        Redundancy redundancy,
        Population population) {

    public Setup {
        Objects.requireNonNull(board, "board");
        Objects.requireNonNull(processor, "processor");
        Objects.requireNonNull(operatingSystem, "operatingSystem");
        Objects.requireNonNull(redundancy, "redundancy");
        Objects.requireNonNull(population, "population");
        if (processors < 1 || processors > board.processorSockets()) {
            throw new IllegalArgumentException("The processors (%d) on board %s must be from 1 to %d."
                    .formatted(processors, board.id(), board.processorSockets()));
        }
    }

    /** A population of a board with all its processors and nothing else known. */
    public static Setup of(Board board, Population population) {
        return new Setup(board, board.processorSockets(), Optional.empty(), Optional.empty(), Redundancy.NONE,
                population);
    }

    /** A machine of a fleet as it is now. */
    public static Setup of(Fleet fleet, Machine machine) {
        Board board = fleet.boardOf(machine);
        Optional<Processor> processor = machine.processor()
                .flatMap(name -> board.processors().stream().filter(each -> each.name().equals(name)).findFirst());
        return new Setup(
                board,
                Math.min(machine.processors(), board.processorSockets()),
                processor,
                machine.operatingSystem(),
                machine.redundancy(),
                machine.population());
    }

    public Setup with(Population other) {
        return new Setup(board, processors, processor, operatingSystem, redundancy, other);
    }
}
