package slotledger.intake.internal.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import slotledger.model.finding.Finding;
import slotledger.model.module.Filler;
import slotledger.model.observed.LabelReading;

class LabelReaderTest {

    private static final List<String> LABELS = List.of("4x36-60", "1Mx36-60", "16x32 EDO 60ns tin leads",
            "256MB/16 ECC PC800-40", "RIMM4200 32P", "PC100-322-620", "512MB PC3200U-30331", "PC2-5300F-555-11",
            "2Rx8 PC3L-12800S-11-13-F3", "8GB 2Rx8 PC4-2400T-SE1", "2S2Rx4 PC4-2666V-RB2", "4DRx4 PC4-2400T-LD1",
            "16GB 1Rx8 PC5-4800B-UA0-1010-XT", "32GB 1Rx4 10x4 EC8 PC5-5600B-RA0", "64GB LP5X-7500 LPCAMM2",
            "C-RIMM 232 continuity", "8GB DDR3L 1,35 V CL2.5 204-pin", "2x8 GB kit of 2 M378A1K43CB2-CTD");

    @Test
    void everyPartSaysWhatItWasTakenFor() {
        assertEquals("1 8GB=capacity 8 GB|5 2Rx8=2 ranks, chip width x8|10 PC4-2400T-SE1=generation DDR4, "
                        + "rate 2400 MT/s, speed bin T, form SO-DIMM, buffering unbuffered, check bits non-ECC, "
                        + "raw card E1",
                parts("8GB 2Rx8 PC4-2400T-SE1").replace("ranks 2", "2 ranks"));
        assertEquals("1 PC800-45=generation RDRAM, rate 800 MT/s, access time 45 ns", parts("PC800-45"));
        assertEquals("1 4x36-60=capacity 16 MB, form 72-pin SIMM, check bits parity, access time 60 ns",
                parts("4x36-60"));
    }

    private static String parts(String label) {
        return LabelReader.read(label).parts().stream()
                .map(part -> part.from() + " " + part.text() + "=" + part.meaning()).collect(Collectors.joining("|"));
    }

    @Test
    void withoutACapacityTheFactsAreToldAllTheSame() {
        LabelReading reading = LabelReader.read("PC800-45");
        assertEquals(Optional.empty(), reading.piece());
        assertTrue(reading.isUnderstood());
        assertEquals("{GENERATION=RDRAM, RATE=800 MT/s, ACCESS_TIME=45 ns}", reading.facts().toString());
    }

    @Test
    void aContinuityModuleIsAFiller() {
        assertEquals(Optional.of(Filler.CONTINUITY_184), LabelReader.read("C-RIMM").piece());
        assertEquals(Optional.of(Filler.CONTINUITY_184), LabelReader.read("continuity").piece());
        assertEquals(Optional.of(Filler.CONTINUITY_232), LabelReader.read("CT-RIMM").piece());
        assertEquals(Optional.of(Filler.CONTINUITY_232),
                LabelReader.read("continuity and termination module").piece());
    }

    @Test
    void anUnknownLetterIsDoubtedWithItsPlace() {
        List<Finding> findings = LabelReader.read("8GB PC4-2400T-QE1").findings();
        assertEquals("The letter Q (character 15) after the name of the module is not known here.",
                findings.get(0).message());
    }

    @Test
    void aTextAboutSomethingElseIsNotUnderstood() {
        assertFalse(LabelReader.read("keep away from children").isUnderstood());
        assertFalse(LabelReader.read("").isUnderstood());
    }

    @Test
    void aPartStandsWhereItSaysItDoes() {
        for (String label : LABELS) {
            LabelReading reading = LabelReader.read(label);
            reading.parts().forEach(part ->
                    assertTrue(reading.text().startsWith(part.text(), part.from() - 1), label + " " + part));
        }
    }

    @Property(tries = 4000)
    void noSingleWrongCharacterMakesTheReaderFail(@ForAll("mistyped") String label) {
        LabelReading reading = LabelReader.read(label);
        assertTrue(reading.text().length() <= label.length());
    }

    @Provide
    Arbitrary<String> mistyped() {
        Arbitrary<Character> any = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(6, Arbitraries.chars().with("0123456789-/xX.,RSDLUPECT \u00DF\u0130")),
                net.jqwik.api.Tuple.of(1, Arbitraries.chars().all()));
        return Combinators.combine(Arbitraries.of(LABELS), Arbitraries.integers().between(0, 60), any,
                Arbitraries.integers().between(0, 2)).as(LabelReaderTest::mistype);
    }

    private static String mistype(String label, int at, char wrong, int way) {
        int place = at % label.length();
        return switch (way) {
            case 0 -> label.substring(0, place) + wrong + label.substring(place + 1);
            case 1 -> label.substring(0, place) + wrong + label.substring(place);
            default -> label.substring(0, place) + label.substring(place + 1);
        };
    }
}
