package slotledger.planner.internal.choice;

/** Goes through the fillings of the sockets of a class that may be worth considering. */
final class Fillings {

    /** Boards with more sockets, or banks, are filled by patterns only. */
    static final int MOST_UNITS_IN_FULL = 4;
    /** Most kinds of modules brought into one machine. */
    static final int MOST_NEW_KINDS = 2;
    /** Where the own modules can be kept in more ways, the largest stay. */
    static final int MOST_WAYS_TO_KEEP = 64;

    /** Takes what the search comes upon. */
    interface Sieve {

        /** Whether a filling with so many of each kind can be of use at all; asked before the rules are. */
        boolean wants(int[] counts);

        /** Fillings with the same contents, allowed or not, by their places, with so many of each kind. */
        void take(int[] counts, int... places);
    }

    private Fillings() {
    }

    /**
     * Hands over fillings that hold at least so much memory and change something; one may come twice.
     *
     * @param coming what can be brought into the sockets
     * @param least  KiB
     */
    static void search(ClassSockets sockets, SlotOrder order, Coming coming, long least, Sieve sieve) {
        boolean isSmall = sockets.count() <= MOST_UNITS_IN_FULL;
        if (isSmall) {
            new SocketSearch(sockets, coming, least, sieve).search();
            return;
        }
        if (!order.banks().isEmpty() && order.banks().size() <= MOST_UNITS_IN_FULL) {
            new BankSearch(sockets, order.banks(), least, sieve).search();
        }
        new PatternSearch(sockets, order, least, sieve).search();
    }

    /** Whether there is enough memory, all can be had, and the filling isn't what is there now. */
    static void offer(ClassSockets sockets, int[] row, long least, Sieve sieve) {
        int[] counts = new int[sockets.kindCount()];
        sockets.count(row, counts);
        if (sockets.total(counts) >= least && sockets.canComeIn(counts) && !sockets.isNow(row)
                && sieve.wants(counts)) {
            sieve.take(counts, sockets.judged().place(row));
        }
    }
}
