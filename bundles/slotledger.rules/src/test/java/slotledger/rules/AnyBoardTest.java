package slotledger.rules;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.EveryFamily;
import slotledger.rules.fixture.TakenSafely;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.standard.StandardRules;

/** Boards of all families by chance: two processors, dead connectors, fillers anywhere, ways that exclude others. */
class AnyBoardTest {

    private static final int SEEDS = Integer.getInteger("slotledger.seeds", 1000);

    @Test
    void theRulesTakeAnythingSafely() {
        List<MemoryRule> rules = new ArrayList<>(StandardRules.list());
        rules.add(new EveryFamily());
        MemoryRules all = StandardRules.of(rules);
        Set<Weight> seen = EnumSet.noneOf(Weight.class);
        for (long seed = 0; seed < SEEDS; seed++) {
            seen.add(TakenSafely.check(all, seed));
        }
        assertTrue(seen.containsAll(EnumSet.of(Weight.BLOCKS, Weight.UNKNOWN, Weight.LOWERS)), seen::toString);
    }
}
