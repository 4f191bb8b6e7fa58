package slotledger.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.standard.StandardRules;

class ReadingOrderTest {

    private static final Operation NOTHING = new Operation(Capacity.NONE, Capacity.NONE, Capacity.NONE,
            new ChannelMode(0, Capacity.NONE, Capacity.NONE), Optional.empty(), "", Bandwidth.NONE, false);

    @Test
    void theWorstStandsFirstAndOfThoseWhatSaysItAll() {
        Verdict verdict = new Verdict(Weight.BLOCKS, NOTHING, List.of(reason("fill-order", Weight.BLOCKS),
                reason("voltage", Weight.BLOCKS), reason("generation", Weight.BLOCKS), reason("form", Weight.PASSES),
                reason("channels", Weight.LOWERS)));
        assertEquals(List.of("generation", "voltage", "fill-order", "channels", "form"),
                ReadingOrder.of(verdict).stream().map(Reason::rule).toList());
        assertEquals("generation", ReadingOrder.first(verdict).orElseThrow().rule());
    }

    @Test
    void whereAllPassesThereIsNothingToReadFirst() {
        assertEquals(Optional.empty(),
                ReadingOrder.first(new Verdict(Weight.PASSES, NOTHING, List.of(reason("form", Weight.PASSES)))));
    }

    @Test
    void theRulesToReadFirstAreRules() {
        List<String> ids = StandardRules.create().pages().stream().map(RulePage::id).toList();
        assertTrue(ids.containsAll(ReadingOrder.FIRST), ids.toString());
    }

    private static Reason reason(String rule, Weight weight) {
        return new Reason(rule, weight, "A sentence.", List.of(), Source.of(Ground.PRACTICE), "", List.of(),
                Optional.empty());
    }
}
