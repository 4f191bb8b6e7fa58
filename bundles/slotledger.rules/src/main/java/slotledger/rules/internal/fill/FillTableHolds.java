package slotledger.rules.internal.fill;

import java.util.List;
import java.util.function.Supplier;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Fill;
import slotledger.model.board.FillRow;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.FillFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The sockets filled are those of a printed row. */
@Component(service = MemoryRule.class)
@RuleId("fill-table")
public final class FillTableHolds extends Rule {

    public FillTableHolds() {
        super(new RulePage(
                "fill-table",
                "Where a document prints which sockets a number of modules goes into, they go exactly there.",
                Source.document(
                        "PowerEdge T640 Installation and Service Manual",
                        "population rules: 4 modules a processor in A1, A2, A4, A5"),
                "Look up the row for the number of modules and processors in the board's manual.",
                "Move the modules into the sockets of the printed row.",
                "A table prints 4 modules in A1, A2, A4, A5. Four modules in A1, A2, A3, A4 are in the order of the "
                        + "numbers, but not where the table wants them."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Fill fill = situation.board().fill();
        int count = situation.filled().size();
        if (fill.table().isEmpty() || count == 0 || FillFacts.hasRedundancySets(situation)) {
            return;
        }
        if (!situation.matchingRows().isEmpty()) {
            report(situation, collector, Weight.PASSES, () ->
                    "The fill table prints the sockets filled for %s.");
        } else if (FillFacts.hasRowsForCount(situation)) {
            report(situation, collector, departure(fill.binding()), () ->
                    "The fill table prints other sockets for %s: " + rows(situation, count) + ".");
        } else if (fill.tableOnly() && situation.rows().isEmpty()) {
            report(situation, collector, Weight.UNKNOWN, () ->
                    "The fill table says nothing of %s with " + processors(situation) + ".");
        } else if (fill.tableOnly()) {
            report(situation, collector, Weight.BLOCKS, () ->
                    "The fill table has no row for %s, and no other way is allowed.");
        }
    }

    private static void report(Situation situation, Collector collector, Weight weight, Supplier<String> sentence) {
        collector.report(weight, () -> Statement.of(
                        sentence.get().formatted(FillFacts.modules(situation.filled().size())))
                .in(situation.filled())
                .by(situation.board().sourceOf(BoardFact.FILL))
                .missing(MissingFact.BOARD_FACT));
    }

    private static String rows(Situation situation, int count) {
        List<String> rows = situation.rows().stream()
                .map(FillRow::slots)
                .filter(slots -> slots.size() == count)
                .map(slots -> String.join(", ", slots))
                .distinct()
                .toList();
        return String.join(" or ", rows);
    }

    private static String processors(Situation situation) {
        int count = situation.setup().processors();
        return count == 1 ? "1 processor" : count + " processors";
    }
}
