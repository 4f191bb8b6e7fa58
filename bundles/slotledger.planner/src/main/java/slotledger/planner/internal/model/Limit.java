package slotledger.planner.internal.model;

import java.util.Objects;

/**
 * A row of the programme that more money or more modules would ease.
 *
 * @param of   what is limited
 * @param name of the cost centre, or the number of the piece; empty for the budget in all
 * @param row  place among the programme's rows; it has an upper limit only
 * @param unit how much of the row is a minor unit or a piece
 */
public record Limit(Of of, String name, int row, long unit) {

    /** What is limited. */
    public enum Of { BUDGET, CENTRE_BUDGET, PIECES }

    public Limit {
        Objects.requireNonNull(of, "of");
        Objects.requireNonNull(name, "name");
    }
}
