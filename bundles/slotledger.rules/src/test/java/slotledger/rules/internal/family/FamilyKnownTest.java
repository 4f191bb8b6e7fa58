package slotledger.rules.internal.family;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.RulePage;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;
import slotledger.rules.standard.StandardRules;

/** Outside check: the families of JEDEC JESD21-C, section 4; none has a law but those that rules name. */
class FamilyKnownTest {

    private static final Board EDO = BoardText.board("none", "channel A 1 S1 S2\ntakes EDO DIMM");
    private static final Board DDR2_AND_DDR3 = BoardText.board("none", """
            channel A 1 A1 A2
            channel B 1 B1 B2
            takes DDR2 DIMM only=A1,B1
            takes DDR3 DIMM only=A2,B2
            """);

    /** Says that it was asked. */
    private record Asked(String name, Set<Generation> families) implements MemoryRule {

        @Override
        public RulePage page() {
            return new RulePage(name, "Asked.", Source.of(Ground.PRACTICE), "-.", "-.", "1.");
        }

        @Override
        public void judge(Situation situation, Collector collector) {
            collector.report(Weight.CAUTION, () -> Statement.of("Asked."));
        }
    }

    private static List<String> reasons(Board board, String population, MemoryRule... rules) {
        MemoryRules together = StandardRules.of(List.of(rules));
        Verdict verdict = together.judge(Judged.setup(board, population));
        assertEquals(verdict.weight(), together.weigh(Judged.setup(board, population)));
        return verdict.reasons().stream().map(reason -> reason.weight().text() + " " + reason.rule()).toList();
    }

    private static final MemoryRule GENERAL = new Asked("general", Set.of());
    private static final MemoryRule OF_EDO = new Asked("edo", Set.of(Generation.EDO, Generation.FPM));
    private static final MemoryRule OF_DDR2 = new Asked("ddr2", Set.of(Generation.DDR2));

    @Test
    void aFamilyWithoutLawGetsOneReasonThatNamesWhatIsMissing() {
        MemoryRules rules = StandardRules.of(List.of(GENERAL, OF_DDR2));
        Verdict verdict = rules.judge(Judged.setup(EDO, "S1 S2: 16MB EDO"));
        assertEquals(1, verdict.reasons().size());
        Reason reason = verdict.reasons().get(0);
        assertEquals("There are no rules for this family (EDO).", reason.sentence());
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(Optional.of(MissingFact.FAMILY), reason.missing());
        assertEquals(MissingFact.FAMILY.cheapestWay(), reason.remedy());
    }

    @Test
    void generalRulesAreAskedForEveryFamilyWithALaw() {
        assertEquals(List.of("caution edo", "caution general"),
                reasons(EDO, "S1: 16MB EDO", OF_EDO, GENERAL, OF_DDR2));
        assertEquals(List.of("unknown family"), reasons(EDO, "S1: 16MB EDO", GENERAL));
    }

    @Test
    void aBoardOfTwoFamiliesIsUnknownWhereTheOneWithoutLawIsUsed() {
        assertEquals(List.of("caution ddr2", "caution general"),
                reasons(DDR2_AND_DDR3, "A1 B1: 1GB DDR2 DIMM", OF_DDR2, GENERAL));
        assertEquals(List.of("unknown family", "caution ddr2", "caution general"),
                reasons(DDR2_AND_DDR3, "A2 B2: 1GB DDR3 DIMM", OF_DDR2, GENERAL));
    }

    @Test
    void everyFamilyOfOurRulesHasALaw() {
        for (Generation generation : Generation.values()) {
            boolean named = StandardRules.list().stream().anyMatch(rule -> rule.families().contains(generation));
            Board board = BoardText.board("none", "channel A 1 A1\ntakes %s DIMM".formatted(generation));
            boolean unknown = Judged.byAll(board, "").reasons().stream()
                    .anyMatch(reason -> reason.rule().equals(FamilyKnown.PAGE.id()));
            assertEquals(named, !unknown, generation.text());
            assertTrue(named || generation.compareTo(Generation.DDR) < 0, generation.text());
        }
    }

    @Test
    void nobodyTakesItsId() {
        List<MemoryRule> rules = new ArrayList<>(List.of(GENERAL, new Asked("family", Set.of())));
        assertThrows(IllegalArgumentException.class, () -> StandardRules.of(rules));
        assertTrue(StandardRules.create().pages().contains(FamilyKnown.PAGE));
    }
}
