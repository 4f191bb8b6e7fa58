package slotledger.catalog.internal.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.board.Bank;
import slotledger.model.board.Banks;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Interleave;
import slotledger.model.board.Redundancy;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.RedundancyTerms.FillSet;
import slotledger.model.board.RedundancyTerms.Share;
import slotledger.model.finding.Finding;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ContactMetal;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;

/** What files of boards for SIMMs, RIMMs and compression-attached modules, and of servers, can say. */
class SpecialBoardsTest {

    private static BoardReading read(String channels, String takes, String more) {
        return BoardReading.of(new BoardFile("board.yaml", """
                board: kestrin-kb999
                maker: Kestrin
                model: KB-999
                form: desktop
                source: from memory
                channels: %s
                takes: %s
                %s
                """.formatted(channels, takes, more)));
    }

    private static Board board(String channels, String takes, String more) {
        BoardReading reading = read(channels, takes, more);
        assertEquals(List.of(), reading.findings());
        return reading.entry().orElseThrow().board();
    }

    private static Finding onlyFinding(String channels, String takes, String more) {
        BoardReading reading = read(channels, takes, more);
        assertEquals(1, reading.findings().size(), reading.findings().toString());
        assertTrue(reading.entry().isEmpty());
        return reading.findings().get(0);
    }

    @Test
    void aBoardForSimmsStatesBanksParityAccessTimeAndContacts() {
        Board board = board("{A: [J1, J2, J3, J4]}", "{generation: FPM, form: 72-pin SIMM, parity: required,"
                + " slowest-module: 70 ns, contacts: tin, chip-width: [x1, x4, x9]}", """
                banks:
                  bus: 64
                  list: {Bank 0: [J1, J2], Bank 1: [J3, J4]}
                addressable: 128 MB
                sources: {banks: common practice, contacts: from memory}
                """);

        assertEquals(new Banks(List.of(new Bank("Bank 0", List.of("J1", "J2")), new Bank("Bank 1",
                List.of("J3", "J4"))), OptionalInt.of(64)), board.banks());
        assertEquals(EccOutcome.REQUIRED, board.takes().get(0).ecc());
        assertEquals(Optional.of(AccessTime.ofNanoseconds(70)), board.takes().get(0).slowest());
        assertEquals(Optional.of(ContactMetal.TIN), board.takes().get(0).contacts());
        assertEquals(Set.of(ChipWidth.X1, ChipWidth.X4, ChipWidth.X9), board.takes().get(0).chipWidths());
        assertEquals(Optional.of(Capacity.ofMiB(128)), board.addressable());
        assertEquals(Ground.PRACTICE, board.sourceOf(BoardFact.BANKS).ground());
        assertEquals(Ground.MEMORY, board.sourceOf(BoardFact.CONTACTS).ground());
    }

    @Test
    void theWidthOfTheBusAloneIsShort() {
        assertEquals(new Banks(List.of(), OptionalInt.of(32)),
                board("{A: [J1, J2]}", "{generation: FPM, form: 30-pin SIMM}", "banks: 32").banks());
    }

    @Test
    void aSlotInTwoBanksIsRefusedAndNamed() {
        Finding finding = onlyFinding("{A: [J1, J2]}", "{generation: FPM, form: 72-pin SIMM}",
                "banks: {list: {0: [J1], 1: [J1, J2]}}");

        assertEquals("The slot J1 is in the bank 0 already.", finding.message());
        assertEquals("board.yaml, line 8, column 29", finding.place().toString());
    }

