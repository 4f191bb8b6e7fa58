package slotledger.planner.internal.milp;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slotledger.solver.IntegerProgramme.Row;

/**
 * What a programme falls apart into without the rows that join: the parts with machines, and as the last one all that
 * is decided for none of them, such as whether a supplier is used.
 */
final class Parts {

    /**
     * One part.
     *
     * @param variables in rising order
     * @param rows      all that speak of these variables, except those that join
     */
    record Part(int[] variables, List<Row> rows) {
    }

    private static final int NONE = -1;

    private final List<Part> parts = new ArrayList<>();
    private final int[] above;

    Parts(Columns columns, List<Row> rows, Box box) {
        above = new int[box.low.length];
        for (int variable = 0; variable < above.length; variable++) {
            above[variable] = box.low[variable] < box.high[variable] ? variable : NONE;
        }
        for (Row row : rows) {
            if (!row.joins()) {
                join(row);
            }
        }
        Map<Integer, Integer> numbers = new TreeMap<>();
        for (int variable : columns.members) {
            if (above[variable] != NONE) {
                numbers.putIfAbsent(top(variable), numbers.size());
            }
        }
        fill(numbers, rows);
    }

    private void join(Row row) {
        int[] first = {NONE};
        row.sum().forEach((variable, unused) -> {
            if (above[variable] != NONE) {
                first[0] = first[0] == NONE ? variable : first[0];
                above[top(variable)] = top(first[0]);
            }
        });
    }

    private int top(int variable) {
        int top = variable;
        while (above[top] != top) {
            above[top] = above[above[top]];
            top = above[top];
        }
        return top;
    }

    private void fill(Map<Integer, Integer> numbers, List<Row> rows) {
        int last = numbers.size();
        List<List<Integer>> variables = new ArrayList<>();
        List<List<Row>> inside = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            variables.add(new ArrayList<>());
            inside.add(new ArrayList<>());
        }
        for (int variable = 0; variable < above.length; variable++) {
            if (above[variable] != NONE) {
                variables.get(numbers.getOrDefault(top(variable), last)).add(variable);
            }
        }
        for (Row row : rows) {
            int open = row.joins() ? NONE : firstOpen(row);
            if (open != NONE) {
                inside.get(numbers.getOrDefault(top(open), last)).add(row);
            }
        }
        for (int i = 0; i <= last; i++) {
            parts.add(new Part(variables.get(i).stream().mapToInt(Integer::intValue).toArray(), inside.get(i)));
        }
    }

    private int firstOpen(Row row) {
        for (int term = 0; term < row.sum().size(); term++) {
            if (above[row.sum().variable(term)] != NONE) {
                return row.sum().variable(term);
            }
        }
        return NONE;
    }

    /** The last one holds what belongs to no machine. */
    List<Part> all() {
        return parts;
    }

    /** Variables of the largest part. */
    int largest() {
        return parts.stream().mapToInt(part -> part.variables().length).max().orElse(0);
    }
}
