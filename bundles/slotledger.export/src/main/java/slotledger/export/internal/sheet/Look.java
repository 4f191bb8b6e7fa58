package slotledger.export.internal.sheet;

/** How a cell looks. What may be changed is told by its border and by words on the sheet, not by its ground alone. */
public enum Look {
    TITLE,
    SECTION,
    NOTE,
    HEADER,
    /** The heading of a column of numbers. */
    HEADER_NUMBER,
    /** The heading of a column of a grid. */
    HEADER_CELL,
    TEXT,
    STRONG,
    COUNT,
    COUNT_STRONG,
    COUNT_INPUT,
    MONEY,
    MONEY_STRONG,
    MONEY_INPUT,
    DATE,
    /** Cells of a grid, one for each weight; their borders differ as their grounds do, and each has a word. */
    CELL_PASSES,
    CELL_CAUTION,
    CELL_LOWERS,
    CELL_UNKNOWN,
    CELL_BLOCKS,
    /** A cell of a grid into which nothing can be put. */
    CELL_CLOSED
}
