package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.spi.MemoryRule;
import slotledger.testkit.OutsideData;

/** Outside check: Intel Desktop Board D850GB manual, table 5 (capacity by number and size of chips), every row. */
class D850TableTest {

    private static final Pattern CHIPS = Pattern.compile("\"(\\d+)/(\\d+) Mbit\": \\{([^}]*)\\}");
    private static final String FULL = "RIMM1 RIMM2 RIMM3: 128MB RDRAM-800 ECC; RIMM4: 128MB RDRAM-800 %s";
    private static final Pattern ROW = Pattern.compile("\"(\\d+)\": (\\d+)");

    @Test
    void chipsTimesSizeIsThePrintedCapacity() throws IOException {
        String table = Files.readString(OutsideData.file("tables/population.json"));
        table = table.substring(table.indexOf("Intel D850GB")).replaceAll("\\s+", " ");
        int rows = 0;
        for (MatchResult sizes : CHIPS.matcher(table).results().toList()) {
            for (MatchResult row : ROW.matcher(sizes.group(3)).results().toList()) {
                int chips = Integer.parseInt(row.group(1));
                for (String size : new String[] {sizes.group(1), sizes.group(2)}) {
                    String module = "%sMB RDRAM-800 RIMM_184 %sMbit".formatted(row.group(2), size);
                    assertEquals(chips, RdramChips.of(ModuleText.module(module)).orElseThrow(), module);
                    assertEquals(Weight.PASSES, Judged.by(new RimmChipsAddUp(), D850.GB, "RIMM1 RIMM2: " + module));
                }
                Capacity full = Capacity.ofMiB(Long.parseLong(row.group(2))).times(4);
                assertTrue(chips * 2 <= RdramChips.MOST_OF_CHANNEL && Capacity.ofGiB(2).atLeast(full));
                rows++;
            }
        }
        assertEquals(10, rows);
    }

    /** Each printed rule beside a population that keeps it and one that breaks it. */
    @Test
    void thePrintedRulesHold() throws IOException {
        String table = Files.readString(OutsideData.file("tables/population.json"));
        table = table.substring(table.indexOf("Intel D850GB"));
        int list = table.indexOf('[', table.indexOf("\"rules\""));
        List<String> rules = Pattern.compile("\"([^\"]+)\"")
                .matcher(table.substring(list, table.indexOf(']', list)))
                .results().map(rule -> rule.group(1)).toList();
        assertEquals(5, rules.size());
        for (String rule : rules) {
            switch (rule) {
                case "bank 0 first" -> assertHolds(rule, new BanksWhole(),
                        "RIMM1 RIMM2: 128MB RDRAM", "RIMM3 RIMM4: 128MB RDRAM");
                case "the two modules of a bank identical in speed, size, density" -> assertHolds(rule,
                        new PairsAlike(), "RIMM1 RIMM2: 128MB RDRAM-800 128Mbit",
                        "RIMM1: 128MB RDRAM-800 128Mbit; RIMM2: 128MB RDRAM-800 256Mbit");
                case "unused bank takes two continuity modules" -> assertHolds(rule, new SocketsFilled(),
                        "RIMM1 RIMM2: 128MB RDRAM; RIMM3 RIMM4: CONTINUITY_184",
                        "RIMM1 RIMM2: 128MB RDRAM; RIMM3: CONTINUITY_184");
                case "bank 1 may differ in size/density from bank 0 but must match its speed" -> assertHolds(rule,
                        new BanksOneSpeed(), "RIMM1 RIMM2: 128MB RDRAM-800; RIMM3 RIMM4: 256MB RDRAM-800",
                        "RIMM1 RIMM2: 128MB RDRAM-800; RIMM3 RIMM4: 128MB RDRAM-600");
                case "ECC only if every module is ECC" -> {
                    assertTrue(Judged.byAll(D850.GB, FULL.formatted("ECC")).operation().ecc());
                    assertFalse(Judged.byAll(D850.GB, FULL.formatted("non-ECC")).operation().ecc());
                }
                default -> fail(rule);
            }
        }
    }

    private static void assertHolds(String printed, MemoryRule rule, String kept, String broken) {
        assertEquals(Weight.PASSES, Judged.by(rule, D850.GB, kept), printed);
        assertEquals(Weight.BLOCKS, Judged.by(rule, D850.GB, broken), printed);
    }
}
