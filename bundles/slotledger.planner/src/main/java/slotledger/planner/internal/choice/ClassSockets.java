package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Piece;

/**
 * The sockets of a class. Its kinds are numbered from 0: first those that may come from outside, then what is only in
 * its own sockets now; something unread counts as a kind of its own that is of use to nobody.
 */
final class ClassSockets {

    private final JudgedSockets judged;
    private final int[] now;
    private final int incoming;
    private final int[] codes;
    private final int[] kindOfCode;
    private final int[] numbers;
    private final long[] kibibytes;
    private final boolean[] worth;
    private final boolean[] filler;
    private final boolean[] unread;
    private final int[] owned;
    private final boolean hasUnread;
    private final int blank;

    /**
     * The sockets of a class.
     *
     * @param blank   what the board wants in an empty socket
     * @param fitting numbers of the kinds that may come from outside
     * @param worth   whether a freed one of a kind is of use to another machine, by number
     */
    ClassSockets(
            Stock stock,
            JudgedSockets judged,
            Population population,
            Optional<Filler> blank,
            List<Integer> fitting,
            boolean[] worth) {
        this.judged = judged;
        SocketCodes all = judged.codes();
        now = all.codes(population);
        incoming = fitting.size();
        List<Integer> kinds = new ArrayList<>();
        fitting.forEach(number -> kinds.add(all.code(SlotContent.of(stock.pieces().get(number)))));
        Arrays.stream(now).filter(code -> code != SocketCodes.EMPTY && !kinds.contains(code)).distinct()
                .forEach(kinds::add);
        codes = kinds.stream().mapToInt(Integer::intValue).toArray();
        kindOfCode = new int[all.codeCount()];
        Arrays.fill(kindOfCode, -1);
        numbers = new int[codes.length];
        kibibytes = new long[codes.length];
        this.worth = new boolean[codes.length];
        filler = new boolean[codes.length];
        unread = new boolean[codes.length];
        owned = new int[codes.length];
        for (int kind = 0; kind < codes.length; kind++) {
            kindOfCode[codes[kind]] = kind;
            kibibytes[kind] = all.kibibytes(codes[kind]);
            Optional<Piece> piece = all.piece(codes[kind]);
            unread[kind] = piece.isEmpty();
            filler[kind] = piece.filter(Filler.class::isInstance).isPresent();
            numbers[kind] = piece.map(stock::number).orElse(Integer.MAX_VALUE);
            this.worth[kind] = piece.isPresent() && worth[numbers[kind]];
        }
        hasUnread = population.hasUnread();
        count(now, owned);
        this.blank = blank.map(SlotContent::of).map(all::code).filter(code -> code < kindOfCode.length
                && kindOfCode[code] >= 0)
                .orElse(SocketCodes.EMPTY);
    }

    JudgedSockets judged() {
        return judged;
    }

    int count() {
        return now.length;
    }

    int[] now() {
        return now.clone();
    }

    int now(int socket) {
        return now[socket];
    }

    /** What an empty socket holds on this board; {@link SocketCodes#EMPTY} where nothing or where it can't be had. */
    int blank() {
        return blank;
    }

    int kindCount() {
        return codes.length;
    }

    /** Kinds below this may come from outside. */
    int incomingCount() {
        return incoming;
    }

    int code(int kind) {
        return codes[kind];
    }

    boolean isFiller(int kind) {
        return filler[kind];
    }

    boolean isUnread(int kind) {
        return unread[kind];
    }

    /** The kind with this code; negative for an empty socket. */
    int kind(int code) {
        return kindOfCode[code];
    }

    long kibibytes(int kind) {
        return kibibytes[kind];
    }

    /** How many of the kind are in the sockets now. */
    int owned(int kind) {
        return owned[kind];
    }

    /** Whether a freed one is of use to another machine. */
    boolean isWorth(int kind) {
        return worth[kind];
    }

    /** Adds up how many there are of each kind. */
    void count(int[] row, int[] counts) {
        Arrays.fill(counts, 0);
        for (int code : row) {
            if (code != SocketCodes.EMPTY) {
                counts[kindOfCode[code]]++;
            }
        }
    }

    /**
     * Whether everything taken from outside may come from outside, in no more than the most kinds of modules.
     *
     * @param counts how many there are of each kind afterwards
     */
    boolean canComeIn(int[] counts) {
        int kindsIn = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            if (counts[kind] > owned[kind]) {
                kindsIn += filler[kind] ? 0 : 1;
                if (kind >= incoming) {
                    return false;
                }
            }
        }
        return kindsIn <= Fillings.MOST_NEW_KINDS;
    }

    /** All memory with so many of each kind, soldered memory too, in KiB. */
    long total(int[] counts) {
        long sum = judged.codes().fixedKibibytes();
        for (int kind = 0; kind < counts.length; kind++) {
            sum += counts[kind] * kibibytes[kind];
        }
        return sum;
    }

    boolean isNow(int[] row) {
        return Arrays.equals(row, now);
    }

    boolean isNow(int place) {
        for (int socket = 0; socket < now.length; socket++) {
            if (judged.code(place, socket) != now[socket]) {
                return false;
            }
        }
        return true;
    }

    /** Whether everything unread is in its own socket, where it is still there. */
    boolean keepsUnread(int place) {
        for (int socket = 0; hasUnread && socket < now.length; socket++) {
            int after = judged.code(place, socket);
            if (after != now[socket] && after != SocketCodes.EMPTY && unread[kindOfCode[after]]) {
                return false;
            }
        }
        return true;
    }

    /**
     * How many modules and fillers leave, enter or change their socket: each that is in another socket afterwards, and
     * each that is gone.
     *
     * @param counts how many there are of each kind afterwards
     */
    int touches(int[] counts, int place) {
        return gone(counts) + entered(place);
    }

    /** How many leave the machine. */
    int gone(int[] counts) {
        int gone = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            gone += Math.max(0, owned[kind] - counts[kind]);
        }
        return gone;
    }

    /** How many sockets something enters. */
    int entered(int place) {
        int entered = 0;
        for (int socket = 0; socket < now.length; socket++) {
            int after = judged.code(place, socket);
            entered += after != now[socket] && after != SocketCodes.EMPTY ? 1 : 0;
        }
        return entered;
    }

    /** KiB of what comes from outside. */
    long kibibytesTaken(int[] counts) {
        long sum = 0;
        for (int kind = 0; kind < counts.length; kind++) {
            sum += Math.max(0, counts[kind] - owned[kind]) * kibibytes[kind];
        }
        return sum;
    }

    /** A fixed order of fillings: by the numbers of their kinds in the stock, socket by socket, empty ones first. */
    int compareKinds(int one, int other) {
        int order = 0;
        for (int socket = 0; socket < now.length && order == 0; socket++) {
            order = Integer.compare(number(judged.code(one, socket)), number(judged.code(other, socket)));
        }
        return order;
    }

    private int number(int code) {
        return code == SocketCodes.EMPTY ? -1 : numbers[kindOfCode[code]];
    }

    /** Modules and fillers that come from outside, by number of their kind in the stock. */
    Amounts used(int[] counts) {
        return difference(counts, 1);
    }

    /** Modules and fillers that leave, by number of their kind in the stock. */
    Amounts freed(int[] counts) {
        return difference(counts, -1);
    }

    private Amounts difference(int[] counts, int sign) {
        int[] more = new int[counts.length];
        for (int kind = 0; kind < more.length; kind++) {
            more[kind] = unread[kind] ? 0 : sign * (counts[kind] - owned[kind]);
        }
        return Amounts.ofPositive(more, numbers);
    }
}
