package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every order of the same contents in few sockets; remembered. For one thread at a time. */
final class Arrangements {

    private final JudgedSockets judged;
    private final CodeTable contents;
    private final List<int[]> places = new ArrayList<>();

    Arrangements(JudgedSockets judged) {
        this.judged = judged;
        contents = new CodeTable(judged.codes().count());
    }

    /** The places of the fillings with these contents. */
    int[] of(int[] some) {
        int[] row = some.clone();
        Arrays.sort(row);
        int known = contents.add(row);
        if (known == places.size()) {
            places.add(find(row));
        }
        return places.get(known);
    }

    private int[] find(int[] row) {
        List<Integer> found = new ArrayList<>();
        do {
            found.add(judged.place(row));
        } while (next(row));
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The next order of the same numbers; false after the last. */
    private static boolean next(int[] row) {
        int turn = row.length - 2;
        while (turn >= 0 && row[turn] >= row[turn + 1]) {
            turn--;
        }
        if (turn < 0) {
            return false;
        }
        int larger = row.length - 1;
        while (row[larger] <= row[turn]) {
            larger--;
        }
        swap(row, turn, larger);
        for (int low = turn + 1, high = row.length - 1; low < high; low++, high--) {
            swap(row, low, high);
        }
        return true;
    }

    private static void swap(int[] row, int one, int other) {
        int moved = row[one];
        row[one] = row[other];
        row[other] = moved;
    }
}
