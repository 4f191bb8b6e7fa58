package slotledger.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.internal.StandardRuleList;
import slotledger.rules.internal.family.FamilyKnown;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.standard.StandardRules;

class StandardRulesTest {

    @TestFactory
    Stream<DynamicContainer> everyRuleKeepsToTheContract() {
        return StandardRules.list().stream().map(rule -> DynamicContainer.dynamicContainer(rule.id(), contract(rule)));
    }

    private static Stream<DynamicTest> contract(MemoryRule rule) {
        MemoryRuleContract contract = new Of(rule);
        return Stream.of(
                DynamicTest.dynamicTest("page", contract::thePageIsWholeAndTheIdIsTheServiceProperty),
                DynamicTest.dynamicTest("families", contract::theFamiliesAreAlwaysTheSame),
                DynamicTest.dynamicTest("weighing", contract::weighingAsksForNoWordsAndJudgingAgreesWithIt),
                DynamicTest.dynamicTest("order",
                        contract::theOrderInWhichThePopulationNamesItsSlotsIsIrrelevant),
                DynamicTest.dynamicTest("state", contract::theRuleKeepsNoState));
    }

    /** Makes the contract's checks callable for a rule at hand. */
    private static final class Of extends MemoryRuleContract {

        private final MemoryRule rule;

        private Of(MemoryRule rule) {
            this.rule = rule;
        }

        @Override
        protected MemoryRule rule() {
            return rule;
        }
    }

    /** The service waits for so many rules: one component each, and one for all of them together. */
    @Test
    void theServiceWaitsForAsManyRulesAsThereAreComponents() throws IOException, URISyntaxException {
        assertEquals(StandardRuleList.COUNT, StandardRules.list().size());
        Path classes = Path.of(StandardRules.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Path descriptors = classes.resolve("OSGI-INF");
        assertTrue(Files.isDirectory(descriptors), () -> "component descriptors in " + descriptors);
        try (Stream<Path> files = Files.list(descriptors)) {
            assertEquals(StandardRuleList.COUNT + 1, files.filter(file -> file.toString().endsWith(".xml")).count());
        }
    }

    @Test
    void everyRuleIsThereOnceAndTheOrderOfRegistrationIsIrrelevant() {
        List<MemoryRule> rules = StandardRules.list();
        List<String> ids = Stream.concat(rules.stream().map(MemoryRule::id), Stream.of(FamilyKnown.PAGE.id()))
                .distinct().sorted().toList();
        assertEquals(rules.size() + 1, ids.size());
        assertEquals(ids, StandardRules.create().pages().stream().map(RulePage::id).toList());
        IllegalArgumentException twice = assertThrows(IllegalArgumentException.class,
                () -> StandardRules.of(List.of(rules.get(0), StandardRules.list().get(0))));
        assertTrue(twice.getMessage().contains("must not occur twice"));
    }
}
