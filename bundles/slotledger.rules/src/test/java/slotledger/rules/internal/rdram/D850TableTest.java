package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.testkit.OutsideData;

/** Outside check: Intel Desktop Board D850GB manual, table 5 (capacity by number and size of chips), every row. */
class D850TableTest {

    private static final Pattern CHIPS = Pattern.compile("\"(\\d+)/(\\d+) Mbit\": \\{([^}]*)\\}");
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
}
