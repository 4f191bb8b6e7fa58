package slotledger.firmware.internal.smbios;

import java.util.ArrayList;
import java.util.List;
import slotledger.firmware.fact.Problems;

/** Finds the structures in the bytes of a table: DSP0134, section 6.1. */
final class TableWalk {

    private static final int HEADER = 4;
    private static final int END_OF_TABLE = 127;
    /** Handles are 16 bits wide and unique. */
    private static final int MOST_STRUCTURES = 0x10000;

    private final byte[] data;
    private final Problems problems;
    private final List<RawStructure> found = new ArrayList<>();
    private boolean sound;

    TableWalk(byte[] data, Problems problems) {
        this.data = data;
        this.problems = problems;
    }

    /**
     * Takes structures from one offset to another; the first damaged one ends the walk, since where the next begins is
     * then unknown.
     *
     * @param most structures that the entry point counts; none where it doesn't
     */
    List<RawStructure> between(int from, int to, int most) {
        int at = from;
        int limit = most == 0 ? MOST_STRUCTURES : Math.min(most, MOST_STRUCTURES);
        sound = false;
        while (found.size() < limit) {
            if (at + HEADER > to) {
                sound = at == to && most == 0 && at > from;
                if (!sound) {
                    problems.add(at, "the table", "it ends after %d structures".formatted(found.size()),
                            most == 0 ? "an end-of-table structure (type 127)" : most + " structures");
                }
                return found;
            }
            int type = Bytes.u8(data, at);
            int length = Bytes.u8(data, at + 1);
            if (length < HEADER) {
                problems.add(at, "structure of type " + type, "its length is " + length,
                        "at least 4; what follows can't be read");
                return found;
            }
            if (at + length > to) {
                problems.add(at, "structure of type " + type,
                        "it is %d bytes long, %d are left".formatted(length, to - at), "a whole structure");
                found.add(new RawStructure(data, at, to - at, to, to));
                return found;
            }
            int end = endOfStrings(at + length, to);
            found.add(new RawStructure(data, at, length, at + length, Math.min(end, to)));
            if (type == END_OF_TABLE) {
                sound = true;
                return found;
            }
            if (end > to) {
                problems.add(at, "structure of type " + type, "its strings don't end", "two zero bytes after them");
                return found;
            }
            at = end;
        }
        sound = true;
        return found;
    }

    /** Whether the walk ended where a table may end. */
    boolean isSound() {
        return sound;
    }

    /** The offset after the two zero bytes; beyond the end where there are none. */
    private int endOfStrings(int from, int to) {
        int at = from;
        while (at + 1 < to && (data[at] != 0 || data[at + 1] != 0)) {
            at++;
        }
        return at + 1 < to ? at + 2 : to + 1;
    }
}
