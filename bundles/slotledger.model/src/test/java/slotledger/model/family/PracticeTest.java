package slotledger.model.family;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;

/**
 * Outside check: pins, data bits, check bits and contacts of the old families. Common practice, no source; typed
 * independently of the file.
 */
class PracticeTest {

    @ParameterizedTest
    @CsvSource({
        "FPM, SIMM_30, 30, 8, 9, JOINED",
        "EDO, SIMM_72, 72, 32, 36, JOINED",
        "RDRAM, RIMM_184, 184, 16, 18, SEPARATE",
        "RDRAM, RIMM_232, 232, 32, 36, SEPARATE",
        "SDR, DIMM, 168, 64, 72, SEPARATE",
        "DDR, DIMM, 184, 64, 72, SEPARATE",
        "DDR2, DIMM, 240, 64, 72, SEPARATE",
        "DDR3, DIMM, 240, 64, 72, SEPARATE",
        "EDO, SO_DIMM_72, 72, 32, 36, SEPARATE",
        "SDR, DIMM_100, 100, 32, 36, SEPARATE",
        "SDR, SO_DIMM, 144, 64, 72, SEPARATE",
        "DDR, SO_DIMM, 200, 64, 72, SEPARATE",
        "DDR2, SO_DIMM, 200, 64, 72, SEPARATE",
        "DDR3, SO_DIMM, 204, 64, 72, SEPARATE"
    })
    void anOldFamilyHasThePinsTheWidthAndTheContactsEverybodyKnows(
            Generation generation, Form form, int pins, int bits, int bitsWithCheck, Faces faces) {
        Family family = Families.of(generation, form).get(0);
        assertEquals(pins, Families.pins(generation, form).orElseThrow());
        assertEquals(bits, Families.dataBits(generation, form).orElseThrow());
        assertEquals(bitsWithCheck, bits + family.words() * family.checkBits().get(0));
        assertEquals(faces, family.faces());
        for (FamilyFact fact : new FamilyFact[] {FamilyFact.PINS, FamilyFact.WIDTH, FamilyFact.FACES}) {
            assertEquals(Optional.of(Ground.PRACTICE), family.source(fact).map(source -> source.ground()), fact.text());
        }
    }

    /** Common practice, no source: 5 V for SIMMs, 3.3 V SDR, 2.5 V DDR and RDRAM, 1.8 V DDR2, 1.5 V DDR3. */
    @ParameterizedTest
    @CsvSource({"FPM, SIMM_30, 5 V", "SDR, DIMM, 3.3 V", "SDR, SO_DIMM, 3.3 V", "RDRAM, RIMM_184, 2.5 V",
        "RDRAM, RIMM_232, 2.5 V", "DDR, DIMM, 2.5 V", "DDR, SO_DIMM, 2.5 V", "DDR2, DIMM, 1.8 V",
        "DDR2, SO_DIMM, 1.8 V", "DDR3, DIMM, 1.5 V", "DDR3, SO_DIMM, 1.5 V"})
    void anOldFamilyHasTheVoltageEverybodyKnows(Generation generation, Form form, String volts) {
        assertEquals(volts, Families.of(generation, form).get(0).voltages().get(0).toString());
    }
}
