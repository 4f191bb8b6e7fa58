package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.model.board.Board;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the table of modules a bank in the encyclopaedia text on SIMMs (altsci copy), every cell. */
class BankSizeTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new BankSize();

    @Override
    protected MemoryRule rule() {
        return new BankSize();
    }

    private static Board board(String form, String facts) {
        return BoardText.board("none", "channel A 1 A1 A2 A3 A4 A5 A6 A7 A8\ntakes EDO " + form + "\n" + facts);
    }

    @ParameterizedTest
    @CsvSource({
        "16, SIMM_30, 2", "32, SIMM_30, 4", "32, SIMM_72, 1", "64, SIMM_30, 8", "64, SIMM_72, 2", "64, DIMM, 1",
        "64, SO_DIMM_72, 2"
    })
    void theBusDividedByTheModuleIsTheBank(int bus, String form, int modules) {
        Board board = board(form, "order A1 A2 A3 A4 A5 A6 A7 A8\nbus " + bus);
        assertEquals("The bus of %d bits asks for %s a bank.".formatted(bus, BankSize.modules(modules)),
                Judged.sentence(RULE, board, "A1: 4MB EDO " + form));
        for (int count = 1; count <= 8; count++) {
            String slots = "A1 A2 A3 A4 A5 A6 A7 A8".substring(0, 3 * count - 1);
            assertEquals(count % modules == 0 ? Weight.PASSES : Weight.BLOCKS,
                    Judged.by(new BanksWhole(), board, slots + ": 4MB EDO " + form), slots);
        }
    }

    @Test
    void theDocumentsBanksDecide() {
        assertEquals("The document's banks have as many sockets as the bus of 32 bits asks for.",
                Judged.sentence(RULE, Simm.BOARD_486, "A1 A2 A3 A4: 1MB FPM SIMM_30"));
        assertEquals("The bus of 64 bits asks for 2 modules a bank; the document names banks of 1 (half of it is read "
                + "at a time), and it decides.",
                Judged.sentence(RULE, board("SIMM_72", "bus 64\nbank 0 A1\nbank 1 A2"), "A1: 16MB EDO SIMM_72"));
        assertEquals("The bus of 32 bits asks for 4 modules a bank; the document names banks of 8 (two banks are "
                + "interleaved), and it decides.", Judged.sentence(RULE,
                        board("SIMM_30", "bus 32\nbank 0 A1 A2 A3 A4 A5 A6 A7 A8"), "A1: 1MB EDO SIMM_30"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board("SIMM_30", "bank 0 A1 A2"), "A1: 1MB EDO SIMM_30"));
    }

    @Test
    void anOddBankIsACaution() {
        Board board = board("SIMM_30", "bus 32\nbank 0 A1 A2 A3");
        assertEquals(Weight.CAUTION, Judged.by(RULE, board, "A1: 1MB EDO SIMM_30"));
        assertEquals("Bank 0 has 3 sockets; the bus of 32 bits asks for 4.",
                Judged.sentence(RULE, board, "A1: 1MB EDO SIMM_30"));
    }

    @Test
    void withoutBanksAndBusNobodyCanSay() {
        Reason reason = Judged.verdict(RULE, Judged.setup(board("SIMM_30", ""), "A1: 1MB EDO SIMM_30")).reasons()
                .get(0);
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(Optional.of(MissingFact.BOARD_FACT), reason.missing());
        assertEquals("Neither the banks nor the width of the bus are known.", reason.sentence());
    }

    @Test
    void withoutOrderTheBusTellsTheSizeButNotTheSockets() {
        Board board = board("SIMM_30", "bus 32");
        assertEquals("The bus of 32 bits asks for 4 modules a bank, but no document says which sockets make one.",
                Judged.sentence(RULE, board, "A1: 1MB EDO SIMM_30"));
        assertEquals("3 modules are no whole number of banks of 4.",
                Judged.sentence(new BanksWhole(), board, "A1 A2 A3: 1MB EDO SIMM_30"));
        assertEquals(0, Judged.verdict(new BanksWhole(), Judged.setup(board, "A1 A3 A5 A7: 1MB EDO SIMM_30"))
                .reasons().size());
    }

    @Test
    void socketsThatMakeNoWholeBankAreAnOpenQuestion() {
        Board board = BoardText.board("none", "channel A 1 A1\ntakes EDO SIMM_72\nbus 64\norder A1");
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "A1: 16MB EDO SIMM_72"));
        assertEquals(0, Judged.verdict(new BanksWhole(), Judged.setup(board, "A1: 16MB EDO SIMM_72")).reasons()
                .size());
    }
}
