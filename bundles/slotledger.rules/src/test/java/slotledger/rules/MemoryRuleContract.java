package slotledger.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.AwkwardSetups;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Situations;
import slotledger.rules.spi.Statement;

/** What every memory rule keeps to. A test of a rule of one's own extends it and names the rule. */
abstract class MemoryRuleContract {

    /** The rule under test, a new one each time. */
    protected abstract MemoryRule rule();

    static Stream<Setup> setups() {
        return AwkwardSetups.all();
    }

    @Test
    void thePageIsWholeAndTheIdIsTheServiceProperty() {
        RulePage page = rule().page();
        assertTrue(Stream.of(page.sentence(), page.howToTell(), page.whatToDo(), page.example())
                .allMatch(text -> text.endsWith(".")), () -> "each part ends with a full stop: " + page);
        assertTrue(page.example().matches("(?s).*\\d.*"), () -> "the example has numbers: " + page.example());
        RuleId property = rule().getClass().getAnnotation(RuleId.class);
        assertNotNull(property, "the rule has its service property");
        assertEquals(page.id(), property.value());
        assertEquals(page, rule().page());
    }

    @Test
    void theFamiliesAreAlwaysTheSame() {
        assertEquals(rule().families(), rule().families());
    }

    @ParameterizedTest
    @MethodSource("setups")
    void weighingAsksForNoWordsAndJudgingAgreesWithIt(Setup setup) {
        MemoryRule rule = rule();
        for (Situation situation : new Situations().of(setup)) {
            List<Weight> weights = new ArrayList<>();
            rule.judge(situation, (weight, statement) -> weights.add(weight));
            List<Weight> again = new ArrayList<>();
            rule.judge(situation, (weight, statement) -> {
                Statement words = statement.get();
                assertFalse(words.sentence().matches(".*(null|Optional|%[sd]).*"), words.sentence());
                assertTrue(words.sentence().endsWith("."), words.sentence());
                words.slots().forEach(setup.board()::slot);
                assertTrue(weight != Weight.UNKNOWN || words.missing().isPresent(),
                        () -> "it names the missing fact: " + words.sentence());
                again.add(weight);
            });
            assertEquals(weights, again);
        }
        MemoryRules alone = Judged.alone(rule);
        assertEquals(alone.judge(setup).weight(), alone.weigh(setup));
    }

    @ParameterizedTest
    @MethodSource("setups")
    void theOrderInWhichThePopulationNamesItsSlotsIsIrrelevant(Setup setup) {
        MemoryRules rules = Judged.alone(rule());
        Board board = setup.board();
        assertEquals(rules.weigh(setup), rules.weigh(setup.with(AwkwardSetups.reversed(setup.population()))),
                () -> "on board " + board.name());
    }
}
