package slotledger.export.internal.sheet;

/** How a cell looks. What may be changed is told by its border and by words on the sheet, not by its ground alone. */
public enum Look {
    TITLE,
    SECTION,
    NOTE,
    HEADER,
    /** The heading of a column of numbers. */
    HEADER_NUMBER,
    TEXT,
    STRONG,
    COUNT,
    COUNT_STRONG,
    COUNT_INPUT,
    MONEY,
    MONEY_STRONG,
    MONEY_INPUT,
    DATE
}
