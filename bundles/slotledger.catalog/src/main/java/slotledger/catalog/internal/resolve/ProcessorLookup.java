package slotledger.catalog.internal.resolve;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slotledger.catalog.internal.match.Names;
import slotledger.model.board.Board;
import slotledger.model.board.Processor;
import slotledger.model.observed.ObservedMachine;

/** Finds how many processors a machine has, and which. */
final class ProcessorLookup {

    private ProcessorLookup() {
    }

    /**
     * The number of processors.
     *
     * @param needed the least number that the filled slots allow
     */
    static int count(ObservedMachine machine, Board board, int needed, Remarks remarks) {
        if (machine.processors().isEmpty()) {
            if (board.processorSockets() > 1 && needed == 1) {
                remarks.warning("processors-assumed", "",
                        "The inventory doesn't say how many of the %d processors are installed; one is assumed."
                                .formatted(board.processorSockets()),
                        "a number of processors", "Slots of a missing processor don't work. Look the number up in the"
                                + " firmware setup or the operating system, and add it to the inventory.");
            }
            return needed;
        }
        int count = machine.processors().getAsInt();
        if (count < 1 || count > board.processorSockets()) {
            remarks.error("processors-contradict-board", String.valueOf(count),
                    "The board %s doesn't take this many processors.".formatted(board.name()),
                    "1 to " + board.processorSockets(), "Check the number and the model in the inventory.");
            return needed;
        }
        if (count < needed) {
            remarks.error("processors-contradict-slots", String.valueOf(count),
                    "Modules are listed in slots that need %d processors.".formatted(needed), "at least " + needed,
                    "Check how many processors are installed, and which slots hold modules.");
        }
        return count;
    }

    /** The board's name for the processor; the longest of its names that the inventory's text contains. */
    static Optional<String> name(ObservedMachine machine, Board board, Remarks remarks) {
        if (machine.processor().isBlank() || board.processors().isEmpty()) {
            return Optional.empty();
        }
        List<String> written = Names.tokens(machine.processor());
        Optional<Processor> found = board.processors().stream()
                .filter(processor -> longest(processor, written) > 0)
                .max(Comparator.comparingInt(processor -> longest(processor, written)));
        if (found.isEmpty()) {
            remarks.note("processor-unknown", machine.processor(),
                    "The board file of %s lists no such processor; its memory limits aren't known."
                            .formatted(board.name()),
                    "one of " + String.join(", ", board.processors().stream().map(Processor::name).toList()),
                    "Add the processor, or its name as an alias, to the board file.");
        }
        return found.map(Processor::name);
    }

    private static int longest(Processor processor, List<String> written) {
        return Stream.concat(Stream.of(processor.name()), processor.aliases().stream())
                .map(Names::tokens)
                .filter(tokens -> !tokens.isEmpty() && Collections.indexOfSubList(written, tokens) >= 0)
                .mapToInt(List::size)
                .max()
                .orElse(0);
    }
}
