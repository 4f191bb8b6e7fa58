package slotledger.simm.internal;

import slotledger.model.module.ErrorCheck;

/** Check bits in the words of this trade. */
final class Parity {

    private Parity() {
    }

    static String text(ErrorCheck check) {
        return switch (check) {
            case NONE -> "no parity";
            case PARITY -> "parity";
            case ECC -> "ECC";
        };
    }
}
