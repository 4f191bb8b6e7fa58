package slotledger.model.board;

/**
 * The stable id of a board in the catalog: lower-case letters, digits, dot and hyphen.
 *
 * @param value such as "orrin-d410"
 */
public record BoardId(String value) implements Comparable<BoardId> {

    public BoardId {
        if (!value.matches("[a-z0-9][a-z0-9.-]{0,63}")) {
            throw new IllegalArgumentException(
                    "The board id (%s) must be 1 to 64 lower-case letters, digits, dots or hyphens.".formatted(value));
        }
    }

    @Override
    public int compareTo(BoardId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
