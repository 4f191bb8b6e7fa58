package slotledger.planner.internal.why;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import slotledger.planner.internal.model.Limit;
import slotledger.planner.internal.model.PlanModel;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * A programme some of whose limits may be exceeded. By how much is one number for each limit, in units of its row, so
 * that the least sum of them says what binds and how far.
 */
final class Eased {

    private static final long MOST = 1_000_000_000_000L;

    private final IntegerProgramme programme = new IntegerProgramme();
    private final Map<Limit, Integer> excess = new LinkedHashMap<>();

    Eased(PlanModel model, Predicate<Limit> mayBeExceeded) {
        IntegerProgramme firm = model.programme();
        firm.variables().forEach(each -> programme.variable(each.name(), each.low(), each.high(), each.first()));
        Map<Integer, Limit> eased = new LinkedHashMap<>();
        model.limits().stream().filter(mayBeExceeded).forEach(limit -> eased.put(limit.row(), limit));
        List<IntegerProgramme.Row> rows = firm.rows();
        for (int i = 0; i < rows.size(); i++) {
            Linear sum = new Linear().add(rows.get(i).sum(), 1);
            if (eased.containsKey(i)) {
                int more = programme.variable("more of " + rows.get(i).name(), 0, MOST);
                excess.put(eased.get(i), more);
                sum.add(more, -1);
            }
            add(rows.get(i), sum);
        }
    }

    private void add(IntegerProgramme.Row row, Linear sum) {
        if (row.low() == IntegerProgramme.NO_LOW) {
            programme.atMost(row.name(), sum, row.high());
        } else if (row.high() == IntegerProgramme.NO_HIGH) {
            programme.atLeast(row.name(), sum, row.low());
        } else {
            programme.equal(row.name(), sum, row.low());
        }
    }

    IntegerProgramme programme() {
        return programme;
    }

    /** All excess together, in the finest unit of the rows. */
    Linear all() {
        long finest = excess.keySet().stream().mapToLong(Limit::unit).max().orElse(1);
        Linear all = new Linear();
        excess.forEach((limit, variable) -> all.add(variable, finest / limit.unit()));
        return all;
    }

    /** By how much each limit is exceeded, in minor units or pieces, rounded up; those that are kept are left out. */
    Map<Limit, Long> excess(long[] values) {
        Map<Limit, Long> exceeded = new LinkedHashMap<>();
        excess.forEach((limit, variable) -> {
            if (values[variable] > 0) {
                exceeded.put(limit, -Math.floorDiv(-values[variable], limit.unit()));
            }
        });
        return exceeded;
    }
}
