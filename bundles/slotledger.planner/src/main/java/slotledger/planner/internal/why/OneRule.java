package slotledger.planner.internal.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.trade.Target;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.planner.Targets;
import slotledger.planner.internal.choice.JudgedBoard;
import slotledger.planner.internal.choice.Options;

/**
 * Modules to be had that would bring a machine on target, were it not for one single rule.
 *
 * @param after   what the machine would hold
 * @param coming  what would come into it
 * @param reasons of the one rule against it
 */
record OneRule(Population after, List<Piece> coming, List<Reason> reasons) {

    OneRule {
        Objects.requireNonNull(after, "after");
        coming = List.copyOf(coming);
        reasons = List.copyOf(reasons);
    }

    /** The one with the fewest modules, among those with one kind in all sockets of a usual pattern. */
    static Optional<OneRule> of(Options options, List<ModuleKind> kinds) {
        JudgedBoard board = options.board();
        List<OneRule> all = new ArrayList<>();
        for (ModuleKind kind : kinds) {
            for (List<String> sockets : board.order().patterns()) {
                Population filled = options.group().now();
                for (String socket : sockets) {
                    filled = filled.with(socket, kind);
                }
                if (isOnTarget(options, filled) && board.weigh(filled) == Weight.BLOCKS) {
                    add(all, options, filled);
                }
            }
        }
        return all.stream().min(Comparator.comparingInt(each -> each.coming().size()));
    }

    private static boolean isOnTarget(Options options, Population filled) {
        Target target = options.group().target().orElseThrow();
        return filled.total().atLeast(target.capacity()) && Targets.meets(
                target, options.board().setup(filled), options.board().operate(filled));
    }

    private static void add(List<OneRule> all, Options options, Population filled) {
        List<Reason> against = options.board().judge(filled).reasons(Weight.BLOCKS);
        boolean isInDoubt = !options.board().doubts(options.group().now(), filled).isEmpty();
        if (!isInDoubt && against.stream().map(Reason::rule).distinct().count() == 1) {
            List<Piece> coming = new ArrayList<>(filled.pieces());
            options.group().now().pieces().forEach(coming::remove);
            all.add(new OneRule(filled, coming, against));
        }
    }

    /** Id of the rule. */
    String rule() {
        return reasons.get(0).rule();
    }
}
