package slotledger.planner.internal.milp;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;

/**
 * A programme column by column, in plain arrays. Rows that share a number of machines out among populations, each
 * variable in one of them at most, stand apart as groups: with prices for all other rows every group is decided by
 * itself.
 */
final class Columns {

    static final int NO_GROUP = -1;

    final int size;
    final int groups;
    final int rows;
    /** By variable. */
    final int[] group;
    /** By group: how many are shared out. */
    final long[] total;
    /** The variables of group g are members[firstMember[g]] to members[firstMember[g + 1] - 1]. */
    final int[] firstMember;
    final int[] members;
    /** Variables outside all groups. */
    final int[] single;
    final long[] rowLow;
    final long[] rowHigh;
    /** By row: whether it joins what may be independent without it. */
    final boolean[] joins;
    /** The terms of variable v are those from firstTerm[v] to firstTerm[v + 1] - 1. */
    final int[] firstTerm;
    final int[] row;
    final long[] factor;

    Columns(IntegerProgramme programme, List<Row> more) {
        size = programme.size();
        group = new int[size];
        Arrays.fill(group, NO_GROUP);
        List<Row> all = new ArrayList<>(programme.rows());
        all.addAll(more);
        List<Row> sharing = new ArrayList<>();
        List<Row> linking = new ArrayList<>();
        for (Row each : all) {
            if (shares(each, programme)) {
                int number = sharing.size();
                each.sum().forEach((variable, unused) -> group[variable] = number);
                sharing.add(each);
            } else {
                linking.add(each);
            }
        }
        groups = sharing.size();
        rows = linking.size();
        total = sharing.stream().mapToLong(Row::high).toArray();
        firstMember = new int[groups + 1];
        for (int i = 0; i < groups; i++) {
            firstMember[i + 1] = firstMember[i] + sharing.get(i).sum().size();
        }
        members = new int[firstMember[groups]];
        for (int i = 0; i < groups; i++) {
            Linear sum = sharing.get(i).sum();
            for (int term = 0; term < sum.size(); term++) {
                members[firstMember[i] + term] = sum.variable(term);
            }
        }
        single = new int[size - members.length];
        int singles = 0;
        for (int variable = 0; variable < size; variable++) {
            if (group[variable] == NO_GROUP) {
                single[singles++] = variable;
            }
        }
        rowLow = linking.stream().mapToLong(Row::low).toArray();
        rowHigh = linking.stream().mapToLong(Row::high).toArray();
        joins = new boolean[rows];
        for (int i = 0; i < rows; i++) {
            joins[i] = linking.get(i).joins();
        }
        firstTerm = new int[size + 1];
        linking.forEach(each -> each.sum().forEach((variable, unused) -> firstTerm[variable + 1]++));
        for (int variable = 0; variable < size; variable++) {
            firstTerm[variable + 1] += firstTerm[variable];
        }
        row = new int[firstTerm[size]];
        factor = new long[firstTerm[size]];
        fill(linking);
    }

    private void fill(List<Row> linking) {
        int[] next = Arrays.copyOf(firstTerm, size);
        for (int i = 0; i < rows; i++) {
            int number = i;
            linking.get(i).sum().forEach((variable, each) -> {
                row[next[variable]] = number;
                factor[next[variable]++] = each;
            });
        }
    }

    private boolean shares(Row each, IntegerProgramme programme) {
        if (each.low() != each.high() || each.high() < 0 || each.sum().isEmpty()) {
            return false;
        }
        for (int term = 0; term < each.sum().size(); term++) {
            int variable = each.sum().variable(term);
            if (each.sum().factor(term) != 1 || group[variable] != NO_GROUP || programme.low(variable) < 0) {
                return false;
            }
        }
        return true;
    }
}
