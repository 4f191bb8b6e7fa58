package slotledger.intake.internal.policy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.sheet.SheetFiles;
import slotledger.intake.internal.table.Grid;
import slotledger.model.trade.Policy;

class PolicyTextTest {

    @TempDir
    Path folder;

    private Reading<Policy> read(String text) throws IOException, IntakeException {
        Path file = Files.writeString(folder.resolve("policy.yaml"), text);
        return new PolicyReader(new SheetFiles()).read(file);
    }

    private static List<String> findings(Reading<Policy> reading) {
        return reading.findings().stream().map(finding -> finding.code() + " " + finding.place().row().orElse(0) + ":"
                + finding.place().column().orElse(0) + " " + finding.remedy()).toList();
    }

    @Test
    void everyKeyIsRead() throws IOException, IntakeException {
        Reading<Policy> reading = read("""
                currency: EUR
                targets:
                  - role: Lab PC
                    memory: 16 GB
                    dual channel: yes
                    ecc: no
                    rate: 2400
                    weight: 5
                  - {role: "*", memory: 8 GB}
                budget: 12 000
                cost centre budgets:
                  4711: 3000.50
                labour:
                  per machine: 12.50
                  per module: 2
                spares:
                  percent: 2
                  at least one: yes
                reuse pulled: no
                harvest: yes
                leave alone:
                  tags: [A-1, "00123"]
                  rooms: Main / 101
                """);
        Policy policy = reading.value();
        assertEquals(List.of(), findings(reading));
        assertEquals(
                "[Target[role=Lab PC, capacity=16 GB, sameChannels=true, ecc=false, "
                + "rate=Optional[2400 MT/s], weight=5], "
                + "Target[role=*, capacity=8 GB, sameChannels=false, ecc=false, rate=Optional.empty, weight=1]]",
                policy.targets().toString());
        assertEquals("Optional[EUR 12000.00] {4711=EUR 3000.50} EUR 12.50 EUR 2.00 2 true false true",
                policy.budget() + " " + policy.costCentreBudgets() + " " + policy.perMachine() + " "
                        + policy.perModule()
                + " " + policy.sparePercent() + " " + policy.atLeastOneSpare() + " " + policy.reusePulled() + " "
                        + policy.harvest());
        assertTrue(policy.leaveAlone().tags().contains("00123"));
        assertTrue(policy.leaveAlone().rooms().contains("main / 101"));
    }

    @Test
    void anUnknownKeySaysWhereItIsAndWhatMayBeMeant() throws IOException, IntakeException {
        Reading<Policy> reading = read("""
                currency: EUR
                targts:
                  - role: a
                targets:
                  - role: Lab
                    memry: 8 GB
                    memory: lots
                reuse pulled: maybe
                harvest: no
                """);
        assertEquals(List.of("unknown-key 2:1 Maybe \"targets\" is meant.",
                "unknown-key 6:5 Maybe \"memory\" is meant.", "memory-not-understood 7:13 Correct it.",
                "no-targets 0:0 Add a target for a role, or for any role (*).", "not-yes-or-no 8:15 Correct it."),
                findings(reading));
    }

    @Test
    void brokenTextSaysLineAndColumn() {
        IntakeException broken = assertThrows(IntakeException.class,
                () -> read("currency: EUR\ntargets: [a, b\nbudget: 3\n"));
        assertEquals("policy-not-readable", broken.finding().code());
        assertTrue(broken.finding().place().row().isPresent(), broken.finding().toString());
    }

    @Test
    void aPolicyWithoutCurrencyIsRefused() {
        IntakeException refused = assertThrows(IntakeException.class, () -> read("budget: 300\n"));
        assertEquals("currency-missing", refused.finding().code());
    }

    @Test
    void aSpreadsheetWithSectionsSaysTheSame() throws IntakeException {
        Reading<Policy> reading = new PolicyReader(new Grid("""
                == Policy
                Our plan for next year
                Currency | EUR
                Budget | 5000
                Reuse pulled | yes
                Harvst | no
                Targets
                Role | Memory | Dual channel
                Lab | 8 GB | yes
                Cost centre budgets
                4711 | 300
                Leave alone
                room | 101 | 102
                == Notes
                nothing here
                """)).read(Path.of("policy.xlsx"));
        assertEquals("Optional[EUR 5000.00] {4711=EUR 300.00} [101, 102]", reading.value().budget() + " "
                + reading.value().costCentreBudgets() + " "
                        + reading.value().leaveAlone().rooms().stream().sorted().toList());
        assertEquals(List.of("note-row", "unknown-key", "sheet-without-table", "default-used"),
                reading.findings().stream().map(finding -> finding.code()).toList());
        assertEquals("Maybe \"harvest\" is meant.", reading.findings().get(1).remedy());
    }
}
