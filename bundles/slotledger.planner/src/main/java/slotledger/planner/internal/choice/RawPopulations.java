package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import slotledger.model.unit.Capacity;

/** Makes the populations of a class that are worth asking the rules about. */
final class RawPopulations {

    /** Boards with more sockets, or banks, are filled by patterns only. */
    static final int MOST_UNITS_IN_FULL = 4;
    /** Most kinds of modules brought into one machine. */
    static final int MOST_NEW_KINDS = 2;

    private final ClassSockets sockets;
    private final Capacity least;
    private final List<int[]> units;
    private final List<RawPopulation> found = new ArrayList<>();
    private final Set<List<Integer>> seen = new HashSet<>();

    private RawPopulations(ClassSockets sockets, Capacity least, List<int[]> units) {
        this.sockets = sockets;
        this.least = least;
        this.units = units;
    }

    /** Those that hold at least so much memory, least work first. */
    static List<RawPopulation> list(ClassSockets sockets, SlotOrder order, Capacity least) {
        boolean isSmall = sockets.count() <= MOST_UNITS_IN_FULL;
        RawPopulations lister = new RawPopulations(sockets, least, units(sockets, isSmall
                ? order.sockets().stream().map(List::of).toList() : order.banks()));
        if (isSmall || !order.banks().isEmpty() && order.banks().size() <= MOST_UNITS_IN_FULL) {
            lister.fillInFull(sockets.now(), 0, new int[sockets.kindCount()]);
        }
        if (!isSmall) {
            order.patterns().forEach(lister::fillPattern);
            lister.fillUp(order.sockets());
        }
        lister.found.sort(RawPopulation.ORDER);
        return lister.found;
    }

    private static List<int[]> units(ClassSockets sockets, List<List<String>> labels) {
        return labels.stream().map(unit -> unit.stream().mapToInt(sockets::socket).toArray()).toList();
    }

    /** Every unit stays, is emptied, or is filled with one kind. */
    private void fillInFull(int[] codes, int unit, int[] brought) {
        if (unit == units.size()) {
            if (units.size() == codes.length) {
                add(codes);
            } else {
                addOnce(codes);
            }
            return;
        }
        fillInFull(codes, unit + 1, brought);
        for (int code = ClassSockets.EMPTY; code < sockets.kindCount(); code++) {
            tryCode(codes, unit, code, brought);
        }
    }

    private void tryCode(int[] codes, int unit, int code, int[] brought) {
        if (IntStream.of(units.get(unit)).allMatch(socket -> sockets.now(socket) == code)) {
            return;
        }
        boolean isNew = code >= 0 && !sockets.isOwn(code) && !sockets.isFiller(code);
        if (isNew) {
            brought[code]++;
        }
        if (!isNew || IntStream.of(brought).filter(count -> count > 0).count() <= MOST_NEW_KINDS) {
            for (int socket : units.get(unit)) {
                codes[socket] = code;
            }
            fillInFull(codes, unit + 1, brought);
            for (int socket : units.get(unit)) {
                codes[socket] = sockets.now(socket);
            }
        }
        if (isNew) {
            brought[code]--;
        }
    }

    /** What is filled now, and more and more of the empty sockets in their order. */
    private void fillUp(List<String> labels) {
        List<String> filled = new ArrayList<>(labels.stream().filter(label -> !isEmpty(label)).toList());
        fillPattern(filled);
        for (String label : labels) {
            if (isEmpty(label)) {
                filled.add(label);
                fillPattern(labels.stream().filter(filled::contains).toList());
            }
        }
    }

    private boolean isEmpty(String label) {
        int code = sockets.now(sockets.socket(label));
        return code == ClassSockets.EMPTY || sockets.isFiller(code);
    }

    /** Keeps some of the own modules, the largest first, and fills the rest of the sockets with one kind. */
    private void fillPattern(List<String> labels) {
        int[] places = labels.stream().mapToInt(sockets::socket).toArray();
        List<Integer> holders = new ArrayList<>(IntStream.range(0, sockets.count())
                .filter(socket -> sockets.now(socket) >= 0 && !sockets.isFiller(sockets.now(socket)))
                .boxed()
                .toList());
        holders.sort(Comparator
                .comparing((Integer socket) -> sockets.capacity(sockets.now(socket)))
                .reversed()
                .thenComparing(socket -> IntStream.of(places).noneMatch(place -> place == socket)));
        for (int kept = 0; kept <= Math.min(holders.size(), places.length); kept++) {
            if (kept == places.length) {
                place(places, holders.subList(0, kept), ClassSockets.EMPTY);
            } else {
                for (int code : sockets.incoming()) {
                    place(places, holders.subList(0, kept), code);
                }
            }
        }
    }

    /** With nothing in the other sockets, and with what the board wants there. */
    private void place(int[] places, List<Integer> kept, int filling) {
        place(places, kept, filling, ClassSockets.EMPTY);
        if (sockets.blank() != ClassSockets.EMPTY) {
            place(places, kept, filling, sockets.blank());
        }
    }

    private void place(int[] places, List<Integer> kept, int filling, int idle) {
        int[] codes = new int[sockets.count()];
        for (int socket = 0; socket < codes.length; socket++) {
            int now = sockets.now(socket);
            codes[socket] = now == ClassSockets.OTHER || sockets.isFiller(now) ? now : idle;
        }
        for (int place : places) {
            codes[place] = filling;
        }
        List<Integer> movers = new ArrayList<>();
        boolean[] taken = new boolean[codes.length];
        for (int socket : kept) {
            if (IntStream.of(places).anyMatch(place -> place == socket)) {
                codes[socket] = sockets.now(socket);
                taken[socket] = true;
            } else {
                movers.add(socket);
            }
        }
        int next = 0;
        for (int place : places) {
            if (!taken[place] && next < movers.size()) {
                codes[place] = sockets.now(movers.get(next++));
            }
        }
        addOnce(codes);
        addLargestFirst(places, codes);
    }

    private void addLargestFirst(int[] places, int[] codes) {
        List<Integer> contents = new ArrayList<>(IntStream.of(places).map(place -> codes[place]).boxed().toList());
        contents.sort(Comparator.comparing(sockets::capacity).reversed().thenComparing(Comparator.naturalOrder()));
        int[] sorted = codes.clone();
        for (int i = 0; i < places.length; i++) {
            sorted[places[i]] = contents.get(i);
        }
        addOnce(sorted);
    }

    private void addOnce(int[] codes) {
        if (seen.add(IntStream.of(codes).boxed().toList())) {
            add(codes);
        }
    }

    private void add(int[] codes) {
        if (!sockets.total(codes).atLeast(least) || Arrays.equals(codes, sockets.now())) {
            return;
        }
        RawPopulation raw = sockets.raw(codes.clone());
        if (sockets.canComeIn(raw, MOST_NEW_KINDS)) {
            found.add(raw);
        }
    }
}
