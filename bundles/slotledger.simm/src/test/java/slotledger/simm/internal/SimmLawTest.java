package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.TakenSafely;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.standard.StandardRules;

/** The rules of this bundle together with all others, as the product asks them. */
class SimmLawTest {

    private static final MemoryRules ALL = together();

    private static MemoryRules together() {
        List<MemoryRule> rules = new ArrayList<>(StandardRules.list());
        rules.addAll(components());
        return StandardRules.of(rules);
    }

    /** Made from the component descriptors, so that a rule that is no component is missed. */
    private static List<MemoryRule> components() {
        try (Stream<Path> files = Files.list(Path.of(BankSize.class.getProtectionDomain().getCodeSource()
                .getLocation().toURI()).resolve("OSGI-INF"))) {
            return files.map(file -> file.getFileName().toString().replace(".xml", "")).sorted()
                    .map(SimmLawTest::rule).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static MemoryRule rule(String name) {
        try {
            return (MemoryRule) Class.forName(name).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static Verdict verdict(Board board, String population) {
        Verdict verdict = ALL.judge(Judged.setup(board, population));
        assertEquals(verdict.weight(), ALL.weigh(Judged.setup(board, population)));
        return verdict;
    }

    private static List<String> rules(Verdict verdict, Weight weight) {
        return verdict.reasons(weight).stream().map(Reason::rule).distinct().toList();
    }

    @Test
    void aBankOfMatchedModulesIsFineButForUsedStock() {
        Verdict verdict = verdict(Simm.BOARD_486, "A1 A2 A3 A4: 4MB FPM SIMM_30 parity 60ns tin");
        assertEquals(Weight.CAUTION, verdict.weight(), () -> verdict.reasons().toString());
        assertEquals(List.of("simm-used-stock"), rules(verdict, Weight.CAUTION));
        assertEquals("16 MB", verdict.operation().usable().toString());
    }

    @Test
    void halfABankIsBlockedByOneRule() {
        Verdict verdict = verdict(Simm.BOARD_486, "A1 A2: 4MB FPM SIMM_30 parity 60ns tin");
        assertEquals(List.of("simm-banks-whole"), rules(verdict, Weight.BLOCKS));
    }

    @Test
    void fpmAndEdoInTwoBanksFollowNoWayForSure() {
        Verdict verdict = verdict(Simm.PENTIUM,
                "S1 S2: 16MB FPM SIMM_72 non-ECC 60ns; S3 S4: 16MB EDO SIMM_72 non-ECC 60ns");
        assertEquals(Weight.UNKNOWN, verdict.weight(), () -> verdict.reasons().toString());
        assertEquals(List.of("simm-page-mode"), rules(verdict, Weight.UNKNOWN));
    }

    /** Mac II and IIx want special logic on modules of 4 MB and more; the largest plain module is a board fact. */
    @Test
    void aModuleTheBoardHasNoLogicForIsBlocked() {
        Board board = BoardText.board("none", """
                channel A 1 A1 A2 A3 A4
                takes FPM SIMM_30 largest=1MB
                bus 32
                bank A A1 A2 A3 A4
                """);
        assertEquals(List.of("largest-module"),
                rules(verdict(board, "A1 A2 A3 A4: 4MB FPM SIMM_30 non-ECC 80ns"), Weight.BLOCKS));
    }

    @Test
    void withoutThisBundleTheBoardHasNoLaw() {
        Verdict verdict = Judged.byAll(Simm.BOARD_486, "A1 A2: 4MB FPM SIMM_30");
        assertEquals(1, verdict.reasons().size());
        assertEquals("There are no rules for this family (FPM).", verdict.reasons().get(0).sentence());
        assertTrue(verdict.reasons().get(0).missing().filter(MissingFact.FAMILY::equals).isPresent());
    }

    @Test
    void boardsOfOtherFamiliesAreJudgedAsBefore() {
        Board board = BoardText.board("none", "channel A 1 A1 A2\ntakes DDR4 DIMM unbuffered");
        String population = "A1: 8GB DDR4-2666 DIMM unbuffered";
        assertEquals(Judged.byAll(board, population), verdict(board, population));
    }

    /** A board of 1997: two SIMM sockets of one bank, two for SDR DIMMs. */
    @Test
    void whatIsInADimmSocketIsNoMatterOfThisLaw() {
        Board board = BoardText.board("common practice", """
                channel A 1 SIMM1 SIMM2 DIMM1 DIMM2
                takes EDO SIMM_72 ecc=USED only=SIMM1,SIMM2
                takes SDR DIMM ecc=USED unbuffered largest=256MB chip=..128 only=DIMM1,DIMM2
                bus 64
                bank 0 SIMM1 SIMM2
                """);
        String dimm = "64MB SDR-100 DIMM unbuffered ECC 1Rx8 64Mbit";
        Verdict dimms = verdict(board, "DIMM1: " + dimm);
        assertTrue(dimms.reasons().stream().noneMatch(reason -> reason.rule().startsWith("simm-")
                && reason.weight() != Weight.PASSES), () -> dimms.reasons().toString());
        assertEquals(List.of(), dimms.reasons(Weight.BLOCKS));
        Verdict half = verdict(board, "SIMM1: 16MB EDO SIMM_72 parity 60ns; DIMM1: " + dimm);
        assertEquals("simm-banks-whole", half.reasons(Weight.BLOCKS).get(0).rule());
    }

    @Test
    void anythingIsTakenSafely() {
        for (long seed = 10_000; seed < 11_000; seed++) {
            TakenSafely.check(ALL, seed);
        }
    }
}
