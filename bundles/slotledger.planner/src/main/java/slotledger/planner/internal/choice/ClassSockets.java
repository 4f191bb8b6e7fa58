package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.unit.Capacity;

/**
 * The sockets of a class as numbers. A code is {@link #EMPTY}, {@link #OTHER} for something unread that stays
 * where it is, or the place of a kind in the list of kinds.
 */
final class ClassSockets {

    static final int EMPTY = -1;
    static final int OTHER = -2;

    private final Stock stock;
    private final Population now;
    private final List<String> labels;
    private final List<Piece> kinds = new ArrayList<>();
    private final int ownKinds;
    private final int blank;
    private final int[] incoming;
    private final boolean[] comesIn;
    private final boolean[] worth;
    private final int[] codes;
    private final long fixedKib;

    /**
     * The sockets of a class.
     *
     * @param sockets labels of the sockets that can be changed
     * @param blank   what the board wants in an empty socket
     * @param fitting numbers of the kinds that may come from outside
     * @param worth   whether a freed one of a kind is of use to another machine, by number
     */
    ClassSockets(
            Stock stock,
            Population now,
            List<String> sockets,
            Optional<Filler> blank,
            List<Integer> fitting,
            boolean[] worth) {
        this.stock = stock;
        this.now = now;
        this.labels = sockets;
        for (String label : labels) {
            now.in(label).piece().filter(kind -> !kinds.contains(kind)).ifPresent(kinds::add);
        }
        ownKinds = kinds.size();
        List<Piece> comes = fitting.stream().map(stock.pieces()::get).toList();
        comes.stream().filter(kind -> !kinds.contains(kind)).forEach(kinds::add);
        incoming = comes.stream().filter(ModuleKind.class::isInstance).mapToInt(kinds::indexOf).toArray();
        comesIn = new boolean[kinds.size()];
        comes.forEach(kind -> comesIn[kinds.indexOf(kind)] = true);
        this.blank = blank.map(kinds::indexOf).filter(code -> code >= 0).orElse(EMPTY);
        this.worth = new boolean[kinds.size()];
        for (int i = 0; i < this.worth.length; i++) {
            this.worth[i] = worth[stock.number(kinds.get(i))];
        }
        codes = labels.stream().mapToInt(label -> code(now.in(label))).toArray();
        fixedKib = now.total().kibibytes()
                - labels.stream().mapToLong(label -> now.in(label).capacity().kibibytes()).sum();
    }

    private int code(SlotContent content) {
        Optional<Piece> kind = content.piece();
        if (kind.isPresent()) {
            return kinds.indexOf(kind.get());
        }
        return content.isEmpty() ? EMPTY : OTHER;
    }

    int count() {
        return labels.size();
    }

    /** The place of a socket in the order; negative where it isn't one of these. */
    int socket(String label) {
        return labels.indexOf(label);
    }

    int now(int socket) {
        return codes[socket];
    }

    int[] now() {
        return codes.clone();
    }

    /** What an empty socket holds on this board; {@link #EMPTY} where nothing or where it can't be had. */
    int blank() {
        return blank;
    }

    boolean isFiller(int code) {
        return code >= 0 && kinds.get(code) instanceof Filler;
    }

    /** Whether modules of the kind are in the sockets now. */
    boolean isOwn(int code) {
        return code < ownKinds;
    }

    /** Codes of the module kinds that may come from outside. */
    int[] incoming() {
        return incoming.clone();
    }

    int kindCount() {
        return kinds.size();
    }

    Capacity capacity(int code) {
        return code < 0 ? Capacity.NONE : kinds.get(code).capacity();
    }

    /** All memory with these codes, soldered memory too. */
    Capacity total(int[] after) {
        long sum = fixedKib;
        for (int code : after) {
            sum += capacity(code).kibibytes();
        }
        return Capacity.ofKiB(sum);
    }

    /** Whether everything taken from outside may come from outside, in no more than so many kinds of modules. */
    boolean canComeIn(RawPopulation raw, int mostKinds) {
        int kindsIn = 0;
        for (int kind = 0; kind < raw.net().length; kind++) {
            if (raw.net()[kind] > 0) {
                kindsIn += isFiller(kind) ? 0 : 1;
                if (!comesIn[kind]) {
                    return false;
                }
            }
        }
        return kindsIn <= mostKinds;
    }

    /** What it takes to get from now to these codes. */
    RawPopulation raw(int[] after) {
        int[] out = new int[kinds.size()];
        int[] in = new int[kinds.size()];
        int touches = 0;
        for (int i = 0; i < codes.length; i++) {
            if (codes[i] != after[i]) {
                touches += codes[i] == OTHER ? 1 : 0;
                count(out, codes[i]);
                count(in, after[i]);
            }
        }
        long size = 0;
        int[] net = new int[kinds.size()];
        for (int kind = 0; kind < net.length; kind++) {
            touches += Math.max(out[kind], in[kind]);
            net[kind] = worth[kind] ? in[kind] - out[kind] : Math.max(0, in[kind] - out[kind]);
            size += Math.max(0, net[kind]) * kinds.get(kind).capacity().kibibytes();
        }
        return new RawPopulation(after, net, touches, size);
    }

    private static void count(int[] counts, int code) {
        if (code >= 0) {
            counts[code]++;
        }
    }

    /** The population with these codes. */
    Population population(int[] after) {
        Map<String, SlotContent> contents = new LinkedHashMap<>(now.contents());
        for (int i = 0; i < after.length; i++) {
            if (after[i] != codes[i]) {
                contents.put(labels.get(i),
                        after[i] == EMPTY ? SlotContent.EMPTY : SlotContent.of(kinds.get(after[i])));
            }
        }
        return new Population(contents);
    }

    /** Modules that come from outside, or, the other way round, that leave; by number of their kind in the stock. */
    SortedMap<Integer, Integer> difference(int[] from, int[] to) {
        SortedMap<Integer, Integer> more = new TreeMap<>();
        int[] counts = new int[kinds.size()];
        for (int i = 0; i < codes.length; i++) {
            if (to[i] >= 0) {
                counts[to[i]]++;
            }
            if (from[i] >= 0) {
                counts[from[i]]--;
            }
        }
        for (int kind = 0; kind < counts.length; kind++) {
            if (counts[kind] > 0) {
                more.put(stock.number(kinds.get(kind)), counts[kind]);
            }
        }
        return more;
    }
}
