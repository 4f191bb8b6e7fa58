package slotledger.intake.internal.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.Reading;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.task.CancelledException;
import slotledger.model.task.Progress;

class FirmwareInventoryTest {

    @TempDir
    private Path folder;

    private Reading<ObservedFleet> read(Path path) throws Exception {
        return new FirmwareInventory().read(path, Optional.empty(), Progress.NONE);
    }

    private Reading<ObservedFleet> read(Listing listing) throws Exception {
        Path machines = Files.createDirectories(folder.resolve("firmware"));
        Files.writeString(machines.resolve("K-17.txt"), listing.toString());
        return read(machines);
    }

    private static String slots(Reading<ObservedFleet> reading) {
        return String.join("\n", reading.value().machines().get(0).slots().stream()
                .map(slot -> slot.label().orElse("?") + ": " + slot.content()).toList());
    }

    private static List<String> codes(Reading<ObservedFleet> reading) {
        return reading.findings().stream().map(finding -> finding.code()).toList();
    }

    @Test
    void aFileOfAFolderIsTheMachineItIsNamedBy() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of(
                "DIMM1 | 8 GB | DIMM | DDR4 | 2666 MT/s | 64 | 64 | Rank: 1 | Part Number: QF-1",
                "DIMM2 | empty | DIMM | Unknown"));
        ObservedMachine machine = reading.value().machines().get(0);
        assertEquals("K-17", machine.tag().value());
        assertEquals("Kestrin KB-510 S-4711 Corvid 5 8400", String.join(" ", machine.maker(), machine.model(),
                machine.serial(), machine.processor()));
        assertEquals("firmware/K-17.txt", machine.place().toString());
        assertEquals("DIMM1: 8 GB DDR4-2666 DIMM, 1R, non-ECC\nDIMM2: empty", slots(reading));
        assertEquals("QF-1", machine.slots().get(0).part());
        assertEquals(2, machine.slotCount().getAsInt());
        assertEquals(List.of(), reading.findings());
    }

    @Test
    void anArchiveHoldsMachinesByNameOrByFolder() throws Exception {
        Path zip = folder.resolve("firmware.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (String name : List.of("A-1.txt", "sub/A-2.dmidecode.txt", "A-3/dmidecode.txt", "A-4/readme.md")) {
                out.putNextEntry(new ZipEntry(name));
                out.write((name.endsWith(".md") ? "nothing of use"
                        : Listing.of("D1 | 4 GB | DIMM | DDR3 | 1600 MT/s | 64 | 64").toString()).getBytes());
            }
        }
        Reading<ObservedFleet> reading = read(zip);
        assertEquals(List.of("A-1", "A-3", "A-2"), reading.value().machines().stream()
                .map(machine -> machine.tag().value()).toList());
        assertEquals(List.of("firmware-not-understood"), codes(reading));
        assertEquals("firmware.zip!A-4/readme.md", reading.findings().get(0).place().file());
    }

    @Test
    void registeredModulesThatFirmwareCallsRimmAreDimms() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("P1 | 16 GB | RIMM | DDR4 | 2133 MT/s | 64 | 72",
                "P2 | 16 GB | RIMM | DDR4 | 2133 MT/s | 64 | 72").array("256 GB", "Multi-bit ECC", 2));
        assertEquals("P1: 16 GB DDR4-2133 DIMM, ECC, registered\nP2: 16 GB DDR4-2133 DIMM, ECC, registered",
                slots(reading));
        assertEquals(List.of("firmware-rimm"), codes(reading));
        assertEquals("P1: RIMM with DDR4; P2: RIMM with DDR4", reading.findings().get(0).seen());
    }

    @Test
    void trueRambusStaysRambus() throws Exception {
        assertEquals("RIMM1: 128 MB RDRAM-800 184-pin RIMM, non-ECC",
                slots(read(Listing.of("RIMM1 | 128 MB | RIMM | RDRAM | 800 MHz | 16 | 16"))));
    }

    @Test
    void aFlashChipIsNoMemory() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("DIMM1 | 2 GB | DIMM | DDR3 | 1333 MT/s | 64 | 64",
                "SYSTEM ROM | 2 MB | Chip | Flash").array("8 GB", "None", 2));
        assertEquals("DIMM1: 2 GB DDR3-1333 DIMM, non-ECC", slots(reading));
        assertEquals(List.of("firmware-no-main-memory"), codes(reading));
    }

    @Test
    void kilobytesThatMeanMegabytesAreCorrected() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("A | 8192 kB | DIMM | DDR3 | 1600 MT/s | 64 | 64")
                .array("32 MB", "None", 1));
        assertEquals("A: 8 GB DDR3-1600 DIMM, non-ECC", slots(reading));
        assertEquals(List.of("firmware-unit", "firmware-limit-unit"), codes(reading));
    }

    @Test
    void slotsOfOneNameAreToldApartByTheirBanks() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of(
                "DIMM0 | 4 GB | DIMM | DDR4 | 2400 MT/s | 64 | 64 | Bank Locator: P0 CHANNEL A",
                "DIMM0 | 4 GB | DIMM | DDR4 | 2400 MT/s | 64 | 64 | Bank Locator: P0 CHANNEL B"));
        assertEquals(List.of("P0 CHANNEL A DIMM0", "P0 CHANNEL B DIMM0"), reading.value().machines().get(0).slots()
                .stream().map(slot -> slot.label().orElse("?")).toList());
        assertEquals(List.of("firmware-same-name"), codes(reading));
    }

    @Test
    void slotsThatNobodyCanTellApartAreNotNamed() throws Exception {
        Reading<ObservedFleet> same = read(Listing.of("DIMM | 4 GB | DIMM | DDR4 | 2400 MT/s | 64 | 64",
                "DIMM | empty | DIMM"));
        assertEquals("?: 4 GB DDR4-2400 DIMM, non-ECC\n?: empty", slots(same));
        assertEquals(List.of("firmware-same-names"), codes(same));
        assertEquals(List.of("firmware-nameless"), codes(read(Listing.of(
                "NO DIMM | 4 GB | DIMM | DDR4 | 2400 MT/s | 64 | 64"))));
    }

    @Test
    void swappedWidthsStillTellCheckBits() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("A | 4 GB | DIMM | DDR3 | 1333 MT/s | 72 | 64")
                .array("32 GB", "Single-bit ECC", 1));
        assertEquals("A: 4 GB DDR3-1333 DIMM, ECC", slots(reading));
        assertEquals(List.of("firmware-swapped-widths"), codes(reading));
    }

    @Test
    void widthsThatDoNotGoTogetherLeaveCheckBitsUnknown() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("A | 4 GB | DIMM | DDR3 | 1333 MT/s | 2244 | 2304"));
        assertEquals("A: 4 GB DDR3-1333 DIMM", slots(reading));
        assertEquals(List.of("firmware-widths"), codes(reading));
    }

    @Test
    void moreThanTheBoardIsSaidToTakeIsSaid() throws Exception {
        assertEquals(List.of("firmware-limit"), codes(read(Listing.of(
                "A | 8 GB | DIMM | DDR3 | 1333 MT/s | 64 | 64", "B | 8 GB | DIMM | DDR3 | 1333 MT/s | 64 | 64")
                .array("8 GB", "None", 2))));
    }

    @Test
    void anArrayThatCountsOtherwiseIsSaid() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("A | 8 GB | DIMM | DDR3 | 1333 MT/s | 64 | 64")
                .array("32 GB", "None", 4));
        assertEquals(List.of("firmware-count"), codes(reading));
        assertEquals("4 counted, 1 listed", reading.findings().get(0).seen());
    }

    @Test
    void aKindThatCanNotRunAtItsRateIsLeftUnknown() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("A | 1 GB | DIMM | DDR | 667 MHz | 64 | 64"));
        assertEquals("A: 1 GB 667 MT/s DIMM, non-ECC", slots(reading));
        assertEquals(List.of("firmware-type-and-rate"), codes(reading));
    }

    @Test
    void lowPowerMemoryIsSolderedWhateverItsFormIsCalled() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("A | 4 GB | SODIMM | LPDDR4 | 3200 MT/s | 32 | 32"));
        assertEquals("A: 4 GB LPDDR4-3200 soldered, non-ECC", slots(reading));
        assertEquals(List.of("firmware-low-power-form"), codes(reading));
    }

    @Test
    void persistentMemoryIsNotAModuleToMove() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of(
                "A | 128 GB | DIMM | DDR4 | 2666 MT/s | 64 | 72 | Memory Technology: Intel Optane persistent memory"));
        assertTrue(slots(reading).startsWith("A: unread"), slots(reading));
        assertTrue(codes(reading).contains("firmware-persistent"), codes(reading).toString());
    }

    @Test
    void aComputerThatAnotherPlaysIsNoMachineButSaid() throws Exception {
        Reading<ObservedFleet> reading = read(Listing.of("A | 4 GB | DIMM | DRAM").machine("QEMU", "Standard PC", ""));
        assertEquals(List.of(), reading.value().machines());
        assertEquals(List.of("firmware-virtual"), codes(reading));
    }

    @Test
    void windowsRecordsOfManyMachinesAreOneMachineEach() throws Exception {
        Path file = Files.writeString(folder.resolve("firmware.csv"), """
                PSComputerName;Capacity;DeviceLocator;SMBIOSMemoryType;FormFactor;Speed
                LAB-1;8589934592;DIMM A;26;8;2666
                LAB-2;4294967296;DIMM A;26;8;2400
                """);
        assertTrue(new FirmwareInventory().canRead(file));
        Reading<ObservedFleet> reading = read(file);
        assertEquals(List.of("LAB-1", "LAB-2"), reading.value().machines().stream().map(m -> m.tag().value()).toList());
    }

    @Test
    void aFileOfTheCollectionKitIsKnownByItsFirstLine() throws Exception {
        assertTrue(new FirmwareInventory().canRead(Files.writeString(folder.resolve("K-17.txt"),
                "# Memory table of one computer: SMBIOS structures of types 1-6\n01 1b 01 00\n")));
    }

    @Test
    void anInventorySpreadsheetIsNotTakenForFirmware() throws Exception {
        assertFalse(new FirmwareInventory().canRead(Files.writeString(folder.resolve("fleet.csv"),
                "Asset tag;Model;RAM\nA1;K10;2x4GB\n")));
        assertFalse(new FirmwareInventory().canRead(Files.writeString(folder.resolve("fleet.xlsx"), "PK")));
    }

    @Test
    void aDamagedTableIsReadAsFarAsItGoesAndSaidSo() throws Exception {
        Path machines = Files.createDirectories(folder.resolve("firmware"));
        byte[] whole = Files.readAllBytes(Files.writeString(machines.resolve("x"), "Kestrin"));
        Files.write(machines.resolve("x"), new byte[] {1, 0, 2, whole[0]});
        Reading<ObservedFleet> reading = read(machines);
        assertEquals(List.of(), reading.value().machines());
        assertEquals(1, reading.findings().size(), reading.findings().toString());
    }

    @Test
    void workCanBeStopped() throws Exception {
        Files.writeString(Files.createDirectories(folder.resolve("firmware")).resolve("K-1.txt"),
                Listing.of("A | empty | DIMM").toString());
        Progress stopped = new Progress() {
            @Override
            public void step(String what, double done) {
                // nobody watches
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancelledException.class,
                () -> new FirmwareInventory().read(folder.resolve("firmware"), Optional.empty(), stopped));
    }
}
