package slotledger.workbench.internal.slots;

import slotledger.workbench.internal.Texts;

/** What a plan does with a slot, told by a symbol, a word and a border of its own. */
public enum SlotChange {
    KEPT("=", Texts.slot_kept, Border.THIN),
    NEW("+", Texts.slot_new, Border.THICK),
    MOVED("→", Texts.slot_moved, Border.DASHED),
    REMOVED("−", Texts.slot_removed, Border.DOTTED),
    FIXED("■", Texts.slot_fixed, Border.THIN),
    EMPTY("○", Texts.slot_empty, Border.HAIR),
    UNREAD("?", Texts.slot_unread, Border.HAIR),
    /** There is a connector, but nothing works in it. */
    DEAD("✗", Texts.slot_dead, Border.HAIR),
    /** Something is in the slot, and there is no plan yet that would say more. */
    PRESENT("●", Texts.slot_present, Border.THIN),
    /** A continuity module or blank, where there is no plan yet. */
    FILLER("◌", Texts.slot_filler, Border.THIN);

    /** The line around a slot. */
    public enum Border {
        HAIR,
        THIN,
        THICK,
        DASHED,
        DOTTED
    }

    private final String symbol;
    private final String word;
    private final Border border;

    SlotChange(String symbol, String word, Border border) {
        this.symbol = symbol;
        this.word = word;
        this.border = border;
    }

    public String symbol() {
        return symbol;
    }

    public String word() {
        return word;
    }

    public Border border() {
        return border;
    }
}
