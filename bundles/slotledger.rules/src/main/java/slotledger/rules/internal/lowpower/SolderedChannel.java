package slotledger.rules.internal.lowpower;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Board;
import slotledger.model.board.Interleave;
import slotledger.model.board.Slot;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.operation.Split;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Soldered memory is one channel of the arithmetic. */
@Component(service = MemoryRule.class)
@RuleId("soldered-channel")
public final class SolderedChannel extends Rule {

    public SolderedChannel() {
        super(new RulePage(
                "soldered-channel",
                "Soldered memory counts as one channel: a module beside it runs in dual channel as far as it equals "
                        + "the soldered memory.",
                Source.document(
                        "HP EliteOne 705 G2 Maintenance and Service Guide",
                        "page 50: the channel with less memory sets how much runs in dual channel; that soldered "
                                + "memory is such a channel is common practice, no source"),
                "The board's manual says how much is soldered and on which channel; the firmware lists it as a "
                        + "module that no slot holds.",
                "Put a module as large as the soldered memory into the socket for dual channel throughout; take a "
                        + "larger one where the total counts more than the speed.",
                "A notebook has 8 GB soldered. With 8 GB in its socket all 16 GB run in dual channel. With 16 GB in "
                        + "it twice 8 GB = 16 GB run in dual channel and 8 GB alone. With an empty socket 8 GB run "
                        + "alone."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Board board = situation.board();
        if (!hasSoldered(situation.modules()) || board.channels().size() < 2
                || situation.hasUnread() || board.interleave() == Interleave.NONE) {
            return;
        }
        long[] totals = new long[board.channels().size()];
        boolean[] fixed = new boolean[totals.length];
        List<Placed> modules = situation.modules();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            totals[module.channel()] += module.kind().capacity().kibibytes();
            fixed[module.channel()] |= module.isSoldered();
        }
        if (!hasSocketBeside(board, fixed)) {
            return;
        }
        boolean equal = true;
        boolean empty = false;
        for (int i = 0; i < totals.length; i++) {
            equal &= totals[i] == totals[0];
            empty |= totals[i] == 0;
        }
        boolean alone = empty;
        collector.report(equal ? Weight.PASSES : Weight.CAUTION, () -> alone
                ? lonely(situation, totals, fixed)
                : Statement.of("%s soldered, %s in sockets: %s.".formatted(sum(totals, fixed, true),
                                sum(totals, fixed, false), mode(situation)))
                        .in(Slots.labels(modules)));
    }

    private static boolean hasSoldered(List<Placed> modules) {
        for (int i = 0; i < modules.size(); i++) {
            if (modules.get(i).isSoldered()) {
                return true;
            }
        }
        return false;
    }

    private static Statement lonely(Situation situation, long[] totals, boolean[] fixed) {
        Capacity soldered = sum(totals, fixed, true);
        return Statement.of(("The soldered %s run with an empty channel beside them: %s. A module of %s in the socket "
                        + "would make dual channel of all.")
                        .formatted(soldered, mode(situation), soldered))
                .in(Slots.labels(situation.modules()));
    }

    private static String mode(Situation situation) {
        ChannelMode mode = Split.of(situation, 1).mode();
        return mode.remainder().isNone()
                ? "all %s run in %s".formatted(mode.together(), mode)
                : "%s run in dual channel and %s alone".formatted(mode.together(), mode.remainder());
    }

    /** What the channels with soldered memory hold, or the others. */
    private static Capacity sum(long[] totals, boolean[] fixed, boolean wanted) {
        long sum = 0;
        for (int i = 0; i < totals.length; i++) {
            sum += fixed[i] == wanted ? totals[i] : 0;
        }
        return Capacity.ofKiB(sum);
    }

    private static boolean hasSocketBeside(Board board, boolean[] fixed) {
        for (int i = 0; i < board.slots().size(); i++) {
            Slot slot = board.slots().get(i);
            if (slot.isSocket()) {
                for (int j = 0; j < fixed.length; j++) {
                    if (!fixed[j] && board.channels().get(j).name().equals(slot.channel())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
