package slotledger.model.machine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.unit.Capacity;

/**
 * Which module is in which slot of one machine. Equal whatever the order of its slots.
 *
 * @param contents slot label to content, every slot of the board, in the board's order
 */
public record Population(Map<String, SlotContent> contents) {

    public Population {
        for (Map.Entry<String, SlotContent> entry : contents.entrySet()) {
            if (entry.getKey() == null || entry.getValue() == null) {
                throw new IllegalArgumentException("The slots of a population must not be null. Maybe EMPTY is meant.");
            }
        }
        contents = Collections.unmodifiableMap(new LinkedHashMap<>(contents));
    }

    /** All sockets empty; soldered memory in place. */
    public static Population empty(Board board) {
        Map<String, SlotContent> contents = new LinkedHashMap<>();
        for (Slot slot : board.slots()) {
            contents.put(slot.label(), slot.soldered().map(SlotContent::of).orElse(SlotContent.EMPTY));
        }
        return new Population(contents);
    }

    /** What is in the slot; empty for a label the population doesn't name. */
    public SlotContent in(String slot) {
        return contents.getOrDefault(slot, SlotContent.EMPTY);
    }

    /** The same with another content in one slot. */
    public Population with(String slot, SlotContent content) {
        Map<String, SlotContent> changed = new LinkedHashMap<>(contents);
        changed.put(slot, content);
        return new Population(changed);
    }

    public Population with(String slot, Piece piece) {
        return with(slot, SlotContent.of(piece));
    }

    /** All modules, in slot order. */
    public List<ModuleKind> modules() {
        List<ModuleKind> modules = new ArrayList<>();
        contents.values().forEach(content -> content.module().ifPresent(modules::add));
        return List.copyOf(modules);
    }

    /** All modules and fillers, in slot order. */
    public List<Piece> pieces() {
        return contents.values().stream().flatMap(content -> content.piece().stream()).toList();
    }

    /** The sum of all modules that could be read. */
    public Capacity total() {
        long kibibytes = 0;
        for (SlotContent content : contents.values()) {
            kibibytes = Math.addExact(kibibytes, content.capacity().kibibytes());
        }
        return Capacity.ofKiB(kibibytes);
    }

    /** Whether something is in a slot that could not be read, so that the total is not known. */
    public boolean hasUnread() {
        return contents.values().stream().anyMatch(SlotContent.Unread.class::isInstance);
    }
}
