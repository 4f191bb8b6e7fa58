package slotledger.intake.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slotledger.intake.internal.value.LabelReader;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.LabelReading;
import slotledger.testkit.OutsideData;

/**
 * Outside check: public memory dumps whose finders named the files after what is printed on the modules, against the
 * facts that decode-dimms 4.3 reads from the same dumps.
 */
class RealModulesTest {

    /** What of the file's name is the label; where finders shortened a word, it is written out. */
    private static final Map<String, String> LABELS = Map.of(
            "Samsung_M393A8G40MB2-CVFBY_S__64Gb_2Rx4_PC4-2933Y-RA2-12-DC1", "64Gb 2Rx4 PC4-2933Y-RA2-12-DC1",
            "Cisco_24B3A042", "RDIMM_DDR4 SDRAM-2132_2R x 4_16GB",
            "HOTGRIZZLY", "RDIMM_DDR4 SDRAM-3200_C22_2R x 4_16GB",
            "ddr-256MB-pc2100-sodimm", "ddr 256MB pc2100 sodimm",
            "ddr-256MB-pc3200-udimm-kingston", "ddr 256MB pc3200 udimm",
            "ddr2-1GB-pc2-6400-udimm", "ddr2 1GB pc2-6400 udimm",
            "sdr-128MB-pc133-udimm", "sdr 128MB pc133 udimm",
            "sdr-256MB-pc133-udimm", "sdr 256MB pc133 udimm");

    @Test
    void whatIsPrintedOnAModuleIsWhatItsChipSays() throws IOException {
        List<String> rows = Files.readAllLines(OutsideData.file("spd/expected-summary.tsv"));
        for (Map.Entry<String, String> label : LABELS.entrySet()) {
            String row = rows.stream().filter(each -> each.contains(label.getKey())).findFirst().orElseThrow();
            String[] cells = row.split("\t", -1);
            LabelReading reading = LabelReader.read(label.getValue().replace('_', ' '));
            ModuleKind kind = (ModuleKind) reading.piece().orElseThrow();
            assertEquals(cells[1], kind.generation().orElseThrow() + " SDRAM", row);
            assertEquals(cells[3], kind.capacity().mebibytes() + " MB", row);
            if (!cells[8].isEmpty()) {
                assertEquals(cells[8].replaceAll(" .*", ""),
                        String.valueOf(kind.rate().orElseThrow().megatransfers()), row);
            }
            kind.ranks().ifPresent(ranks -> assertEquals(cells[4], String.valueOf(ranks), row));
            kind.chipWidth().ifPresent(width -> assertEquals(cells[5], width.bits() + " bits", row));
            boolean registered = kind.buffering().filter(each -> each.shortName().equals("RDIMM")).isPresent();
            assertEquals(cells[2].startsWith("RDIMM"), registered, row);
            kind.errorCheck().filter(check -> !cells[7].isEmpty())
                    .ifPresent(check -> assertEquals("ECC 8 bits", check.text() + " " + cells[7], row));
            assertTrue(reading.rest().length() < 9, reading.rest());
        }
    }
}
