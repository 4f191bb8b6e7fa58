package slotledger.firmware.fact;

import java.util.ArrayList;
import java.util.List;

/** Collects problems up to a number that a person still reads, so that damaged data can't fill the memory. */
public final class Problems {

    private static final int MOST = 200;

    private final List<Problem> all = new ArrayList<>();

    public void add(Problem problem) {
        if (all.size() < MOST) {
            all.add(problem);
        } else if (all.size() == MOST) {
            all.add(Problem.of("the whole", "more than " + MOST + " problems", "data that is mostly sound"));
        }
    }

    public void add(long offset, String where, String seen, String expected) {
        add(new Problem(offset, where, seen, expected));
    }

    public List<Problem> list() {
        return List.copyOf(all);
    }
}
