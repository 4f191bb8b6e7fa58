package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.app.Label;
import slotledger.intake.internal.DefaultIntake;
import slotledger.model.family.Family;
import slotledger.rules.MemoryRules;
import slotledger.rules.standard.StandardRules;

class LabelsTest {

    private static final MemoryRules RULES = StandardRules.create();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            8GB 2Rx8 PC4-2400T-SE1      | ddr4-so-dimm       | LATENCY
            64GB 2Rx4 PC4-2933Y-RA2-12  | ddr4-dimm          | CHIP_SIZE STACK LATENCY
            64GB 2S2Rx4 PC4-2666V-RB2   | ddr4-dimm          | LATENCY
            PC800-45                    | rimm-184 rimm-232  | CAPACITY FORM ERROR_CHECK CHIP_SIZE
            256MB/16 ECC PC800-40 184-pin RIMM | rimm-184    | ''
            4x36-60                     | simm-72            | GENERATION VOLTAGE CONTACTS
            32MB EDO 72-pin SIMM        | simm-72            | ERROR_CHECK ACCESS_TIME VOLTAGE CONTACTS
            1GB PC2-5300                | ddr2-dimm ddr2-so-dimm ddr2-micro-dimm ddr2-mini-dimm fb-dimm \
                                            | FORM BUFFERING ERROR_CHECK RANKS CHIP_WIDTH CHIP_SIZE LATENCY
            2GB 2Rx4 PC2-5300F-555-11   | fb-dimm            | ''
            512MB PC2-5300 DDR2 DIMM    | ddr2-dimm fb-dimm  | BUFFERING ERROR_CHECK RANKS CHIP_WIDTH CHIP_SIZE LATENCY
            32GB 1Rx4 PC5-5600B-RA0     | ddr5-dimm          | CHECK_BITS CHIP_SIZE LATENCY
            C-RIMM                      | ''                 | ''
            """)
    void aLabelNamesItsFamilyAndWhatIsMissing(String text, String families, String missing) {
        Label label = Labels.of(DefaultIntake.plain().readLabel(text), RULES);
        assertEquals(families.replaceAll("\\s+", " "),
                label.families().stream().map(Family::id).collect(Collectors.joining(" ")), text);
        assertEquals(missing.replaceAll("\\s+", " "),
                label.missing().stream().map(Enum::name).collect(Collectors.joining(" ")), text);
    }

    @Test
    void aModuleThatIsEasilyTakenForAnotherSaysSo() {
        Label label = Labels.of(DefaultIntake.plain().readLabel("1GB 2Rx8 PC2-6400U-555-12"), RULES);
        assertTrue(label.mixups().stream().anyMatch(mixup -> mixup.other().equals("a fully buffered DIMM")
                && mixup.happens().orElseThrow().contains("after pin 64")), label.mixups().toString());
        assertTrue(label.mixups().stream().noneMatch(mixup -> mixup.one().equals("a fully buffered DIMM")));
    }
}
