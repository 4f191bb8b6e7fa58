package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.unit.Capacity;

/** What is soldered to a machine's board, and which entries of the inventory stand for it. */
final class SolderedMemory {

    private final Board board;
    private final ObservedMachine machine;
    private final Remarks remarks;
    private final List<Slot> slots;

    SolderedMemory(Board board, ObservedMachine machine, Remarks remarks) {
        this.board = board;
        this.machine = machine;
        this.remarks = remarks;
        this.slots = board.slots().stream().filter(slot -> slot.use() == SlotUse.SOLDERED).toList();
    }

    /** The sum the board file fixes. */
    Capacity fixed() {
        return slots.stream()
                .flatMap(slot -> slot.soldered().stream())
                .map(ModuleKind::capacity)
                .reduce(Capacity.NONE, Capacity::plus);
    }

    /** Whether the board file leaves some of it open. */
    boolean varies() {
        return slots.stream().anyMatch(slot -> slot.soldered().isEmpty());
    }

    /** The loose entries without those that stand for soldered memory. */
    List<ObservedSlot> without(Listing listing, int freeSockets) {
        List<ObservedSlot> loose = listing.looseMemory();
        boolean saidToBe = listing.soldered().stream().anyMatch(slot -> !slot.content().isEmpty());
        if (slots.isEmpty() || varies() || saidToBe) {
            return loose;
        }
        Capacity sum = Listing.sum(loose).plus(Listing.sum(listing.placed().values()));
        if (loose.isEmpty()) {
            if (machine.total().equals(Optional.of(sum))) {
                differs("The inventory's total leaves no room for the soldered memory.", sum);
            }
            return loose;
        }
        Optional<List<ObservedSlot>> rest = rest(loose);
        boolean tooMany = loose.size() > freeSockets;
        if (tooMany || machine.total().equals(Optional.of(sum))) {
            return counted(loose, rest, tooMany);
        }
        if (machine.total().isEmpty() && rest.isPresent()) {
            differs("The inventory lists a module as large as the soldered memory, which may be this memory or a"
                    + " module beside it.", sum);
        }
        return loose;
    }

    private List<ObservedSlot> counted(
            List<ObservedSlot> loose, Optional<List<ObservedSlot>> rest, boolean tooMany) {
        if (rest.isPresent()) {
            remarks.note("slots-assumed", "", "%s of the memory listed is taken to be what is soldered to the board."
                    .formatted(fixed()), "", "Check it on opening the machine.");
            return rest.get();
        }
        if (!tooMany) {
            differs("The inventory's total leaves no room for the soldered memory.", Listing.sum(loose));
        }
        return loose;
    }

    /** The entries without one for each soldered amount, or without one for all of it; empty where none is as large. */
    private Optional<List<ObservedSlot>> rest(List<ObservedSlot> loose) {
        List<ObservedSlot> rest = new ArrayList<>(loose);
        boolean each = slots.stream()
                .flatMap(slot -> slot.soldered().stream())
                .allMatch(kind -> removeFirst(rest, kind.capacity()));
        if (each) {
            return Optional.of(rest);
        }
        List<ObservedSlot> others = new ArrayList<>(loose);
        return removeFirst(others, fixed()) ? Optional.of(others) : Optional.empty();
    }

    private static boolean removeFirst(List<ObservedSlot> slots, Capacity capacity) {
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).content().capacity().equals(capacity)) {
                slots.remove(i);
                return true;
            }
        }
        return false;
    }

    /**
     * What is in each soldered slot.
     *
     * @param listed    entries said to be soldered
     * @param inSockets sum of the modules in sockets; empty where one could not be read
     */
    Map<String, SlotContent> contents(List<ObservedSlot> listed, Optional<Capacity> inSockets) {
        List<ModuleKind> kinds = listed.stream().flatMap(slot -> slot.content().module().stream()).toList();
        Capacity said = Listing.sum(listed);
        if (!said.isNone() && (slots.isEmpty() || !varies() && !said.equals(fixed()))) {
            differs("The board file says that %s is soldered.".formatted(slots.isEmpty() ? "nothing" : fixed()), said);
        }
        Map<String, SlotContent> contents = new LinkedHashMap<>();
        List<Slot> open = slots.stream().filter(slot -> slot.soldered().isEmpty()).toList();
        slots.forEach(slot -> slot.soldered().ifPresent(kind -> contents.put(slot.label(), SlotContent.of(kind))));
        for (int i = 0; i < open.size(); i++) {
            contents.put(open.get(i).label(), open.size() == kinds.size()
                    ? SlotContent.of(kinds.get(i).with(Form.SOLDERED))
                    : left(open.size(), said, inSockets).<SlotContent>map(SlotContent::of).orElseGet(this::unread));
        }
        return contents;
    }

    /** The amount in the only open soldered slot: what is said, else what the total leaves for it. */
    private Optional<ModuleKind> left(int open, Capacity said, Optional<Capacity> inSockets) {
        if (open != 1) {
            return Optional.empty();
        }
        Optional<Capacity> all = said.isNone()
                ? machine.total().filter(total -> inSockets.filter(total::atLeast).isPresent())
                        .map(total -> total.minus(inSockets.get()))
                : Optional.of(said);
        return all.filter(amount -> amount.compareTo(fixed()) > 0)
                .map(amount -> ModuleKind.ofCapacity(amount.minus(fixed())).with(Form.SOLDERED));
    }

    private SlotContent unread() {
        remarks.warning("soldered-unknown", "",
                "How much memory is soldered differs between machines of this model, and the inventory doesn't say.",
                "the soldered amount, or the total", "Look up the total in the operating system and add it.");
        return new SlotContent.Unread("soldered, amount not in the inventory");
    }

    private void differs(String message, Capacity seen) {
        remarks.error("soldered-contradicts-board", seen.toString(), message,
                "%s soldered, other modules beside it (%s)".formatted(fixed(), board.name()),
                "Look up the total and the slots in the firmware setup, and write one entry for each slot into the"
                        + " inventory; or check the model.");
    }
}
