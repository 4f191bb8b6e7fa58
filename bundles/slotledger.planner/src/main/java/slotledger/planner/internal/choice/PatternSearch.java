package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Goes through fillings of many sockets by the sets of sockets that boards are filled in: some of the own modules stay
 * in the machine, and the rest of the set is filled with one kind.
 */
final class PatternSearch {

    private final ClassSockets sockets;
    private final long least;
    private final Fillings.Sieve sieve;
    private final List<List<int[]>> patterns = new ArrayList<>();
    private final boolean isPlain;

    PatternSearch(ClassSockets sockets, SlotOrder order, long least, Fillings.Sieve sieve) {
        this.sockets = sockets;
        this.least = least;
        this.sieve = sieve;
        Set<List<String>> all = new LinkedHashSet<>(order.patterns());
        addFillingUp(order.sockets(), all);
        for (int size = 0; size <= sockets.count(); size++) {
            int wanted = size;
            patterns.add(all.stream()
                    .filter(pattern -> pattern.size() == wanted)
                    .map(pattern -> pattern.stream().mapToInt(sockets.judged().codes()::socket).toArray())
                    .toList());
        }
        isPlain = sockets.blank() == SocketCodes.EMPTY
                && IntStream.range(0, sockets.kindCount()).filter(kind -> sockets.owned(kind) > 0)
                        .noneMatch(kind -> sockets.isFiller(kind) || sockets.isUnread(kind));
    }

    /** What is filled now, and more and more of the empty sockets in their order. */
    private void addFillingUp(List<String> labels, Collection<List<String>> all) {
        Set<String> filled = new LinkedHashSet<>(labels.stream().filter(label -> !isFree(label)).toList());
        all.add(labels.stream().filter(filled::contains).toList());
        for (String label : labels) {
            if (filled.add(label)) {
                all.add(labels.stream().filter(filled::contains).toList());
            }
        }
    }

    private boolean isFree(String label) {
        int code = sockets.now(sockets.judged().codes().socket(label));
        return code == SocketCodes.EMPTY || sockets.isFiller(sockets.kind(code));
    }

    void search() {
        int[] modules = IntStream.range(0, sockets.kindCount())
                .filter(kind -> !sockets.isFiller(kind) && !sockets.isUnread(kind))
                .boxed()
                .sorted(Comparator.comparingLong(sockets::kibibytes).reversed())
                .mapToInt(Integer::intValue)
                .toArray();
        List<int[]> ways = WaysToKeep.of(sockets, modules);
        for (int pieces = 0; pieces <= sockets.count(); pieces++) {
            for (int[] kept : ways) {
                int size = IntStream.of(kept).sum() + pieces;
                if (size <= sockets.count() && !patterns.get(size).isEmpty()) {
                    for (int kind : pieces == 0 ? new int[] {Coming.NO_KIND} : modules) {
                        fill(kept, kind, pieces, modules);
                    }
                }
            }
        }
    }

    private void fill(int[] kept, int kind, int pieces, int[] modules) {
        if (kind >= sockets.incomingCount() || kind != Coming.NO_KIND && kept[kind] < sockets.owned(kind)) {
            return;
        }
        int[] counts = kept.clone();
        if (kind != Coming.NO_KIND) {
            counts[kind] += pieces;
        }
        if (sockets.total(counts) < least || isPlain && !sieve.wants(counts)) {
            return;
        }
        int filling = kind == Coming.NO_KIND ? SocketCodes.EMPTY : sockets.code(kind);
        for (int[] pattern : patterns.get(IntStream.of(counts).sum())) {
            place(pattern, kept, modules, filling, SocketCodes.EMPTY);
            if (sockets.blank() != SocketCodes.EMPTY) {
                place(pattern, kept, modules, filling, sockets.blank());
            }
        }
    }

    /** With what may stay in its socket there, and with the largest first. */
    private void place(int[] pattern, int[] kept, int[] modules, int filling, int idle) {
        int[] row = new int[sockets.count()];
        for (int socket = 0; socket < row.length; socket++) {
            int now = sockets.now(socket);
            boolean stays = now != SocketCodes.EMPTY
                    && (sockets.isUnread(sockets.kind(now)) || sockets.isFiller(sockets.kind(now)));
            row[socket] = stays ? now : idle;
        }
        int[] toPlace = kept.clone();
        boolean[] taken = new boolean[row.length];
        for (int socket : pattern) {
            int now = sockets.now(socket);
            row[socket] = filling;
            if (now != SocketCodes.EMPTY && toPlace[sockets.kind(now)] > 0) {
                toPlace[sockets.kind(now)]--;
                row[socket] = now;
                taken[socket] = true;
            }
        }
        int[] free = IntStream.of(pattern).filter(socket -> !taken[socket]).toArray();
        int next = 0;
        for (int kind : modules) {
            for (int count = toPlace[kind]; count > 0; count--) {
                row[free[next++]] = sockets.code(kind);
            }
        }
        Fillings.offer(sockets, row, least, sieve);
        int[] sorted = largestFirst(pattern, row);
        if (!Arrays.equals(sorted, row)) {
            Fillings.offer(sockets, sorted, least, sieve);
        }
    }

    private int[] largestFirst(int[] pattern, int[] row) {
        List<Integer> contents = new ArrayList<>(IntStream.of(pattern).map(socket -> row[socket]).boxed().toList());
        contents.sort(Comparator.comparingLong(sockets.judged().codes()::kibibytes).reversed()
                .thenComparing(Comparator.naturalOrder()));
        int[] sorted = row.clone();
        for (int i = 0; i < pattern.length; i++) {
            sorted[pattern[i]] = contents.get(i);
        }
        return sorted;
    }
}
