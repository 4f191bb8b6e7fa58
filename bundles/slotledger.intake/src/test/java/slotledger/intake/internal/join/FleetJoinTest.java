package slotledger.intake.internal.join;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.Reading;
import slotledger.intake.internal.DefaultIntake;
import slotledger.model.finding.Finding;
import slotledger.model.observed.Comparison;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.Reconciliation;
import slotledger.model.observed.Subject;
import slotledger.model.task.Progress;

class FleetJoinTest {

    private static final String TABLE = """
            Handle 0x0001, DMI type 1, 27 bytes
            System Information
            \tManufacturer: Kestrin Inc.
            \tProduct Name: KB-510
            \tSerial Number: %s

            Handle 0x0010, DMI type 16, 23 bytes
            Physical Memory Array
            \tUse: System Memory
            \tNumber Of Devices: 2

            Handle 0x0011, DMI type 17, 40 bytes
            Memory Device
            \tArray Handle: 0x0010
            \tSize: %s
            \tForm Factor: DIMM
            \tLocator: DIMM1
            \tType: DDR4
            \tSpeed: 2666 MT/s
            \tRank: 1

            Handle 0x0012, DMI type 17, 40 bytes
            Memory Device
            \tArray Handle: 0x0010
            \tSize: No Module Installed
            \tLocator: DIMM2
            """;

    @TempDir
    private Path folder;
    private Path firmware;
    private String sheet = "Asset tag;Serial;Maker;Model;Role;DIMM1;DIMM2\n";
    private String mapping = "";

    @BeforeEach
    void makeFolder() throws Exception {
        firmware = Files.createDirectory(folder.resolve("firmware"));
    }

    private FleetJoinTest row(String cells) {
        sheet += cells + "\n";
        return this;
    }

    private FleetJoinTest table(String file, String serial, String size) throws Exception {
        Files.writeString(firmware.resolve(file), TABLE.formatted(serial, size));
        return this;
    }

    private Reading<Reconciliation> read() throws Exception {
        Path fleet = Files.writeString(folder.resolve("fleet.csv"), sheet);
        Path lines = Files.writeString(folder.resolve("mapping.txt"), mapping);
        return DefaultIntake.plain().reconcile(List.of(fleet, firmware),
                mapping.isEmpty() ? Optional.empty() : Optional.of(lines), Progress.NONE);
    }

    private static ObservedMachine only(Reading<Reconciliation> reading) {
        assertEquals(1, reading.value().fleet().machines().size(), reading.findings().toString());
        return reading.value().fleet().machines().get(0);
    }

    private static List<String> codes(Reading<Reconciliation> reading) {
        return reading.findings().stream().map(Finding::code).toList();
    }

    @Test
    void aFileNamedByTheAssetTagIsThatMachine() throws Exception {
        Reading<Reconciliation> reading = row("K-17;S1;Kestrin;KB-510;lab;8GB DDR4;empty")
                .table("k-17.txt", "S1", "8 GB").read();
        ObservedMachine machine = only(reading);
        assertEquals("lab", machine.role());
        assertEquals("8 GB DDR4-2666 DIMM, 1R", machine.slots().get(0).content().toString());
        assertEquals(List.of(), codes(reading));
        assertEquals(List.of("slot DIMM1"), reading.value().of(Comparison.Outcome.COMPLETED).stream()
                .map(Comparison::fact).toList());
    }

    @Test
    void aFileNamedByTheSerialNumberOrWithItInsideIsThatMachine() throws Exception {
        assertEquals("K-17", only(row("K-17;S1;Kestrin;KB-510;lab;8GB DDR4;empty").table("S1.bin", "", "8 GB").read())
                .tag().value());
        Files.delete(firmware.resolve("S1.bin"));
        assertEquals("K-17", only(table("whatever.txt", "s1", "8 GB").read()).tag().value());
    }

