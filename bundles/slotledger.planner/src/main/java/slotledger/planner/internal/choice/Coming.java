package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What can be brought into the sockets of a board, by how many pieces it is; the same for every class of the board. */
final class Coming {

    /**
     * Modules of at most two kinds, and fillers.
     *
     * @param first       a kind; the place of no kind where there is none
     * @param firstCount  how many of it
     * @param second      another kind; the place of no kind where there is none
     * @param secondCount how many of it
     * @param fillers     how many fillers
     * @param kibibytes   what all hold
     */
    record Lot(int first, int firstCount, int second, int secondCount, int fillers, long kibibytes) {
    }

    static final int NO_KIND = -1;

    private final int filler;
    private final List<List<Lot>> lots = new ArrayList<>();

    private Coming(int filler) {
        this.filler = filler;
    }

    /** All lots for few sockets, less memory first; for more sockets none are listed. */
    static Coming of(ClassSockets sockets) {
        int most = sockets.count() <= Fillings.MOST_UNITS_IN_FULL ? sockets.count() : 0;
        int filler = IntStream.range(0, sockets.incomingCount()).filter(sockets::isFiller).findFirst().orElse(NO_KIND);
        int[] kinds = IntStream.range(0, sockets.incomingCount()).filter(kind -> !sockets.isFiller(kind)).toArray();
        Coming coming = new Coming(filler);
        for (int pieces = 0; pieces <= most; pieces++) {
            List<Lot> some = new ArrayList<>();
            for (int fillers = filler == NO_KIND ? 0 : pieces; fillers >= 0; fillers--) {
                addModules(sockets, kinds, pieces - fillers, fillers, some);
            }
            some.sort(Comparator.comparingLong(Lot::kibibytes));
            coming.lots.add(some);
        }
        return coming;
    }

    private static void addModules(ClassSockets sockets, int[] kinds, int modules, int fillers, List<Lot> some) {
        if (modules == 0) {
            some.add(new Lot(NO_KIND, 0, NO_KIND, 0, fillers, 0));
            return;
        }
        for (int i = 0; i < kinds.length; i++) {
            long one = sockets.kibibytes(kinds[i]);
            some.add(new Lot(kinds[i], modules, NO_KIND, 0, fillers, modules * one));
            for (int j = i + 1; j < kinds.length; j++) {
                long other = sockets.kibibytes(kinds[j]);
                for (int count = 1; count < modules; count++) {
                    some.add(new Lot(kinds[i], count, kinds[j], modules - count, fillers,
                            count * one + (modules - count) * other));
                }
            }
        }
    }

    /** The lots of so many pieces. */
    List<Lot> lots(int pieces) {
        return lots.get(pieces);
    }

    /** The kind of the fillers. */
    int filler() {
        return filler;
    }
}
