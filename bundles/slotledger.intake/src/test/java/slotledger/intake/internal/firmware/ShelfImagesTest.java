package slotledger.intake.internal.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.Reading;
import slotledger.intake.internal.DefaultIntake;
import slotledger.model.finding.Finding;
import slotledger.model.task.Progress;
import slotledger.model.trade.Shelf;

class ShelfImagesTest {

    @TempDir
    private Path folder;

    /** A DDR2 module of 1 GB, two ranks, x8; JEDEC 21-C 4.1.2.10 says what each byte is. */
    private static byte[] image(int serial) {
        byte[] image = new byte[128];
        int[] head = {0x80, 0x08, 0x08, 0x0E, 0x0A, 0x61, 0x40, 0x00, 0x05, 0x30, 0x45, 0x00, 0x82, 0x08, 0x00, 0x00,
            0x0C, 0x04, 0x38, 0x00, 0x02};
        for (int i = 0; i < head.length; i++) {
            image[i] = (byte) head[i];
        }
        image[31] = (byte) 0x80;
        image[64] = 0x2C;
        image[98] = (byte) serial;
        int sum = 0;
        for (int i = 0; i < 63; i++) {
            sum += image[i];
        }
        image[63] = (byte) sum;
        return image;
    }

    private Reading<Shelf> read(Path... files) throws Exception {
        return DefaultIntake.plain().readShelf(List.of(files), Progress.NONE);
    }

    @Test
    void eachImageOfAFolderIsAModule() throws Exception {
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        Files.write(shelf.resolve("1.bin"), image(1));
        Files.write(shelf.resolve("2.bin"), image(2));
        Reading<Shelf> reading = read(shelf);
        assertEquals(1, reading.value().pieces().size(), reading.findings().toString());
        String kind = reading.value().pieces().keySet().iterator().next().toString();
        assertTrue(kind.startsWith("1 GB DDR2-667 DIMM, 2Rx8, 512 Mbit chips, non-ECC, unbuffered"), kind);
        assertEquals(List.of(2), List.copyOf(reading.value().pieces().values()));
    }

    @Test
    void oneModuleReadTwiceIsCountedOnce() throws Exception {
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        Files.write(shelf.resolve("1.bin"), image(1));
        Files.write(shelf.resolve("again.bin"), image(1));
        Reading<Shelf> reading = read(shelf);
        assertEquals(List.of(1), List.copyOf(reading.value().pieces().values()));
        assertEquals(List.of("shelf-twice"), reading.findings().stream().map(Finding::code).toList());
    }

    @Test
    void whatIsNoImageIsSaidAndListsAreReadBesideIt() throws Exception {
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        Files.write(shelf.resolve("1.bin"), image(1));
        Files.writeString(shelf.resolve("readme.md"), "from the cupboard in room 3");
        Path list = Files.writeString(folder.resolve("shelf.csv"), "Module;Count\n8GB PC4-2666V-U;2\n");
        Reading<Shelf> reading = read(shelf, list);
        assertEquals(2, reading.value().pieces().size());
        assertEquals(List.of("shelf-not-a-module"), reading.findings().stream().map(Finding::code).toList());
    }

    @Test
    void anImageWithAWrongChecksumIsNotCounted() throws Exception {
        byte[] image = image(1);
        image[63]++;
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        Files.write(shelf.resolve("1.bin"), image);
        Reading<Shelf> reading = read(shelf);
        assertEquals(List.of("shelf-not-a-module"), reading.findings().stream().map(Finding::code).toList());
        assertEquals(0, reading.value().pieces().size());
    }

    @Test
    void aLabelThatContradictsTheImageKeepsTheModuleOffTheShelf() throws Exception {
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        Files.write(shelf.resolve("1.bin"), image(1));
        Files.writeString(shelf.resolve("1.label.txt"), "2GB 2Rx8 PC2-5300U");
        Files.write(shelf.resolve("2.bin"), image(2));
        Files.writeString(shelf.resolve("2.label.txt"), "1GB 2Rx8 PC2-5300U");
        Reading<Shelf> reading = read(shelf);
        assertEquals(List.of("shelf-label-differs"), reading.findings().stream().map(Finding::code).toList());
        assertEquals(List.of(1), List.copyOf(reading.value().pieces().values()));
        assertTrue(reading.findings().get(0).message().contains("1.label.txt"), reading.findings().toString());
    }

    @Test
    void aModuleThatFirmwareFindsInAMachineIsNamedThere() throws Exception {
        Path shelf = Files.createDirectory(folder.resolve("shelf"));
        byte[] image = image(7);
        System.arraycopy("QF-77".getBytes(), 0, image, 73, 5);
        Files.write(shelf.resolve("1.bin"), image);
        Path machines = Files.createDirectory(folder.resolve("firmware"));
        for (String serial : List.of("00000007", "00000008")) {
            Files.writeString(machines.resolve("K-" + serial + ".txt"), Listing.of(
                    "A | 1 GB | DIMM | DDR2 | 667 MT/s | 64 | 64 | Part Number: QF-77 | Serial Number: " + serial)
                    .toString());
        }
        List<Finding> findings = DefaultIntake.plain().compareShelf(List.of(shelf), DefaultIntake.plain()
                .readFleet(List.of(machines), Optional.empty(), Progress.NONE).value(), Progress.NONE);
        assertEquals(List.of("shelf-module-in-machine"), findings.stream().map(Finding::code).toList());
        assertEquals("K-00000007", findings.get(0).machine().orElseThrow().value());
    }
}
