package slotledger.planner.internal.order;

/** How many pulled modules and fillers lie ready that are promised to nobody yet, while the work goes on. */
final class Bench {

    private final WorkTable table;
    private final Provision provision;
    private final int[] pulled;
    private final int[] useful;
    private final int[] free;
    private final int[] waiting;

    Bench(WorkTable table, Provision provision) {
        this.table = table;
        this.provision = provision;
        this.free = new int[table.pieces().size()];
        this.waiting = new int[table.pieces().size()];
        this.pulled = new int[table.size()];
        this.useful = new int[table.size()];
        for (int i = 0; i < table.size(); i++) {
            change(i, 1);
            pulled[i] = countPulled(i);
            useful[i] = countUseful(i);
        }
    }

    private void change(int opening, int sign) {
        Swap swap = table.swap(opening);
        for (int j = 0; j < swap.takes(); j++) {
            waiting[swap.take(j)] += provision.pulled(opening, j) > 0 ? sign : 0;
        }
    }

    int free(int kind) {
        return free[kind];
    }

    /** How many openings still wait for a kind. */
    int waiting(int kind) {
        return waiting[kind];
    }

    /** How many an opening takes that have to be pulled first. */
    int pulled(int opening) {
        return pulled[opening];
    }

    private int countPulled(int opening) {
        int sum = 0;
        for (int j = 0; j < table.swap(opening).takes(); j++) {
            sum += provision.pulled(opening, j);
        }
        return sum;
    }

    /** How many an opening gives of kinds that others wait for. */
    int useful(int opening) {
        return useful[opening];
    }

    private int countUseful(int opening) {
        Swap swap = table.swap(opening);
        int sum = 0;
        for (int j = 0; j < swap.gives(); j++) {
            sum += provision.isUseful(swap.give(j)) ? swap.given(j) : 0;
        }
        return sum;
    }

    /** Which of its takes an opening lacks first; -1 where all it needs is there. */
    int lacking(int opening) {
        Swap swap = table.swap(opening);
        for (int j = 0; j < swap.takes(); j++) {
            if (provision.pulled(opening, j) > free[swap.take(j)]) {
                return j;
            }
        }
        return -1;
    }

    /** How many an opening lacks in all. */
    int lacks(int opening) {
        Swap swap = table.swap(opening);
        int sum = 0;
        for (int j = 0; j < swap.takes(); j++) {
            sum += Math.max(0, provision.pulled(opening, j) - free[swap.take(j)]);
        }
        return sum;
    }

    /** Sets aside what an opening takes, as far as it is there. */
    void promise(int opening) {
        Swap swap = table.swap(opening);
        for (int j = 0; j < swap.takes(); j++) {
            free[swap.take(j)] -= Math.min(free[swap.take(j)], provision.pulled(opening, j));
        }
        change(opening, -1);
    }

    void put(int kind, int count) {
        free[kind] += count;
    }
}
