package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Goes through every filling of few sockets, little work first: what may stay, what comes, and then every order. */
final class SocketSearch {

    private final ClassSockets sockets;
    private final Coming coming;
    private final long least;
    private final Fillings.Sieve sieve;
    private final int owned;
    private final List<List<int[]>> kept = new ArrayList<>();
    private final int[] counts;

    SocketSearch(ClassSockets sockets, Coming coming, long least, Fillings.Sieve sieve) {
        this.sockets = sockets;
        this.coming = coming;
        this.least = least;
        this.sieve = sieve;
        counts = new int[sockets.kindCount()];
        int[] own = IntStream.range(0, counts.length).map(sockets::owned).toArray();
        owned = IntStream.of(own).sum();
        for (int out = 0; out <= owned; out++) {
            kept.add(new ArrayList<>());
        }
        addKept(own, 0, 0);
    }

    private void addKept(int[] stay, int kind, int out) {
        if (kind == stay.length) {
            kept.get(out).add(stay.clone());
            return;
        }
        int all = stay[kind];
        for (int gone = 0; gone <= all; gone++) {
            stay[kind] = all - gone;
            addKept(stay, kind + 1, out + gone);
        }
        stay[kind] = all;
    }

    void search() {
        for (int work = 0; work <= owned + sockets.count(); work++) {
            for (int out = Math.max(0, work - sockets.count()); out <= Math.min(work, owned); out++) {
                int pieces = work - out;
                if (pieces <= sockets.count() - owned + out) {
                    for (int[] stay : kept.get(out)) {
                        bring(stay, pieces);
                    }
                }
            }
        }
    }

    private void bring(int[] stay, int pieces) {
        long missing = least - sockets.total(stay);
        for (Coming.Lot lot : coming.lots(pieces)) {
            if (lot.kibibytes() >= missing && !goesOut(stay, lot.first()) && !goesOut(stay, lot.second())
                    && !(lot.fillers() > 0 && goesOut(stay, coming.filler()))) {
                System.arraycopy(stay, 0, counts, 0, counts.length);
                add(lot.first(), lot.firstCount());
                add(lot.second(), lot.secondCount());
                add(coming.filler(), lot.fillers());
                if (sieve.wants(counts)) {
                    arrange();
                }
            }
        }
    }

    /** Nothing comes from outside while one of its kind leaves. */
    private boolean goesOut(int[] stay, int kind) {
        return kind != Coming.NO_KIND && stay[kind] < sockets.owned(kind);
    }

    private void add(int kind, int count) {
        if (kind != Coming.NO_KIND) {
            counts[kind] += count;
        }
    }

    private void arrange() {
        int[] contents = new int[sockets.count()];
        int next = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            Arrays.fill(contents, next, next + counts[kind], sockets.code(kind));
            next += counts[kind];
        }
        int[] places = sockets.judged().arrangements(contents);
        int[] some = new int[places.length];
        int size = 0;
        for (int place : places) {
            if (sockets.keepsUnread(place) && !sockets.isNow(place)) {
                some[size++] = place;
            }
        }
        sieve.take(counts, size == some.length ? some : Arrays.copyOf(some, size));
    }
}
