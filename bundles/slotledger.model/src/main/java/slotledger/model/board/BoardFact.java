package slotledger.model.board;

/** The facts of a board that can have a source of their own. */
public enum BoardFact {
    SLOTS,
    CHANNELS,
    TAKES,
    FORM,
    BUFFERING,
    ECC,
    VOLTAGE,
    LARGEST_MODULE,
    CHIP_WIDTH,
    CHIP_SIZE,
    RANKS,
    LARGEST_TOTAL,
    FILL,
    INTERLEAVE,
    RATES,
    SOLDERED,
    PROCESSORS,
    ACCESS,
    BANKS,
    ADDRESSABLE,
    REDUNDANCY,
    ACCESS_TIME,
    CONTACTS,
    STACK
}