    @Test
    void aBankOfAForeignSlotIsRefused() {
        assertEquals("one of the slots J1, J2", onlyFinding("{A: [J1, J2]}", "{generation: FPM, form: 72-pin SIMM}",
                "banks: {list: {0: [J3]}}").expected());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "RDRAM; 184-pin RIMM; CONTINUITY_184",
        "RDRAM; 232-pin RIMM; CONTINUITY_232",
        "DDR; DIMM; ",
    })
    void anEmptyRimmSocketHoldsAContinuityModuleOfItsForm(String generation, String form, Filler blank) {
        String takes = "{generation: %s, form: %s}".formatted(generation, form);
        for (String fill : List.of("", "fill: [R1, R2]", "fill: {order: [R1, R2]}")) {
            assertEquals(Optional.ofNullable(blank), board("{A: [R1, R2]}", takes, fill).fill().blank(), fill);
        }
    }

    @Test
    void whatAFileSaysOfEmptySocketsHolds() {
        String rimm = "{generation: RDRAM, form: 184-pin RIMM}";
        String dimm = "{generation: DDR4, form: DIMM}";

        assertEquals(Optional.of(Filler.CONTINUITY_184),
                board("{A: [R1]}", rimm, "fill: {empty-sockets: continuity module}").fill().blank());
        assertEquals(Optional.empty(), board("{A: [R1]}", rimm, "fill: {empty-sockets: nothing}").fill().blank());
        assertEquals(Optional.of(Filler.AIR_BLANK),
                board("{A: [R1]}", dimm, "fill: {empty-sockets: airflow blank}").fill().blank());
        assertEquals("Only RIMM sockets of one form take continuity modules.",
                onlyFinding("{A: [R1]}", dimm, "fill: {empty-sockets: continuity module}").message());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "{A: [R1, R2]}; {generation: RDRAM, form: 232-pin RIMM}; 2; EQUAL_ONLY",
        "{A: [R1]}; {generation: DDR5, form: CAMM2}; 2; EQUAL_ONLY",
        "{A: [R1]}; {generation: LPDDR5X, form: LPCAMM2}; 2; EQUAL_ONLY",
        "{A: {spans: 1, slots: [R1]}}; {generation: DDR5, form: CAMM2}; 1; NONE",
        "{A: {spans: 2, slots: [R1]}}; {generation: DDR5, form: DIMM}; 2; EQUAL_ONLY",
        "{A: [R1]}; {generation: DDR5, form: [CAMM2, SO-DIMM]}; 1; NONE",
        "{A: [R1, R2]}; {generation: RDRAM, form: 184-pin RIMM}; 1; NONE",
    })
    void aModuleCarriesTwoChannelsWhereItsFormDoesUnlessTheFileSaysOtherwise(
            String channels, String takes, int spans, Interleave interleave) {
        Board board = board(channels, takes, "");

        assertEquals(spans, board.channels().get(0).spans());
        assertEquals(interleave, board.interleave());
    }

    @Test
    void aServerStatesMirroredAndSpareMemory() {
        Board board = board("{1: [7, 8], 2: [5, 6], B: {processor: 2, slots: [16]}}", "{generation: DDR3, form: DIMM}",
                """
                processor-sockets: 2
                fill: {order: [8, 6, 7, 5], largest-first: yes, ranks-first: yes}
                redundancy:
                  mirrored:
                    share: 1/3
                    ignored-channels: [1]
                    sets:
                      - [6, 5]
                      - {processors: 2, slots: [16]}
                  spare:
                    channel-ranks: 2
                """);

        assertTrue(board.fill().ranksFirst());
        assertEquals(Optional.of(new RedundancyTerms(Redundancy.MIRRORED, Optional.of(new Share(1, 3)), Set.of("1"),
                List.of(new FillSet(1, List.of("6", "5")), new FillSet(2, List.of("16"))), OptionalInt.empty())),
                board.terms(Redundancy.MIRRORED));
        assertEquals(Optional.of(new RedundancyTerms(Redundancy.SPARED, Optional.empty(), Set.of(), List.of(),
                OptionalInt.of(2))), board.terms(Redundancy.SPARED));
    }

    @Test
    void mirroredMemoryLeavesHalfWhereTheFileSaysNothingElse() {
        assertEquals(Optional.of(new Share(1, 2)), board("{A: [D1]}", "{generation: DDR4, form: DIMM}",
                "redundancy: {mirrored: {sets: [[D1]]}}").terms(Redundancy.MIRRORED).orElseThrow().share());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "redundancy: {mirrored: {ignored-channels: [C]}}; one of the channels A, B",
        "redundancy: {mirrored: {share: 3/2}}; a share such as \"1/2\"",
        "redundancy: {mirrored: {sets: [[D9]]}}; one of the slots D1, D2",
        "redundancy: {mirrored: {sets: [{processors: 2, slots: [D1]}]}}; a whole number from 1 to 1",
        "redundancy: {mirrored: {sets: D1}}; a list of sets, each with a hyphen",
        "takes: {generation: DDR4, form: DIMM, slowest-module: 501 ns}; an access time such as \"60 ns\"",
    })
    void aMistakeSaysWhatWasExpected(String field, String expected) {
        String takes = field.startsWith("takes") ? field.substring("takes: ".length())
                : "{generation: DDR4, form: DIMM}";

        assertEquals(expected, onlyFinding("{A: [D1], B: [D2]}", takes, field.startsWith("takes") ? "" : field)
                .expected());
    }

    @Test
    void parityAndEccOfOneWayAreTheSameFact() {
        assertEquals("The fields \"parity\" and \"ecc\" say the same.", onlyFinding("{A: [D1]}",
                "{generation: FPM, form: 72-pin SIMM, parity: used, ecc: used}", "").message());
    }

    @Test
    void solderedMemoryHasTheFactsOfAModule() {
        Board board = board("{A: [On, D1]}", "{generation: DDR5, form: SO-DIMM}", "slots: [{label: On, soldered:"
                + " {capacity: 16 GB, generation: DDR5, stack: 2, check-bits: 4, access-time: 60 ns}}, D1]");
        ModuleKind kind = board.slot("On").soldered().orElseThrow();

        assertEquals(OptionalInt.of(2), kind.stack());
        assertEquals(OptionalInt.of(4), kind.checkBits());
        assertEquals(Optional.of(AccessTime.ofNanoseconds(60)), kind.accessTime());
    }

    @Test
    void everyGenerationFormAndChipWidthHasAWord() {
        assertEquals(Set.of(Generation.values()), Set.copyOf(Words.GENERATIONS.values()));
        assertEquals(Set.of(Form.values()), Set.copyOf(Words.FORMS.values()));
        assertEquals(Set.of(ChipWidth.values()), Set.copyOf(Words.CHIP_WIDTHS.values()));
        assertEquals(Map.of("mirrored", Redundancy.MIRRORED, "spare", Redundancy.SPARED), Words.REDUNDANCIES);
    }
}
