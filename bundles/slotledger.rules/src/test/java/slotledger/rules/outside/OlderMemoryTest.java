package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.kit.ModuleFacts;

/** Outside check: what documents print of boards with SDR, DDR and DDR2, typed from those named beside each test. */
class OlderMemoryTest {

    private static List<String> blocks(Board board, String population) {
        return Judged.byAll(board, population).reasons(Weight.BLOCKS).stream().map(Reason::rule).toList();
    }

    /** PC Hardware in a Nutshell, 3rd edition, chapter 5.4: 440BX takes 16, 64 and 128 Mbit, 815 takes 256 Mbit. */
    @Test
    void a440BxTakes256MegabytesAsSixteenChipsOnly() {
        String frame = "channel A 1 1 2 3\ntakes SDR DIMM unbuffered chip=16..%d\nlimit %d";
        Board bx = BoardText.board("PC Hardware in a Nutshell", frame.formatted(128, 100));
        Board i815 = BoardText.board("PC Hardware in a Nutshell", frame.formatted(256, 133));
        String eightChips = "1: 256MB SDR-133 DIMM non-ECC 1Rx8 CL3 3300mV";
        String sixteenChips = "1: 256MB SDR-133 DIMM non-ECC 2Rx8 CL3 3300mV";
        assertEquals(List.of("chip-size"), blocks(bx, eightChips));
        assertEquals(List.of(), blocks(bx, sixteenChips));
        assertEquals(List.of(), blocks(i815, eightChips));
        Verdict verdict = Judged.byAll(bx, eightChips);
        Reason below = verdict.reasons().get(0).because().get(0);
        assertTrue(below.sentence().contains("half size or less"), below.sentence());
        assertEquals(Optional.of(Rate.of(100)), Judged.byAll(bx, sixteenChips).operation().rate());
        assertEquals(List.of("sdr-bus-grade"), blocks(i815, "1: 128MB SDR-100 DIMM non-ECC 2Rx8 3300mV"));
    }

    /** Intel Desktop Board D845GBV memory page: 2.5 V only, ECC could damage the board, no registered DIMMs. */
    @Test
    void theD845GbvTakesPlainDdrOnly() {
        Board board = BoardText.board("Intel Desktop Board D845GBV memory page", """
                channel A 1 1 2
                takes DDR DIMM unbuffered ecc=REFUSED volts=2500 rates=200,266,333
                limit 266
                total 2GB
                """);
        assertEquals(List.of(), blocks(board, "1 2: 256MB DDR-266 DIMM unbuffered non-ECC 1Rx8 256Mbit"));
        assertEquals(Weight.PASSES,
                Judged.byAll(board, "1 2: 256MB DDR-333 DIMM unbuffered non-ECC 1Rx8 256Mbit").weight());
        assertEquals(List.of("buffering", "ecc"), blocks(board, "1: 256MB DDR-266 DIMM registered ECC 1Rx8"));
        Verdict ecc = Judged.byAll(board, "1: 256MB DDR-266 DIMM unbuffered ECC 1Rx8");
        assertEquals("ecc", ecc.reasons().get(0).rule());
        assertTrue(ecc.reasons().get(0).because().get(0).sentence().contains("damage possible"), ecc.toString());
        assertEquals(List.of("voltage"), blocks(board, "1: 256MB DDR-266 DIMM unbuffered non-ECC 1Rx8 1800mV"));
    }

    /**
     * techsupportforum, rank arithmetic: 16 chips of 32M x 8 are two ranks of 256 MB, 16 chips of 64M x 4 one rank, 8
     * chips of 64M x 16 two ranks.
     */
    @Test
    void chipsOfTheSameModuleSizeMakeOneOrTwoRanks() {
        ModuleKind wide = ModuleText.module("512MB DDR DIMM unbuffered x8 256Mbit");
        assertEquals(OptionalInt.of(2), ModuleFacts.ranks(wide));
        assertEquals(Capacity.ofMiB(256), Capacity.ofKiB(
                ModuleFacts.product(1, wide.chipWidth().orElseThrow(), wide.chipSize().orElseThrow())));
        ModuleKind narrow = ModuleText.module("512MB DDR DIMM unbuffered x4 256Mbit");
        assertEquals(OptionalInt.of(1), ModuleFacts.ranks(narrow));
        assertEquals(16, ModuleFacts.chipsPerRank(narrow.chipWidth().orElseThrow()));
        assertEquals(16, 2 * ModuleFacts.chipsPerRank(wide.chipWidth().orElseThrow()));
        ModuleKind widest = ModuleText.module("1GB DDR DIMM unbuffered x16 1024Mbit");
        assertEquals(OptionalInt.of(2), ModuleFacts.ranks(widest));
        assertEquals(8, 2 * ModuleFacts.chipsPerRank(widest.chipWidth().orElseThrow()));
    }

    /** HP Hardware Reference Guides (705 G1, 280 G4): "DIMMs with x4 SDRAM are not supported". */
    @Test
    void aHighDensityModuleIsBlockedAndExplained() {
        Board board = BoardText.board("HP 705 G1 guide", "channel A 1 1\ntakes DDR2 DIMM unbuffered widths=x8,x16");
        Verdict verdict = Judged.byAll(board, "1: 2GB DDR2-800 DIMM non-ECC 1Rx4");
        List<Reason> objections = verdict.reasons(Weight.BLOCKS);
        assertEquals(List.of("chip-width", "ddr-high-density"), objections.stream().map(Reason::rule).toList());
        for (Reason objection : objections) {
            assertTrue(objection.because().get(0).sentence().contains("half size or less"), objection.toString());
        }
        assertFalse(Judged.byAll(board, "1: 2GB DDR2-800 DIMM non-ECC 2Rx8").blocks());
    }

    /** Board manual PMPGF001: DDR2-800 up to 1 GB a module and 4 GB, DDR2-667 and -533 up to 2 GB and 8 GB. */
    @Test
    void theLargestModuleOfPmpgf001HangsOnTheGrade() {
        Board board = BoardText.board("PMPGF001", """
                channel A 1 1 3
                channel B 1 2 4
                takes DDR2 DIMM unbuffered rates=800 largest=1GB widths=x8,x16
                takes DDR2 DIMM unbuffered rates=667,533 largest=2GB widths=x8,x16
                total 8GB
                """);
        String all = "1 2 3 4: %s DIMM unbuffered non-ECC 2Rx8 1800mV";
        assertEquals(Capacity.ofGiB(4), total(board, all.formatted("1GB DDR2-800")));
        assertEquals(Capacity.ofGiB(8), total(board, all.formatted("2GB DDR2-667")));
        assertTrue(Judged.byAll(board, all.formatted("2GB DDR2-800")).blocks());
        Verdict wide = Judged.byAll(board, "1: 512MB DDR2-800 DIMM unbuffered non-ECC 2Rx16");
        assertEquals("ddr2-double-sided-x16", wide.reasons(Weight.CAUTION).get(0).rule());
    }

    private static Capacity total(Board board, String population) {
        Verdict verdict = Judged.byAll(board, population);
        assertFalse(verdict.blocks(), () -> verdict.reasons().get(0).sentence());
        return verdict.operation().installed();
    }
}