    @Test
    void firmwareIsBelievedOfMemoryAndBothPlacesAreSaid() throws Exception {
        Reading<Reconciliation> reading = row("K-17;S1;Kestrin;KB-510;lab;8GB DDR4;empty")
                .table("K-17.txt", "S1", "16 GB").read();
        assertEquals("16 GB DDR4-2666 DIMM, 1R", only(reading).slots().get(0).content().toString());
        assertEquals(List.of("sources-differ"), codes(reading));
        String message = reading.findings().get(0).message();
        assertTrue(message.contains("firmware/K-17.txt") && message.contains("fleet.csv"), message);
        assertTrue(message.contains("16 GB") && message.contains("8 GB DDR4"), message);
    }

    @Test
    void theMappingFileSaysWhomToBelieve() throws Exception {
        mapping = "trust memory = spreadsheet, firmware\ntrust model = firmware\n";
        Reading<Reconciliation> reading = row("K-17;S1;Kestrin;KB-999;lab;8GB DDR4;empty")
                .table("K-17.txt", "S1", "16 GB").read();
        assertEquals("8 GB DDR4", only(reading).slots().get(0).content().toString());
        assertEquals("KB-510", only(reading).model());
        assertEquals(List.of("sources-differ", "sources-differ"), codes(reading));
    }

    @Test
    void aWrongLineOfTrustIsSaid() throws Exception {
        mapping = "trust memory = gossip\n";
        assertTrue(codes(row("K-17;S1;Kestrin;KB-510;lab;8GB DDR4;empty").table("K-17.txt", "S1", "8 GB").read())
                .contains("mapping-trust"));
    }

    @Test
    void aTableOfAnotherMachineIsNotJoined() throws Exception {
        Reading<Reconciliation> reading = row("K-17;S1;Kestrin;KB-510;lab;8GB DDR4;empty")
                .row("K-18;S2;Kestrin;KB-510;lab;8GB DDR4;empty").table("K-17.txt", "S2", "16 GB").read();
        assertEquals(List.of("firmware-of-another"), codes(reading));
        assertEquals("8 GB DDR4", reading.value().fleet().machines().get(0).slots().get(0).content().toString());
        assertEquals(2, reading.value().withoutFirmware().size());
    }

    @Test
    void aMachineThatNoSpreadsheetListsIsKeptAndSaid() throws Exception {
        Reading<Reconciliation> reading = row("K-17;S1;Kestrin;KB-510;lab;8GB DDR4;empty")
                .table("K-99.txt", "S9", "16 GB").read();
        assertEquals(2, reading.value().fleet().machines().size());
        assertEquals("[K-99]", reading.value().withoutSheet().toString());
        assertEquals(List.of("firmware-without-row"), codes(reading));
    }

    @Test
    void twoFilesOfOneMachineAreOneTooMany() throws Exception {
        assertEquals(List.of("duplicate-serial", "firmware-twice"), codes(
                row("K-17;S1;Kestrin;KB-510;lab;8GB DDR4;empty").table("K-17.txt", "S1", "8 GB")
                        .table("S1.txt", "S1", "8 GB").read()));
    }

    @Test
    void aTotalIsComparedWithTheModules() throws Exception {
        sheet = "Asset tag;Serial;Maker;Model;RAM (GB)\n";
        assertEquals(List.of("modules-not-listed"), codes(row("K-17;S1;Kestrin;KB-510;8")
                .table("K-17.txt", "S1", "8 GB").read()));
        assertTrue(codes(table("K-17.txt", "S1", "16 GB").read()).contains("sources-differ"));
    }

    @Test
    void namesOfFirmsAndProcessorsNeedNotBeTheSameLetterByLetter() {
        assertTrue(NameText.alike(Subject.MAKER, "Kestrin", "KESTRIN Inc."));
        assertTrue(NameText.alike(Subject.PROCESSOR, "Corvid 5-8400",
                "Corvid(R) 5-8400 CPU @ 2.80GHz"));
        assertEquals(false, NameText.alike(Subject.SERIAL, "S1", "S11"));
    }
}
