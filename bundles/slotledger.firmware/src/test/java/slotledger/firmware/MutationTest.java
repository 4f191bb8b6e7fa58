package slotledger.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.testkit.OutsideData;

/** Damages data at random, always in the same way: nothing may hang, throw, or grow beyond what it was given. */
class MutationTest {

    private static final int LONGEST = 40_000;

    private final FirmwareReader reader = new FirmwareReader();

    @Test
    void damagedInventedDataIsReadWithoutAFault() {
        byte[] table = new TableText().structure(TableText.ARRAY).device(0, "00 20", "09", "1A", "60 09", "A")
                .device(1, "00 00", "09", "1A", "00 00", "B").structure(TableText.END).bytes();
        List<byte[]> seeds = List.of(table, ("[{\"Capacity\":\"8589934592\",\"FormFactor\":8,\"Speed\":2400},"
                + "{\"MemoryDevices\":4,\"Use\":3}]").getBytes(StandardCharsets.UTF_8),
                ("Handle 0x0001, DMI type 17, 40 bytes\nMemory Device\n\tSize: 8 GB\n\tSpeed: 2400 MT/s\n")
                        .getBytes(StandardCharsets.UTF_8),
                "<a><INSTANCE><PROPERTY NAME=\"Capacity\"><VALUE>1</VALUE></PROPERTY></INSTANCE></a>"
                        .getBytes(StandardCharsets.UTF_8));
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> damage(seeds, 4_000));
    }

    @Test
    void damagedRealDataIsReadWithoutAFault() throws IOException {
        List<byte[]> seeds = new ArrayList<>();
        for (String folder : List.of("smbios", "spd", "linuxhw/listings")) {
            try (Stream<Path> files = Files.walk(OutsideData.file(folder))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    if (Files.size(file) < LONGEST && (!folder.startsWith("linuxhw") || seeds.size() % 10 == 0)) {
                        seeds.add(Files.readAllBytes(file));
                    }
                }
            }
        }
        assertTrue(seeds.size() > 300, seeds.size() + " seeds");
        assertTimeoutPreemptively(Duration.ofSeconds(60), () -> damage(seeds, 4_000));
    }

    private void damage(List<byte[]> seeds, int rounds) {
        Random random = new Random(42);
        int read = 0;
        for (int round = 0; round < rounds; round++) {
            byte[] data = damaged(seeds.get(random.nextInt(seeds.size())), random);
            for (FirmwareReading reading : reader.read("damaged", data)) {
                read++;
                assertTrue(reading.problems().size() <= 201, "at most 200 problems and one that says so");
                if (reading instanceof FirmwareReading.OfTable found) {
                    assertTrue(found.table().structures().size() <= data.length + 1024, "structures of round " + round);
                }
            }
        }
        assertTrue(read >= rounds, read + " readings");
    }

    /** Some bytes changed, some cut off, some doubled. */
    private static byte[] damaged(byte[] seed, Random random) {
        byte[] data = seed.clone();
        if (data.length == 0) {
            return data;
        }
        int changes = 1 + random.nextInt(8);
        for (int i = 0; i < changes; i++) {
            data[random.nextInt(data.length)] = (byte) (random.nextBoolean() ? random.nextInt(256)
                    : List.of(0, 1, 3, 4, 0x7F, 0x80, 0xFF).get(random.nextInt(7)));
        }
        return switch (random.nextInt(4)) {
            case 0 -> Arrays.copyOf(data, random.nextInt(data.length));
            case 1 -> {
                byte[] twice = Arrays.copyOf(data, data.length * 2);
                System.arraycopy(seed, 0, twice, data.length, seed.length);
                yield twice;
            }
            default -> data;
        };
    }

    @Test
    void theSameDataGivesTheSameReading() {
        byte[] table = new TableText().structure(TableText.ARRAY).device(0, "00 20", "09", "1A", "60 09", "A").bytes();
        assertEquals(reader.read("t", table), reader.read("t", table));
    }

    @Test
    void manyAnchorsDoNotMakeItSlow() {
        byte[] data = new byte[16 << 20];
        for (int at = 0; at + 32 < data.length; at += 32) {
            System.arraycopy("_SM_".getBytes(StandardCharsets.US_ASCII), 0, data, at, 4);
            System.arraycopy("_DMI_".getBytes(StandardCharsets.US_ASCII), 0, data, at + 16, 5);
        }
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> reader.read("anchors", data));
    }
}
