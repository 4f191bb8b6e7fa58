package slotledger.rules.internal.alike;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.model.board.Board;
import slotledger.model.module.Filler;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.LookAlike;
import slotledger.rules.LookAlike.Sight;
import slotledger.rules.MemoryRules;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.standard.StandardRules;

class LookAlikesTest {

    private static final MemoryRules RULES = StandardRules.create();
    /** Of the bundle for SIMMs. */
    private static final Set<String> ELSEWHERE = Set.of("simm-page-mode", "simm-bank-alike", "simm-parity");

    /** What a person would mix up, and what one sees of the first where the second is wanted and the other way. */
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            2GB DDR2 DIMM | 2GB DDR3 DIMM | ddr2-ddr3-dimm | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            2GB DDR2 DIMM registered | 4GB DDR2 DIMM fully-buffered | ddr2-fb-dimm | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            1GB DDR SO-DIMM | 1GB DDR2 SO-DIMM | ddr-ddr2-so-dimm | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            8GB DDR4 DIMM | 8GB DDR5 DIMM | ddr4-ddr5-dimm | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            16GB DDR5 DIMM unbuffered | 16GB DDR5 DIMM registered | ddr5-udimm-rdimm | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            256MB DDR DIMM | 256MB RDRAM RIMM_184 | ddr-rdram-184 | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            64MB SDR DIMM | 64MB EDO DIMM | sdr-edo-dimm | NO_START | NO_START
            256MB SDR DIMM unbuffered | 256MB SDR DIMM registered | sdr-registered | NO_START | NO_START
            256MB DDR DIMM unbuffered | 256MB DDR DIMM registered | ddr-registered | NO_START | NO_START
            2GB DDR2 DIMM unbuffered | 2GB DDR2 DIMM registered | ddr2-registered | NO_START | NO_START
            8GB DDR3 DIMM unbuffered | 8GB DDR3 DIMM registered | ddr3-registered | NO_START | NO_START
            8GB DDR4 DIMM unbuffered | 8GB DDR4 DIMM registered | ddr4-registered | NO_START | NO_START
            4GB DDR3 SO-DIMM 1500mV | 4GB DDR3 SO-DIMM 1350mV | ddr3-low-voltage | NO_START | -
            4GB DDR3 DIMM 1500mV | 4GB DDR3 DIMM 1350/1500mV | ddr3-low-voltage | NO_START | -
            1GB DDR DIMM unbuffered 1Rx4 | 1GB DDR DIMM unbuffered 2Rx8 | high-density | HALF_OR_LESS | -
            256MB SDR DIMM unbuffered 1Rx8 | 256MB SDR DIMM unbuffered 2Rx8 | sdr-few-chips | HALF_OR_LESS | -
            8GB DDR3 DIMM unbuffered 1Rx8 | 8GB DDR3 DIMM unbuffered 2Rx8 | late-few-chips | NO_START | -
            2GB DDR2 DIMM non-ECC | 2GB DDR2 DIMM unbuffered ECC | ecc-udimm | NOT_CHECKED | DAMAGE_POSSIBLE
            128MB SDR SO-DIMM | 128MB SDR MICRO_DIMM | so-dimm-micro-dimm | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            16MB FPM SIMM_72 | 16MB EDO SIMM_72 | fpm-edo-simm | RUNS_SLOWER | NO_START
            16MB FPM SIMM_72 non-ECC | 16MB FPM SIMM_72 parity | parity-simm | NO_START | -
            256MB RDRAM RIMM_184 | 256MB RDRAM RIMM_232 | rimm-184-232 | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            CONTINUITY_184 | 256MB RDRAM RIMM_184 | continuity-rimm | NOT_SEEN | NO_START
            CONTINUITY_184 | CONTINUITY_232 | continuity-184-232 | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            64GB DDR4 DIMM registered stack=2 | 64GB DDR4 DIMM registered stack=1 | stacked-rdimm | NO_START | NO_START
            32GB DDR5 CAMM2 | 32GB LPDDR5X LPCAMM2 | camm2-lpcamm2 | DOES_NOT_GO_IN | DOES_NOT_GO_IN
            """)
    void whatLooksAlikeIsKnown(String first, String second, String id, Sight seen, Sight back) {
        List<LookAlike> found = RULES.lookAlikes(ModuleText.piece(first), ModuleText.piece(second));
        LookAlike alike = found.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
        assertEquals(Optional.ofNullable(seen), alike.oneForOther().map(LookAlike.Mistake::sight));
        assertEquals(Optional.ofNullable(back), alike.otherForOne().map(LookAlike.Mistake::sight));
        List<LookAlike> turned = RULES.lookAlikes(ModuleText.piece(second), ModuleText.piece(first));
        assertTrue(turned.contains(alike.turned()), turned.toString());
    }

    @Test
    void equalAndUnlikePiecesAreNotTakenForEachOther() {
        for (String[] pair : new String[][] {
            {"8GB DDR4 DIMM unbuffered", "8GB DDR4 DIMM unbuffered"}, {"8GB DDR3 DIMM registered", "8GB DDR3 DIMM"},
            {"8GB DDR3 SO-DIMM", "8GB DDR4 DIMM"}, {"8GB DDR4 DIMM unbuffered", "8GB DDR3 DIMM registered"},
            {"8GB DDR3 DIMM unbuffered 1Rx8", "16GB DDR3 DIMM unbuffered 2Rx8"},
            {"8GB DDR3 DIMM unbuffered 2Rx8", "8GB DDR3 DIMM unbuffered 2Rx8"},
            {"2GB DDR2 DIMM non-ECC", "2GB DDR3 DIMM unbuffered ECC"}}) {
            List<LookAlike> found = RULES.lookAlikes(ModuleText.piece(pair[0]), ModuleText.piece(pair[1]));
            List<String> ids = found.stream().map(LookAlike::id).filter(id -> !id.equals("ddr2-ddr3-dimm")).toList();
            assertEquals(List.of(), ids, Arrays.toString(pair));
        }
        assertEquals(List.of(), RULES.lookAlikes(Filler.AIR_BLANK, ModuleText.module("1GB RDRAM RIMM_184")));
    }

    @Test
    void everyRuleItExplainsExists() {
        Set<String> known = new HashSet<>(ELSEWHERE);
        RULES.pages().forEach(page -> known.add(page.id()));
        for (LookAlike alike : RULES.lookAlikes()) {
            alike.rules().forEach(rule -> assertTrue(known.contains(rule), rule));
        }
    }

    @Test
    void sentencesAreWhole() {
        for (LookAlike alike : RULES.lookAlikes()) {
            alike.oneForOther().ifPresent(mistake -> assertTrue(mistake.sentence().endsWith("."), alike.id()));
            alike.otherForOne().ifPresent(mistake -> assertTrue(mistake.sentence().endsWith("."), alike.id()));
            assertTrue(alike.byEye().endsWith(".") && alike.byLabel().endsWith("."), alike.id());
            assertTrue(alike.one().matches("an? .*") && alike.other().matches("an? .*"), alike.id());
        }
    }

    @Test
    void belowAnObjectionStandsWhatOneSeesAndHowToTellApart() {
        Board board = BoardText.board("none", "channel A 1 A1 A2\ntakes DDR3 DIMM unbuffered ecc=REFUSED volts=1350");
        Reason generation = worst(board, "A1: 2GB DDR2 DIMM non-ECC", "generation");
        Reason below = generation.because().get(0);
        assertEquals("Slot A1 holds a DDR2 DIMM, which looks like a DDR3 DIMM: does not go in. Both have 240 contacts, "
                + "but its notch is after pin 64 (fully buffered: 68), not after pin 48. Pressed in by force it breaks "
                + "the slot.",
                below.sentence());
        assertEquals(List.of("A1"), below.slots());
        assertTrue(below.remedy().matches("Tell them apart. By eye: .*notch.*On the label: PC2.*PC3.*"),
                below.remedy());
        Reason registered = worst(board, "A2: 8GB DDR3 DIMM registered 1350mV", "buffering");
        assertTrue(registered.because().get(0).sentence().startsWith("Slot A2 holds a registered DDR3 DIMM, which "),
                registered.toString());
        Reason high = worst(board, "A1: 8GB DDR3 DIMM unbuffered non-ECC 1500mV", "voltage");
        assertTrue(high.because().get(0).remedy().contains("PC3L"), high.toString());
    }

    @Test
    void whatIsNotKnownMayBeTheWrongOne() {
        Board board = BoardText.board("none", "channel A 1 A1 A2\ntakes DDR3 DIMM unbuffered volts=1350");
        Reason reason = worst(board, "A1: 4GB DDR3 DIMM non-ECC", "voltage");
        Reason below = reason.because().get(0);
        assertEquals(Weight.UNKNOWN, below.weight());
        assertEquals(Optional.of(MissingFact.VOLTAGE), below.missing());
        assertTrue(below.sentence().startsWith("Slot A1 may hold a DDR3 module for 1.5 V"), below.sentence());
    }

    @Test
    void aPassedRuleNeedsNoLookAlikes() {
        Board board = BoardText.board("none", "channel A 1 A1\ntakes DDR3 DIMM unbuffered");
        Verdict verdict = Judged.byAll(board, "A1: 4GB DDR3 DIMM non-ECC 1500mV");
        assertTrue(verdict.reasons().stream().allMatch(reason -> reason.because().isEmpty()), verdict.toString());
    }

    @Test
    void theWrongContinuityModuleIsExplained() {
        Board board = BoardText.board("none", "channel A 1 R1 R2\ntakes RDRAM RIMM_184");
        Reason reason = worst(board, "R1: 256MB RDRAM RIMM_184; R2: CONTINUITY_232", "rimm-sockets-filled");
        assertTrue(reason.because().get(0).sentence().startsWith(
                "Slot R2 holds a continuity module of 232 pins, which looks like a continuity module of 184 pins"),
                reason.toString());
    }

    @Test
    void wrongForASlotTurnsThePairTowardsThePiece() {
        Board board = BoardText.board("none", "channel A 1 A1\ntakes DDR2 DIMM registered");
        List<LookAlike> found = RULES.wrongFor(ModuleText.module("2GB DDR2 DIMM fully-buffered"),
                board.takes().get(0));
        assertEquals(List.of("ddr2-fb-dimm"), found.stream().map(LookAlike::id).toList());
        assertEquals("a fully buffered DIMM", found.get(0).one());
        assertEquals(List.of(), RULES.wrongFor(ModuleText.module("2GB DDR2 SO-DIMM"), board.takes().get(0)));
        Board notebook = BoardText.board("none", "channel A 1 A1\ntakes DDR3 SO-DIMM volts=1350");
        assertEquals(List.of(), RULES.wrongFor(ModuleText.module("4GB DDR3 DIMM 1500mV"), notebook.takes().get(0)));
        assertEquals(1, RULES.wrongFor(ModuleText.module("4GB DDR3 SO-DIMM 1500mV"), notebook.takes().get(0)).size());
    }

    @Test
    void aBlockWithAnUnknownKeyOrTraitIsRefused() {
        List<String> block = List.of("look-alike: x", "rules: form", "one: a | form DIMM", "other: b | form SO_DIMM",
                "one for other: does not go in | No.", "eye: Look.", "label: Read.", "source: memory");
        assertEquals("x", AlikeFile.read(block).get(0).alike().id());
        for (String[] change : new String[][] {{"eye", "nose"}, {"form SO_DIMM", "colour RED"}, {"does not go in", "?"},
            {"label: Read.", ""}}) {
            List<String> changed = block.stream().map(line -> line.replace(change[0], change[1]))
                    .filter(line -> !line.isEmpty()).toList();
            assertThrows(RuntimeException.class, () -> AlikeFile.read(changed), change[0]);
        }
    }

    private static Reason worst(Board board, String population, String rule) {
        return Judged.byAll(board, population).reasons().stream()
                .filter(reason -> reason.rule().equals(rule) && reason.weight() != Weight.PASSES)
                .findFirst().orElseThrow();
    }
}
