package slotledger.rules.internal.alike;

import slotledger.model.board.Takes;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.rules.LookAlike;
import slotledger.rules.internal.alike.Traits.Match;

/**
 * Two things that look alike, with what makes a piece one of them.
 *
 * @param alike        what a person can read
 * @param one          what makes a piece the one thing
 * @param other        what makes it the other
 * @param sameCapacity whether only modules of one capacity are taken for each other
 */
record AlikePair(LookAlike alike, Traits one, Traits other, boolean sameCapacity) {

    AlikePair turned() {
        return new AlikePair(alike.turned(), other, one, sameCapacity);
    }

    /** Surely the one thing and the other, and what both things have in common is the same of both pieces. */
    boolean joins(Piece first, Piece second) {
        return one.match(first) == Match.YES && other.match(second) == Match.YES && agree(first, second);
    }

    private boolean agree(Piece first, Piece second) {
        if (first instanceof ModuleKind here && second instanceof ModuleKind there) {
            return (!sameCapacity || here.capacity().equals(there.capacity()))
                    && (!one.generations().equals(other.generations()) || here.generation().equals(there.generation()))
                    && (!one.forms().equals(other.forms()) || here.form().equals(there.form()));
        }
        return true;
    }

    /** Whether the piece may be the one thing, and the slot may take the other. */
    boolean mayMislead(Piece piece, Takes takes) {
        return one.match(piece) != Match.NO && other.mayGoInto(takes) && agree(piece, takes);
    }

    private boolean agree(Piece piece, Takes takes) {
        if (piece instanceof ModuleKind kind) {
            boolean generation = !one.generations().equals(other.generations())
                    || kind.generation().filter(each -> each != takes.generation()).isEmpty();
            boolean form = !one.forms().equals(other.forms())
                    || kind.form().filter(each -> !takes.forms().contains(each)).isEmpty();
            return generation && form;
        }
        return true;
    }
}
