package slotledger.intake.internal.sheet;

import java.util.Objects;

/**
 * One cell that holds something.
 *
 * @param column 1-based
 * @param type   what the file says it is; in text files always TEXT
 * @param text   what a person sees, as near as can be told without formatting every number: the text itself, a number
 *               without a needless fraction, a date as yyyy-MM-dd, an error as #REF!
 * @param number value of a NUMBER, days since 1899-12-30 of a DATE, else NaN
 */
public record Cell(int column, Type type, String text, double number) {

    /** What a cell holds. */
    public enum Type {
        TEXT,
        NUMBER,
        DATE,
        BOOLEAN,
        /** A formula's error value. */
        ERROR
    }

    public Cell {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(text, "text");
        if (column < 1) {
            throw new IllegalArgumentException("The column (%d) must be at least 1.".formatted(column));
        }
    }
}
