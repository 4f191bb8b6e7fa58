package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Verdict;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.testkit.OutsideData;

/**
 * Outside check: PowerEdge SC1425 manual, page 49: one module alone in DIMM1_A, else matched pairs; a dual-rank pair in
 * bank 1, none in bank 3, and bank 3 empty where bank 2 is dual-rank. That banks are filled by their numbers is common
 * practice.
 */
class DualRankBanksTest {

    private static final Board SC1425 = BoardText.board("PowerEdge SC1425 manual", """
            form server
            channel A 1 1A 2A 3A
            channel B 1 1B 2B 3B
            takes DDR2 DIMM registered ecc=REQUIRED ranks=2 only=1A,1B
            takes DDR2 DIMM registered ecc=REQUIRED ranks=1 only=2A,2B,3A,3B
            takes DDR2 DIMM registered ecc=REQUIRED ranks=2 only=2A,2B
            bank 1 1A 1B
            bank 2 2A 2B
            bank 3 3A 3B
            order 1A 1B 2A 2B 3A 3B
            row 1 1A
            fill required sets=2 ranksFirst
            """);
    private static final String[] SLOTS = {"1A", "1B", "2A", "2B", "3A", "3B"};
    private static final int EMPTY = 0;
    private static final int SINGLE = 1;
    private static final int DUAL = 2;
    private static final String[] MODULES = {"-", "1GB DDR2-400 DIMM registered ECC 1Rx4",
        "2GB DDR2-400 DIMM registered ECC 2Rx4"};

    @Test
    void ofAllPopulationsExactlyThePrintedOnesAreAllowed() {
        List<String> wrong = new ArrayList<>();
        int allowed = 0;
        for (int number = 1; number < 729; number++) {
            int[] held = new int[SLOTS.length];
            StringBuilder population = new StringBuilder();
            for (int i = 0, rest = number; i < SLOTS.length; i++, rest /= 3) {
                held[i] = rest % 3;
                population.append(SLOTS[i]).append(": ").append(MODULES[held[i]]).append("; ");
            }
            Verdict verdict = Judged.byAll(SC1425, population.toString());
            boolean printed = isPrinted(held);
            allowed += printed ? 1 : 0;
            if (verdict.blocks() == printed) {
                wrong.add(population + " " + verdict.reasons().get(0).sentence());
            }
        }
        assertEquals(List.of(), wrong);
        assertEquals(9, allowed);
    }

    private static boolean isPrinted(int[] held) {
        int count = 0;
        for (int each : held) {
            count += each == EMPTY ? 0 : 1;
        }
        if (count == 1) {
            return held[0] != EMPTY;
        }
        boolean pairs = held[0] == held[1] && held[2] == held[3] && held[4] == held[5];
        boolean inOrder = held[0] != EMPTY && (held[2] != EMPTY || held[4] == EMPTY);
        boolean dualInBank1 = held[2] != DUAL || held[0] == DUAL;
        return pairs && inOrder && dualInBank1 && held[4] != DUAL && (held[2] != DUAL || held[4] == EMPTY);
    }

    @Test
    void theRulesOfTheManualAreTheFiveOfTheTable() throws IOException {
        String table = Files.readString(OutsideData.file("tables/population.json"));
        for (String rule : List.of("one module alone: socket DIMM1_A", "two or more: matched pairs",
                "dual-rank pair must be in bank 1", "no dual-rank in bank 3",
                "dual-rank in bank 2 means bank 3 stays empty")) {
            assertTrue(table.contains('"' + rule + '"'), rule);
        }
    }
}
