package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.Population;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/**
 * The rules asked about what is in the sockets of a board; every answer is remembered, by the place of the filling
 * in a table. For one thread at a time.
 */
final class JudgedSockets {

    private static final int NOT_ASKED = -1;
    private static final Weight[] WEIGHTS = Weight.values();

    private final MemoryRules rules;
    private final Setup base;
    private final SocketCodes codes;
    private final CodeTable fillings;
    private final Map<Integer, Doubts> doubts = new HashMap<>();
    private final Map<Operation, Integer> wayNumbers = new HashMap<>();
    private final List<Operation> ways = new ArrayList<>();
    private final Arrangements arrangements;
    private byte[] weights = new byte[0];
    private int[] wayOf = new int[0];
    private int[] objections = new int[0];

    /**
     * What keeps the rules from an answer.
     *
     * @param always  a fact is missing whatever the machine holds now
     * @param sockets those that must keep their content, by place
     */
    private record Doubts(boolean always, BitSet sockets) {
    }

    JudgedSockets(MemoryRules rules, Setup base, SocketCodes codes) {
        this.rules = rules;
        this.base = base;
        this.codes = codes;
        fillings = new CodeTable(codes.count());
        arrangements = new Arrangements(this);
    }

    SocketCodes codes() {
        return codes;
    }

    /** The place of a filling; the rules are asked about it when somebody wants to know. */
    int place(int[] row) {
        int place = fillings.add(row);
        if (place == weights.length) {
            int length = Math.max(64, 2 * place);
            weights = Arrays.copyOf(weights, length);
            wayOf = Arrays.copyOf(wayOf, length);
            objections = Arrays.copyOf(objections, length);
            Arrays.fill(weights, place, length, (byte) NOT_ASKED);
            Arrays.fill(wayOf, place, length, NOT_ASKED);
            Arrays.fill(objections, place, length, NOT_ASKED);
        }
        return place;
    }

    /** The places of every order of these contents, allowed or not. */
    int[] arrangements(int[] contents) {
        return arrangements.of(contents);
    }

    int code(int place, int socket) {
        return fillings.code(place, socket);
    }

    int[] row(int place) {
        return fillings.row(place);
    }

    Population population(int place) {
        return codes.population(fillings.row(place));
    }

    private Setup setup(int place) {
        return base.with(population(place));
    }

    Weight weight(int place) {
        if (weights[place] == NOT_ASKED) {
            weights[place] = (byte) rules.weigh(setup(place)).ordinal();
        }
        return WEIGHTS[weights[place]];
    }

    /**
     * Whether a machine may be changed so. An unknown is borne only where every slot it concerns keeps the very
     * content it has now: that the machine runs so is the evidence.
     *
     * @param now what is in the sockets now
     */
    boolean allows(int[] now, int place) {
        return switch (weight(place)) {
            case PASSES, CAUTION, LOWERS -> true;
            case UNKNOWN -> isEvident(now, place);
            case BLOCKS -> false;
        };
    }

    private boolean isEvident(int[] now, int place) {
        Doubts known = doubts.computeIfAbsent(place, this::findDoubts);
        return !known.always()
                && known.sockets().stream().allMatch(socket -> now[socket] == code(place, socket));
    }

    private Doubts findDoubts(int place) {
        boolean always = false;
        BitSet sockets = new BitSet(codes.count());
        for (Reason reason : rules.judge(setup(place)).reasons(Weight.UNKNOWN)) {
            always |= reason.slots().isEmpty();
            reason.slots().stream().mapToInt(codes::socket).filter(socket -> socket >= 0).forEach(sockets::set);
        }
        return new Doubts(always, sockets);
    }

    /** The number of the way it runs; equal ways have one number. */
    int way(int place) {
        if (wayOf[place] == NOT_ASKED) {
            Operation runs = rules.operate(setup(place));
            Integer known = wayNumbers.putIfAbsent(runs, ways.size());
            if (known == null) {
                known = ways.size();
                ways.add(runs);
            }
            wayOf[place] = known;
        }
        return wayOf[place];
    }

    Operation runs(int way) {
        return ways.get(way);
    }

    Operation operation(int place) {
        return ways.get(way(place));
    }

    /** How many rules would rather have it otherwise. */
    int objections(int place) {
        if (objections[place] == NOT_ASKED) {
            objections[place] = weight(place) == Weight.PASSES ? 0 : rules.objections(setup(place));
        }
        return objections[place];
    }
}
