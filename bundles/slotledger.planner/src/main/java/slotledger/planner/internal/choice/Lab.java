package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import slotledger.model.board.BoardId;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.module.Piece;

/**
 * The machines of one board in a room that is kept uniform; those without a target and those left alone are not
 * counted.
 *
 * @param room    site and room, lower case
 * @param board   their board
 * @param classes numbers of their classes
 */
public record Lab(String room, BoardId board, List<Integer> classes) {

    private record Key(String room, BoardId board) {
    }

    public Lab {
        Objects.requireNonNull(room, "room");
        Objects.requireNonNull(board, "board");
        classes = List.copyOf(classes);
    }

    /** All labs of a fleet, in the order of their first machine. */
    public static List<Lab> of(List<Options> options) {
        Map<Key, List<Integer>> labs = new LinkedHashMap<>();
        for (int number = 0; number < options.size(); number++) {
            MachineClass group = options.get(number).group();
            if (group.isInUniformRoom()) {
                Key key = new Key(group.decided().room().orElseThrow(), group.setup().board().id());
                labs.computeIfAbsent(key, unused -> new ArrayList<>()).add(number);
            }
        }
        return labs.entrySet().stream()
                .map(lab -> new Lab(lab.getKey().room(), lab.getKey().board(), lab.getValue()))
                .toList();
    }

    /**
     * What remains of the options: only what the machines of a lab can have in common; where that is nothing, the
     * machines are looked at one by one.
     *
     * @param harvest whether machines on target may be opened all the same
     */
    static List<Options> narrow(List<Options> all, boolean harvest) {
        List<Options> narrowed = new ArrayList<>(all);
        for (Lab lab : of(all)) {
            Set<Map<Piece, Integer>> common = lab.common(all);
            for (int number : lab.classes()) {
                Options each = all.get(number);
                narrowed.set(number, each.only(candidate -> each.isPinned() || (common.isEmpty()
                        ? harvest || !each.isOnTargetNow() : common.contains(contents(candidate.after())))));
            }
        }
        return narrowed;
    }

    /** Which classes may be opened though they are on target: those of labs where not all is well already. */
    static boolean[] opening(List<Options> now) {
        boolean[] opens = new boolean[now.size()];
        for (Lab lab : of(now)) {
            boolean isSettled = !lab.isMixed(now)
                    && lab.classes().stream().allMatch(number -> now.get(number).isOnTargetNow()
                            && now.get(number).group().decided().pinned().isEmpty());
            lab.classes().forEach(number -> opens[number] = !isSettled);
        }
        return opens;
    }

    /** Whether its machines hold different modules now. */
    public boolean isMixed(List<Options> options) {
        return classes.stream().map(number -> contents(options.get(number).group().now())).distinct().count() > 1;
    }

    public int size(List<Options> options) {
        return classes.stream().mapToInt(number -> options.get(number).group().size()).sum();
    }

    /** The first of its machines, which says how room and site are written. */
    public Machine first(List<Options> options) {
        return options.get(classes.get(0)).group().machines().get(0);
    }

    /** What all of them can hold after the work. */
    public Set<Map<Piece, Integer>> common(List<Options> options) {
        Set<Map<Piece, Integer>> common = null;
        for (int number : classes) {
            Options each = options.get(number);
            Set<Map<Piece, Integer>> own = each.candidates().stream()
                    .filter(each::mayBe)
                    .map(candidate -> contents(candidate.after()))
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            if (common == null) {
                common = own;
            } else {
                common.retainAll(own);
            }
        }
        return common == null ? Set.of() : common;
    }

    /** How many there are of each module and filler. */
    public static Map<Piece, Integer> contents(Population population) {
        Map<Piece, Integer> contents = new LinkedHashMap<>();
        population.pieces().forEach(piece -> contents.merge(piece, 1, Integer::sum));
        return contents;
    }

    /** The same in words: "2 x 8 GB DDR4-2400 DIMM". */
    public static String text(Map<Piece, Integer> contents) {
        Map<String, Integer> sorted = new TreeMap<>();
        contents.forEach((piece, count) -> sorted.merge(piece.toString(), count, Integer::sum));
        return sorted.isEmpty() ? "nothing" : sorted.entrySet().stream()
                .map(entry -> entry.getValue() + " x " + entry.getKey())
                .collect(Collectors.joining(" and "));
    }
}
