package slotledger.catalog.internal.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.unit.Capacity;

/**
 * What can be known of a machine of which the inventory gives no more than a total: never a split among sockets, but
 * for SIMMs, whose banks leave little choice.
 */
final class TotalOnly {

    private static final String LOOK = "Look at the memory page of the firmware setup, ask the running system"
            + " (\"dmidecode -t memory\" on Linux, Win32_PhysicalMemory on Windows), or open the machine; then write"
            + " one entry for each slot into the inventory.";

    private final Board board;
    private final ObservedMachine machine;
    private final Remarks remarks;

    TotalOnly(Board board, ObservedMachine machine, Remarks remarks) {
        this.board = board;
        this.machine = machine;
        this.remarks = remarks;
    }

    /**
     * What is in which socket; empty where nothing is, or where an error was remarked.
     *
     * @param sockets  the sockets that work
     * @param soldered what is soldered for sure
     * @param varies   whether more may be soldered
     */
    Map<String, SlotContent> place(List<String> sockets, Capacity soldered, boolean varies) {
        if (machine.total().isEmpty() || machine.total().get().isNone()) {
            without(soldered, sockets);
            return Map.of();
        }
        Capacity total = machine.total().get();
        if (varies && sockets.isEmpty() || total.equals(soldered)) {
            return Map.of();
        }
        if (!total.atLeast(soldered) || sockets.isEmpty()) {
            remarks.error("soldered-contradicts-board", total.toString(),
                    "The board %s has %s soldered%s.".formatted(board.name(), soldered,
                            sockets.isEmpty() ? " and no sockets" : ""),
                    sockets.isEmpty() ? soldered.toString() : "at least " + soldered,
                    "Check the model and the total; a total smaller by a little may leave out what graphics use.");
            return Map.of();
        }
        Capacity rest = total.minus(soldered);
        if (!machine.slots().isEmpty()) {
            remarks.error("slots-unknown", total.toString(),
                    "The inventory says that every slot is empty, and that there is memory.",
                    "what is in each of " + String.join(", ", sockets), LOOK);
            return Map.of();
        }
        Optional<SimmBanks.Split> split = varies ? Optional.empty()
                : SimmBanks.of(board, sockets).flatMap(banks -> banks.split(rest, board.takes()));
        if (split.isPresent() && sockets.size() > 1) {
            return equal(split.get(), total, sockets);
        }
        if (sockets.size() > 1 || varies || !isModuleSize(rest)) {
            remarks.error("slots-unknown", total.toString(),
                    "Only the total is known, which different modules in the %d socket(s) of the board %s can give."
                            .formatted(sockets.size(), board.name()),
                    "what is in each of " + String.join(", ", sockets),
                    LOOK);
            return Map.of();
        }
        return Map.of(sockets.get(0), SlotContent.of(ModuleKind.ofCapacity(rest)));
    }

    private Map<String, SlotContent> equal(SimmBanks.Split split, Capacity total, List<String> sockets) {
        remarks.warning("slots-assumed", total.toString(),
                "Only the total is known; it was taken for %d x %s in %s: the fewest equal modules that fill whole"
                        .formatted(split.sockets().size(), split.each(), String.join(", ", split.sockets()))
                        + " banks in order.",
                "what is in each of " + String.join(", ", sockets), LOOK);
        Map<String, SlotContent> contents = new LinkedHashMap<>();
        split.sockets().forEach(label -> contents.put(label, SlotContent.of(ModuleKind.ofCapacity(split.each()))));
        return contents;
    }

    private void without(Capacity soldered, List<String> sockets) {
        boolean saidEmpty = !machine.slots().isEmpty();
        if (saidEmpty || sockets.isEmpty() && !soldered.isNone()) {
            if (saidEmpty && soldered.isNone()) {
                remarks.warning("no-memory", "", "The inventory says that every slot is empty.", "",
                        "Check it; a machine without memory can't have reported itself.");
            }
            return;
        }
        remarks.error("memory-unknown", "", "The inventory says nothing of this machine's memory.",
                "what is in each of " + String.join(", ", sockets),
                LOOK);
    }

    /** Modules are made in sizes of a power of two, or of three times one (24 and 48 GB, JESD400-5 chip sizes). */
    private static boolean isModuleSize(Capacity capacity) {
        long kibibytes = capacity.kibibytes();
        long odd = kibibytes >> Long.numberOfTrailingZeros(kibibytes);
        return odd == 1 || odd == 3;
    }
}
