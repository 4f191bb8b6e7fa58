package slotledger.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdModule;

/** Invented images; the layout's sources are JESD21-C 4.1.2.11 and .12 and JESD400-5. */
class ImageDecodingTest {

    /** Bytes 2, 4, 7, 8 and the size as Dataram prints them in the sheets DTM64396A and DTM64329C. */
    @ParameterizedTest
    @CsvSource({"0x04, 0x09, 0x0B, 8192, 8", "0x03, 0x09, 0x03, 4096, 0"})
    void aDdr3ImageHasTheCapacityOfItsChips(String density, String chips, String bus, long mib, int check) {
        byte[] image = ddr3();
        image[4] = Byte.decode(density);
        image[7] = Byte.decode(chips);
        image[8] = Byte.decode(bus);
        SpdModule module = module(image);
        assertEquals(Optional.of(ByteCount.ofMib(mib)), module.get(SpdFacts.CAPACITY));
        assertEquals(Optional.of(check), module.get(SpdFacts.CHECK_WIDTH));
        assertEquals(Optional.of(2), module.get(SpdFacts.RANKS));
    }

    /** Whole picoseconds, cut as the standard cuts them. */
    @ParameterizedTest
    @CsvSource({"416, 4800", "384, 5200", "357, 5600", "333, 6000", "312, 6400", "625, 3200"})
    void aCycleTimeMeansTheStandardGrade(int cycle, int rate) {
        byte[] image = ddr5();
        image[20] = (byte) cycle;
        image[21] = (byte) (cycle >> 8);
        assertEquals(Optional.of(rate), module(image).get(SpdFacts.RATE));
    }

    @Test
    void aCycleTimeBetweenTheGradesIsUnknownAndAProblem() {
        byte[] image = ddr5();
        image[20] = (byte) 0x90;
        image[21] = 1;
        SpdModule module = module(image);
        assertEquals(Optional.of(400), module.get(SpdFacts.CYCLE));
        assertEquals(Optional.empty(), module.get(SpdFacts.RATE));
        assertTrue(problems(module).contains("which is 5000 MT/s"), problems(module));
    }

    @Test
    void aWrongChecksumIsSaidAndTheRestIsRead() {
        byte[] image = ddr3();
        image[126] ^= 1;
        SpdModule module = module(image);
        assertTrue(problems(module).contains("the checksum is"), problems(module));
        assertTrue(module.get(SpdFacts.CAPACITY).isPresent());
    }

    @Test
    void aPartNumberThatMeansAnotherRateThanTheTimingIsAContradiction() {
        byte[] image = ddr4("HMA42GR7MFR4N-TF", 5);
        assertTrue(problems(module(image)).contains("means 2133 MT/s, the timing says 3200"), problems(module(image)));
        assertEquals("", problems(module(ddr4("HMA42GR7MFR4N-XN", 5))));
    }

    @Test
    void bytesThatAreNoImageAreRefused() {
        for (int size : List.of(0, 1, 63, 64, 128, 256, 512, 1024, 5000)) {
            FirmwareReading reading = new FirmwareReader().read("x", new byte[size]).get(0);
            assertTrue(reading instanceof FirmwareReading.Refused, size + ": " + reading);
            assertEquals(1, reading.problems().size());
        }
    }

    private static byte[] ddr3() {
        byte[] image = new byte[256];
        set(image, 0, 0x92, 0x11, 0x0B, 0x02, 0x04, 0x21, 0x00, 0x09, 0x0B, 0x11, 0x01, 0x08, 0x0A);
        return image;
    }

    private static byte[] ddr4(String part, int cycle) {
        byte[] image = new byte[512];
        set(image, 0, 0x23, 0x11, 0x0C, 0x01, 0x85, 0x21, 0x00, 0x08, 0, 0, 0, 0x03, 0x08, 0x0B);
        image[18] = (byte) cycle;
        set(image, 320, 0x80, 0xAD);
        byte[] name = part.getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(name, 0, image, 329, name.length);
        seal(image, 126);
        return image;
    }

    private static byte[] ddr5() {
        byte[] image = new byte[1024];
        set(image, 0, 0x30, 0x10, 0x12, 0x02, 0x04, 0x00, 0x20);
        set(image, 20, 0xA0, 0x01);
        image[235] = 0x22;
        return image;
    }

    private static void set(byte[] image, int at, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            image[at + i] = (byte) bytes[i];
        }
    }

    /** The standard's own way of the checksum: bit by bit, highest first. */
    private static void seal(byte[] image, int at) {
        int crc = 0;
        for (int i = 0; i < at * 8; i++) {
            boolean bit = (image[i / 8] >> 7 - i % 8 & 1) == 1;
            boolean top = (crc & 0x8000) != 0;
            crc = (crc << 1 ^ (bit != top ? 0x1021 : 0)) & 0xFFFF;
        }
        image[at] = (byte) crc;
        image[at + 1] = (byte) (crc >> 8);
    }

    private static String problems(SpdModule module) {
        return String.join("; ", module.problems().stream().map(Problem::toString).toList());
    }

    private static SpdModule module(byte[] image) {
        return ((FirmwareReading.OfModule) new FirmwareReader().read("image", image).get(0)).module();
    }
}
