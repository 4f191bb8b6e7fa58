package slotledger.rules.spi;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Generation;
import slotledger.model.unit.Capacity;
import slotledger.rules.Setup;

/** A population on a board, seen by one of the ways of filling the board allows; sorted so that rules read it fast. */
public final class Situation {

    private final Setup setup;
    private final Layout layout;
    private final Layout.Way way;
    private final Layout.Filling filling;
    private final List<Placed> modules;
    private final List<Placed> described;
    private final List<String> filled;
    private final BitSet filledSlots;
    private final long[] channelKibibytes;
    private List<FillRow> matchingRows;
    private final boolean unread;
    private final Capacity total;

    Situation(Setup setup, Layout layout, Layout.Way way) {
        this.setup = setup;
        this.layout = layout;
        this.way = way;
        modules = new ArrayList<>(layout.slots.length);
        described = new ArrayList<>(layout.slots.length);
        filled = new ArrayList<>(layout.slots.length);
        filledSlots = new BitSet(layout.slots.length);
        channelKibibytes = new long[layout.board.channels().size()];
        boolean anyUnread = false;
        long kibibytes = 0;
        for (int i = 0; i < layout.slots.length; i++) {
            Slot slot = layout.slots[i];
            SlotContent content = setup.population().in(slot.label());
            if (content instanceof SlotContent.Holds holds) {
                Optional<Takes> takes = way.takes().get(i);
                Placed placed = new Placed(slot, layout.channelOf[i], layout.processorOf[i], holds.kind(), takes);
                modules.add(placed);
                kibibytes += holds.kind().capacity().kibibytes();
                channelKibibytes[layout.channelOf[i]] += holds.kind().capacity().kibibytes();
                if (slot.use() == SlotUse.SOCKET && takes.isPresent()) {
                    described.add(placed);
                }
            }
            boolean isUnread = content instanceof SlotContent.Unread;
            anyUnread |= isUnread;
            if (slot.use() == SlotUse.SOCKET && (isUnread || content instanceof SlotContent.Holds)) {
                filled.add(slot.label());
                filledSlots.set(i);
            }
        }
        filling = way.filling(setup.processors(), generationUsed());
        unread = anyUnread;
        total = Capacity.ofKiB(kibibytes);
    }

    /** Null where there are several, or the board has one only. */
    private Generation generationUsed() {
        Generation used = null;
        for (int i = 0; i < described.size() && way.generations().size() > 1; i++) {
            Generation own = described.get(i).way().generation();
            if (used != null && own != used) {
                return null;
            }
            used = own;
        }
        return used;
    }

    public Setup setup() {
        return setup;
    }

    public Board board() {
        return setup.board();
    }

    /** All modules that could be read, soldered memory among them, in the board's order. */
    public List<Placed> modules() {
        return modules;
    }

    /** Modules in sockets of which the board says what they take. */
    public List<Placed> described() {
        return described;
    }

    /** Labels of the sockets with a module, or with something that could not be read, in the board's order. */
    public List<String> filled() {
        return filled;
    }

    /** Whether something in a slot could not be read, so that totals are not known. */
    public boolean hasUnread() {
        return unread;
    }

    /** The sum of all modules that could be read. */
    public Capacity total() {
        return total;
    }

    /** What the modules of one channel that could be read hold, in KiB; by its index in the board's list. */
    public long channelKibibytes(int channel) {
        return channelKibibytes[channel];
    }

    /** The modules of one channel, by its index in the board's list. */
    public List<Placed> inChannel(int channel) {
        List<Placed> found = new ArrayList<>(4);
        for (Placed module : modules) {
            if (module.channel() == channel) {
                found.add(module);
            }
        }
        return found;
    }

    /** The generations the board takes in this way. */
    public Set<Generation> generations() {
        return way.generations();
    }

    /** Whether the processor of a slot is installed; by the slot's index in the board's list. */
    public boolean isInstalled(int slot) {
        return layout.processorOf[slot] <= setup.processors();
    }

    /** What a slot takes in this way, by its index in the board's list; empty where this way says nothing of it. */
    public Optional<Takes> takes(int slot) {
        return way.takes().get(slot);
    }

    /** Whether any way of the board speaks of the socket. */
    public boolean anyWayDescribes(Slot slot) {
        return layout.described.get(layout.board.slots().indexOf(slot));
    }

    /**
     * The order of filling, without sockets of absent processors and such as stay empty in this way, or because
     * the board is used with another generation; empty where no document says.
     */
    public List<String> order() {
        return filling.order();
    }

    /** The banks the document names, without such as have sockets that the order leaves out. */
    public List<Bank> banks() {
        return filling.banks();
    }

    /** The printed rows for the installed processors that name exactly the sockets filled. */
    public List<FillRow> matchingRows() {
        if (matchingRows == null) {
            List<FillRow> found = List.of();
            List<BitSet> slots = filling.rowSlots();
            for (int i = 0; i < slots.size(); i++) {
                if (slots.get(i).equals(filledSlots)) {
                    found = found.isEmpty() ? new ArrayList<>(2) : found;
                    found.add(rows().get(i));
                }
            }
            matchingRows = found;
        }
        return matchingRows;
    }

    /** The printed rows for the installed processors, without such as name sockets that the order leaves out. */
    public List<FillRow> rows() {
        return filling.rows();
    }
}
