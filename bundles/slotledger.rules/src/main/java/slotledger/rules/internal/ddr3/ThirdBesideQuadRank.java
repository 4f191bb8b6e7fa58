package slotledger.rules.internal.ddr3;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR3 channel with a quad-rank module holds two modules at most. */
@Component(service = MemoryRule.class)
@RuleId("ddr3-quad-rank")
public final class ThirdBesideQuadRank extends Rule {

    private static final Source SOURCE = Source.document("PowerEdge M620 Owner's Manual",
            "memory guidelines: two quad-rank modules a channel, or three of one or two ranks");
    private static final int QUAD = 4;
    private static final int MOST_BESIDE_QUAD = 2;

    public ThirdBesideQuadRank() {
        super(new RulePage(
                "ddr3-quad-rank",
                "A DDR3 channel holds two quad-rank modules, or three of one or two ranks, but never a third module "
                        + "beside a quad-rank one.",
                SOURCE,
                "Read the organisation on the labels: 4Rx4 and 4Rx8 have four ranks. Load-reduced modules don't count "
                        + "here: they show the board fewer ranks.",
                "Take the third module of the channel out, or use modules of one or two ranks there.",
                "A channel of three slots holds 4Rx4 and 1Rx4: 2 modules, allowed. A third of 1Rx4 makes 4 + 1 + 1 = 6 "
                        + "ranks, fewer than two quad-rank modules have (8), and is still not allowed."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR3);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        boolean passed = false;
        boolean objected = false;
        for (int i = 0; i < situation.board().channels().size(); i++) {
            int channel = i;
            int count = 0;
            boolean sure = false;
            boolean possible = false;
            for (int j = 0; j < modules.size(); j++) {
                Placed module = modules.get(j);
                if (module.channel() == channel && module.way().generation() == Generation.DDR3) {
                    count++;
                    boolean counts = countsRanks(module);
                    OptionalInt ranks = ModuleFacts.ranks(module.kind());
                    sure |= counts && ranks.isPresent() && ranks.getAsInt() >= QUAD;
                    possible |= counts && ranks.isEmpty() && ModuleFacts.mostRanks(module.kind()) >= QUAD;
                }
            }
            if (count <= MOST_BESIDE_QUAD || !sure && !possible) {
                passed |= sure;
                continue;
            }
            objected = true;
            boolean known = sure;
            int held = count;
            collector.report(known ? Weight.BLOCKS : Weight.UNKNOWN,
                    () -> objection(situation, channel, held, known));
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("No channel holds a third module beside a quad-rank "
                    + "one."));
        }
    }

    private static Statement objection(Situation situation, int channel, int count, boolean known) {
        List<Placed> modules = situation.inChannel(channel);
        return Statement.of((known
                        ? "Channel %s holds %d modules, one of them quad-rank; beside a quad-rank module there is room "
                                + "for one more."
                        : "Channel %s holds %d modules; if one of them is quad-rank, that is one too many.")
                        .formatted(modules.get(0).slot().channel(), count))
                .in(modules.stream().map(Placed::label).toList())
                .by(situation.board().sources().getOrDefault(BoardFact.RANKS, SOURCE))
                .missing(MissingFact.RANKS);
    }

    private static boolean countsRanks(Placed module) {
        Optional<Buffering> buffering = module.kind().buffering();
        return buffering.isEmpty() || buffering.get() != Buffering.LOAD_REDUCED;
    }
}
