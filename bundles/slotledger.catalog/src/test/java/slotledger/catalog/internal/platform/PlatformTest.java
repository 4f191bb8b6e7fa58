package slotledger.catalog.internal.platform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.catalog.Platform;
import slotledger.model.family.Families;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;

class PlatformTest {

    /** Names as firmware of the public collection linuxhw/DMI and makers' pages write them. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Intel(R) Core(TM) i5-2400 CPU @ 3.10GHz; Core 2nd generation",
        "Intel(R) Core(TM) i5-3320M CPU @ 2.60GHz; Core 3rd generation, notebook",
        "Intel(R) Core(TM) i5-4300U CPU @ 1.90GHz; Core 4th generation, low power",
        "Intel(R) Core(TM) i7-4790 CPU @ 3.60GHz; Core 4th generation",
        "Intel(R) Core(TM) i5-8250U CPU @ 1.60GHz; Core 8th generation, low power",
        "Intel(R) Core(TM) i3-8100 CPU @ 3.60GHz; Core i3 8th and 9th generation",
        "Intel(R) Core(TM) i7-9700 CPU @ 3.00GHz; Core 8th and 9th generation",
        "11th Gen Intel(R) Core(TM) i5-1135G7 @ 2.40GHz; Core 11th generation, notebook",
        "12th Gen Intel(R) Core(TM) i5-12400; Core 12th generation",
        "Intel(R) Core(TM) i7-7800X CPU @ 3.50GHz; Core X of 2017 to 2019",
        "Intel(R) Xeon(R) CPU E5-2680 v4 @ 2.40GHz; Xeon E5 v4",
        "Intel(R) Xeon(R) CPU E5-2620 0 @ 2.00GHz; Xeon E5",
        "Intel(R) Xeon(R) CPU E3-1230 v3 @ 3.30GHz; Xeon E3-1200 v2 and v3",
        "Intel(R) Xeon(R) Gold 6130 CPU @ 2.10GHz; Xeon Scalable, 1st generation",
        "AMD Ryzen 5 2600 Six-Core Processor; Ryzen 2000",
        "AMD Ryzen 9 5950X 16-Core Processor; Ryzen 3000 and 5000",
        "AMD EPYC 7302P 16-Core Processor; EPYC 7002 and 7003",
        "AMD FX(tm)-8350 Eight-Core Processor; AMD FX"})
    void processorsAreKnownByTheNamesThatFirmwareGivesThem(String processor, String name) {
        assertEquals(Optional.of(name), PlatformFile.find(processor).map(Platform::name));
    }

    @Test
    void aProcessorThatNobodyWroteDownIsUnknown() {
        assertEquals(Optional.empty(), PlatformFile.find("Corvid 5 8400"));
        assertEquals(Optional.empty(), PlatformFile.find(""));
    }

    @Test
    void whateverHasNoDocumentSaysThatItIsFromMemory() {
        for (Platform platform : PlatformFile.all()) {
            assertTrue(platform.source().ground() == Ground.DOCUMENT
                    || platform.source().toString().contains("check"), platform.toString());
        }
    }

    @Test
    void everyRateIsAGradeOfOneOfTheGenerations() {
        for (Platform platform : PlatformFile.all()) {
            platform.rates().values().forEach(rate -> assertTrue(platform.generations().stream()
                    .anyMatch(generation -> isGrade(generation, rate.megatransfers())), platform + ": " + rate));
            assertTrue(platform.rates().keySet().stream().allMatch(count -> count <= platform.modulesPerChannel()),
                    platform.toString());
        }
    }

    private static boolean isGrade(Generation generation, int rate) {
        return Families.grades(generation).stream().anyMatch(grade -> grade.rate().megatransfers() == rate);
    }

    @Test
    void moreModulesInAChannelNeverRunFaster() {
        for (Platform platform : PlatformFile.all()) {
            for (int count = 2; count <= platform.modulesPerChannel(); count++) {
                if (platform.rates().containsKey(count)) {
                    assertTrue(platform.rates().get(count).compareTo(platform.rates().get(1)) <= 0,
                            platform.toString());
                }
            }
        }
    }
}
