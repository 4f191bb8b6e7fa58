package slotledger.intake.internal.policy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.sheet.SheetFiles;
import slotledger.model.finding.Finding;

class WrongPolicyTest {

    /** A key, and a policy whose last line gives it a value that it can't have. */
    private record Wrong(PolicyKey key, String text) {
    }

    private static final String SETTINGS = "currency: EUR\ntargets: [{role: Lab, memory: 8 GB}]\n";
    private static final String TARGET = "currency: EUR\ntargets:\n  - role: Lab\n    memory: 8 GB\n    ";
    private static final String WAVE = SETTINGS + "waves:\n  - name: Spring\n    date: 2027-01-10\n    ";

    @TempDir
    private Path folder;

    private List<Finding> findings(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("policy.yaml"), text);
        try {
            return new PolicyReader(new SheetFiles()).read(file).findings();
        } catch (IntakeException refused) {
            return List.of(refused.finding());
        }
    }

    private static List<Wrong> wrong() {
        return List.of(
                new Wrong(PolicyKey.CURRENCY, "currency: euros"),
                new Wrong(PolicyKey.BUDGET, SETTINGS + "budget: plenty"),
                new Wrong(PolicyKey.PER_MACHINE, SETTINGS + "labour:\n  per machine: cheap"),
                new Wrong(PolicyKey.PER_MODULE, SETTINGS + "labour:\n  per module: cheap"),
                new Wrong(PolicyKey.SPARES_PERCENT, SETTINGS + "spares:\n  percent: some"),
                new Wrong(PolicyKey.SPARES_AT_LEAST_ONE, SETTINGS + "spares:\n  at least one: perhaps"),
                new Wrong(PolicyKey.REUSE_PULLED, SETTINGS + "reuse pulled: perhaps"),
                new Wrong(PolicyKey.HARVEST, SETTINGS + "harvest: perhaps"),
                new Wrong(PolicyKey.NEEDED_BY, SETTINGS + "needed by: soon"),
                new Wrong(PolicyKey.TAX_PERCENT, SETTINGS + "tax percent: low"),
                new Wrong(PolicyKey.BUDGET_INCLUDES_TAX, SETTINGS + "budget includes tax: perhaps"),
                new Wrong(PolicyKey.PRICES_AFTER_VALIDITY, SETTINGS + "prices after validity: guess"),
                new Wrong(PolicyKey.RATES_OF, SETTINGS + "exchange rates of: lately"),
                new Wrong(PolicyKey.MEMORY, "currency: EUR\ntargets:\n  - role: Lab\n    memory: lots"),
                new Wrong(PolicyKey.DUAL_CHANNEL, TARGET + "dual channel: perhaps"),
                new Wrong(PolicyKey.ECC, TARGET + "ecc: perhaps"),
                new Wrong(PolicyKey.RATE, TARGET + "rate: fast"),
                new Wrong(PolicyKey.WEIGHT, TARGET + "weight: heavy"),
                new Wrong(PolicyKey.WAVE_DATE, SETTINGS + "waves:\n  - name: Spring\n    date: soon"),
                new Wrong(PolicyKey.WAVE_BUDGET, WAVE + "budget: plenty"),
                new Wrong(PolicyKey.WAVE_NEEDED_BY, WAVE + "needed by: soon"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void aWrongValueIsNamedWithFileLineAndColumnAndWithWhatWasExpected(Wrong wrong) throws IOException {
        int line = (int) wrong.text().lines().count();
        List<Finding> findings = findings(wrong.text());
        Finding found = findings.stream().filter(each -> each.place().row().orElse(0) == line).findFirst()
                .orElseThrow(() -> new AssertionError("Nothing is said of line " + line + ": " + findings));
        assertTrue(found.place().file().endsWith("policy.yaml"), found.toString());
        assertTrue(found.place().column().isPresent(), found.toString());
        assertFalse(found.expected().isEmpty(), found.toString());
        assertTrue(found.toString().contains(found.expected()), found.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "exchange rates: {USD: cheap}", "exchange rates: {USD: 0}", "exchange rates: {dollars: 0.9}",
        "tax percent: -3", "tax percent: 300", "spares: {percent: 101}", "budget: -5",
        "cost centre budgets: {4711: much}",
    })
    void anImpossibleNumberIsNamedWithItsLine(String line) throws IOException {
        List<Finding> findings = findings(SETTINGS + line);
        assertTrue(findings.stream().anyMatch(each -> each.place().row().orElse(0) == 3
                && !each.expected().isEmpty()), findings.toString());
    }

    @Test
    void eachKeyWithAValueThatCanBeWrongIsTried() {
        Stream<PolicyKey> anyText = Stream.of(PolicyKey.ROLE, PolicyKey.WAVE_NAME, PolicyKey.TAGS, PolicyKey.ROOMS,
                PolicyKey.ROLES);
        assertEquals(Arrays.asList(PolicyKey.values()),
                Stream.concat(anyText, wrong().stream().map(Wrong::key)).sorted().toList());
    }
}
