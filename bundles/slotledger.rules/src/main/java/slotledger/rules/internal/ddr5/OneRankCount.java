package slotledger.rules.internal.ddr5;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.server.Servers;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.kit.Stacks;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** DDR5 modules of a server have the same number of ranks. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-ranks")
public final class OneRankCount extends Rule {

    public OneRankCount() {
        super(new RulePage(
                "ddr5-ranks",
                "All DDR5 modules of a server have the same number of ranks; pairs of 1 and 2, or of 4 and 8, are "
                        + "mixed only where every socket is filled.",
                Source.document(
                        "Lenovo ThinkSystem SR630 V3 User Guide",
                        "independent mode installation rules: same number of ranks, with two exceptions for 16 "
                                + "modules a processor"),
                "Read the ranks on the labels: 1Rx4 has 1, 2Rx8 has 2, 2S4Rx4 has 2 x 4 = 8.",
                "Use modules of one number of ranks, or fill every socket as the board's manual prints it.",
                "A processor has 16 sockets. 8 x 32 GB 2Rx8 and 8 x 16 GB 1Rx8 fill all: 2 and 1 rank are allowed so "
                        + "by one maker. 8 x 32 GB and 4 x 16 GB leave 4 sockets empty: not there."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        if (modules.size() < 2 || !Servers.concerns(situation)) {
            return;
        }
        int fewest = Integer.MAX_VALUE;
        int most = 0;
        int sum = 0;
        for (int i = 0; i < modules.size(); i++) {
            ModuleKind kind = modules.get(i).kind();
            int ranks = Stacks.leastLogicalRanks(kind);
            if (ModuleFacts.ranks(kind).isEmpty() || ranks != ModuleFacts.ranks(kind).getAsInt() * Stacks.most(kind)) {
                return;
            }
            fewest = Math.min(fewest, ranks);
            most = Math.max(most, ranks);
            sum += ranks;
        }
        if (fewest == most) {
            String ranks = most == 1 ? "1 rank" : most + " ranks";
            collector.report(Weight.PASSES, () -> Statement.of("All modules have %s.".formatted(ranks)));
            return;
        }
        boolean pair = (fewest == 1 && most == 2 || fewest == 4 && most == 8) && isPair(modules, fewest, most);
        if (pair && Servers.isFull(situation)) {
            collector.report(Weight.CAUTION, () -> Statement.of(
                            ("Modules of different ranks fill every socket (%s): one maker allows that, with the "
                                    + "warning that the start may hang.")
                                    .formatted(text(modules)))
                    .in(Slots.labels(modules)));
        } else {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            ("Modules of different ranks are mixed (%s); a maker's guide allows that only with every "
                                    + "socket filled, this board's document doesn't say.")
                                    .formatted(text(modules)))
                    .in(Slots.labels(modules))
                    .missing(MissingFact.BOARD_FACT));
        }
    }

    private static boolean isPair(List<Placed> modules, int fewest, int most) {
        for (int i = 0; i < modules.size(); i++) {
            int ranks = Stacks.leastLogicalRanks(modules.get(i).kind());
            if (ranks != fewest && ranks != most) {
                return false;
            }
        }
        return true;
    }

    private static String text(List<Placed> modules) {
        return Slots.by(modules, module -> Integer.toString(Stacks.leastLogicalRanks(module.kind())));
    }
}
