package slotledger.planner.internal.choice;

import java.util.Arrays;

/** Rows of equally many small numbers, each row once, numbered from 0 in the order they came. */
final class CodeTable {

    private static final int FIRST_ROWS = 64;

    private final int width;
    private char[] codes;
    private int[] slots = new int[2 * FIRST_ROWS];
    private int size;

    CodeTable(int width) {
        this.width = width;
        codes = new char[width * FIRST_ROWS];
    }

    int size() {
        return size;
    }

    /** The number of the row, which is added where it is new. */
    int add(int[] row) {
        int slot = hash(row) & slots.length - 1;
        while (slots[slot] != 0) {
            if (holds(slots[slot] - 1, row)) {
                return slots[slot] - 1;
            }
            slot = slot + 1 & slots.length - 1;
        }
        if (2 * size >= slots.length) {
            grow();
            return add(row);
        }
        for (int i = 0; i < width; i++) {
            codes[size * width + i] = (char) row[i];
        }
        slots[slot] = ++size;
        return size - 1;
    }

    int code(int number, int column) {
        return codes[number * width + column];
    }

    int[] row(int number) {
        int[] row = new int[width];
        for (int i = 0; i < width; i++) {
            row[i] = code(number, i);
        }
        return row;
    }

    private boolean holds(int number, int[] row) {
        for (int i = 0; i < width; i++) {
            if (codes[number * width + i] != row[i]) {
                return false;
            }
        }
        return true;
    }

    private static int hash(int[] row) {
        int hash = 1;
        for (int code : row) {
            hash = 31 * hash + code;
        }
        hash *= 0x9E3779B9;
        return hash ^ hash >>> 15;
    }

    private void grow() {
        codes = Arrays.copyOf(codes, 2 * codes.length);
        int[] larger = new int[2 * slots.length];
        for (int number = 0; number < size; number++) {
            int slot = hash(row(number)) & larger.length - 1;
            while (larger[slot] != 0) {
                slot = slot + 1 & larger.length - 1;
            }
            larger[slot] = number + 1;
        }
        slots = larger;
    }
}
