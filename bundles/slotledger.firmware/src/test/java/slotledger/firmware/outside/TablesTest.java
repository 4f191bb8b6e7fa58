package slotledger.firmware.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Coded;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Told;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;
import slotledger.firmware.smbios.TypeDetail;
import slotledger.testkit.OutsideData;

/** Outside checks: real machines' tables as Debian's dmidecode reads them, and what their collectors wrote of them. */
class TablesTest {


    private final FirmwareReader reader = new FirmwareReader();

    @Test
    void everyDumpSaysWhatTheListerPrintsOfIt() throws IOException {
        Tool lister = Tool.find("dmidecode", "dmidecode");
        List<String> differences = new ArrayList<>();
        int structures = 0;
        int facts = 0;
        List<Path> dumps = dumps();
        for (Path dump : dumps) {
            SmbiosTable ours = table(dump);
            String printout = lister.run("--from-dump", dump.toString());
            if (!printout.contains("Handle")) {
                assertEquals(List.of(), ours.structures(), dump.toString());
                assertTrue(printout.contains("broken") && !ours.problems().isEmpty(), printout);
                continue;
            }
            SmbiosTable theirs = listed(dump.toString(), printout.getBytes(StandardCharsets.UTF_8));
            assertEquals(theirs.version(), ours.version(), dump.toString());
            for (StructureKind kind : StructureKind.values()) {
                List<Structure> printed = theirs.all(kind);
                List<Structure> decoded = ours.all(kind);
                assertEquals(printed.size(), decoded.size(), dump + ": " + kind);
                for (int i = 0; i < printed.size(); i++) {
                    structures++;
                    assertEquals(printed.get(i).handle(), decoded.get(i).handle(), dump.toString());
                    facts += compare(dump, decoded.get(i), printed.get(i), differences);
                }
            }
        }
        assertEquals(List.of(), differences);
        assertEquals(51, dumps.size());
        assertTrue(structures > 900 && facts > 7000, structures + " structures, " + facts + " facts");
        System.getLogger("slotledger.firmware").log(System.Logger.Level.INFO,
                dumps.size() + " dumps, " + structures + " structures, " + facts + " facts alike");
    }

    private static int compare(Path dump, Structure decoded, Structure printed, List<String> differences) {
        int compared = 0;
        for (Told<?> told : printed.facts().all()) {
            if (told.raw().contains("<BAD INDEX>") || told.raw().contains("<OUT OF SPEC>")) {
                continue;
            }
            compared++;
            Object ours = decoded.get(told.fact()).orElse(null);
            Object theirs = told.value().orElse(null);
            if (!Objects.equals(text(ours), text(theirs))) {
                differences.add("%s, %s, %s: printed %s, decoded %s (%s)".formatted(dump.getFileName(),
                        printed.name(), told.fact().name(), told.raw(), ours,
                        decoded.facts().raw(told.fact()).orElse("nothing")));
            }
        }
        return compared;
    }

    private static String text(Object value) {
        return value == null ? null : value instanceof Coded coded ? coded.text() : value.toString().strip();
    }

    @Test
    void theDumpsAsTheirCollectorsLeftThemSayTheSame() throws IOException {
        Path folder = OutsideData.file("smbios");
        int compared = 0;
        try (Stream<Path> machines = Files.list(folder.resolve("dell-libsmbios"))) {
            for (Path machine : machines.filter(Files::isDirectory).sorted().toList()) {
                boolean linux = Files.exists(machine.resolve("DMI"));
                SmbiosTable raw = linux ? tableOf(machine) : table(machine.resolve("smbios.dat"));
                assertSame(table(folder.resolve("normalized/dell-" + machine.getFileName() + ".bin")), raw, machine);
                compared++;
            }
        }
        try (Stream<Path> tables = Files.list(folder.resolve("siderolabs-go-smbios"))) {
            for (Path table : tables.filter(file -> file.toString().endsWith(".dmi")).sorted().toList()) {
                String name = table.getFileName().toString().replace(".dmi", ".bin");
                assertSame(table(folder.resolve("normalized/siderolabs-" + name)), table(table), table);
                compared++;
            }
        }
        assertEquals(38, compared);
    }

    private static void assertSame(SmbiosTable expected, SmbiosTable actual, Path place) {
        assertEquals(expected.structures(), actual.structures(), place.toString());
    }

    @Test
    void aTableWithTheHeaderThatWindowsPutsBeforeItSaysTheSame() throws IOException {
        for (Path dump : dumps()) {
            byte[] bytes = Files.readAllBytes(dump);
            if (table(dump).structures().isEmpty()) {
                continue;
            }
            byte[] windows = new byte[bytes.length - 0x20 + 8];
            String[] version = table(dump).version().orElseThrow().split("\\.");
            windows[1] = Byte.parseByte(version[0]);
            windows[2] = Byte.parseByte(version[1]);
            int length = windows.length - 8;
            for (int i = 0; i < 4; i++) {
                windows[4 + i] = (byte) (length >> 8 * i);
            }
            System.arraycopy(bytes, 0x20, windows, 8, length);
            assertSame(table(dump), listed(dump.toString(), windows), dump);
        }
    }

    @Test
    void aDumpOfTheMemoryBelowOneMegabyteSaysTheSame() throws IOException {
        Path dump = OutsideData.file("smbios/systemd/HP-Z600.bin");
        byte[] bytes = Files.readAllBytes(dump);
        byte[] memory = new byte[1 << 20];
        System.arraycopy(bytes, 0, memory, 0xF0000 + 0x40, 0x20);
        System.arraycopy(bytes, 0x20, memory, 0xE1000, bytes.length - 0x20);
        memory[0xF0000 + 0x40 + 0x18] = 0x00;
        memory[0xF0000 + 0x40 + 0x19] = 0x10;
        memory[0xF0000 + 0x40 + 0x1A] = 0x0E;
        assertSame(table(dump), ((FirmwareReading.OfTable) reader.read("memory", memory).get(0)).table(), dump);
    }

    @Test
    void thePropertiesThatSystemdExpectsAreThere() throws IOException {
        int checked = 0;
        for (String name : List.of("HP-Z600", "Lenovo-ThinkPad-X280", "Lenovo-Thinkcentre-m720s")) {
            SmbiosTable table = table(OutsideData.file("smbios/systemd/" + name + ".bin"));
            List<Structure> devices = table.all(StructureKind.DEVICE);
            for (String line : Files.readAllLines(OutsideData.file("smbios/systemd/" + name + ".bin.txt"))) {
                String key = line.substring(0, line.indexOf('='));
                String value = line.substring(line.indexOf('=') + 1);
                if (key.matches("MEMORY_DEVICE_\\d+_.*")) {
                    Structure device = devices.get(Integer.parseInt(key.split("_")[2]));
                    checked += property(device, key.replaceFirst("MEMORY_DEVICE_\\d+_", ""), value, line);
                }
            }
        }
        assertTrue(checked > 100, checked + " properties");
    }

    private static int property(Structure device, String property, String value, String line) {
        Fact<?> fact = switch (property) {
            case "TOTAL_WIDTH" -> DeviceFacts.TOTAL_WIDTH;
            case "DATA_WIDTH" -> DeviceFacts.DATA_WIDTH;
            case "FORM_FACTOR" -> DeviceFacts.FORM;
            case "LOCATOR" -> DeviceFacts.LOCATOR;
            case "TYPE" -> DeviceFacts.TYPE;
            case "TYPE_DETAIL" -> DeviceFacts.DETAIL;
            case "SPEED_MTS" -> DeviceFacts.RATE;
            case "CONFIGURED_SPEED_MTS" -> DeviceFacts.CONFIGURED_RATE;
            case "RANK" -> DeviceFacts.RANKS;
            default -> null;
        };
        if (property.equals("SIZE")) {
            assertEquals(value, String.valueOf(device.get(DeviceFacts.SIZE).map(ByteCount::bytes).orElse(-1L)), line);
            return 1;
        }
        if (property.equals("PRESENT")) {
            assertEquals(Optional.of(ByteCount.NOTHING), device.get(DeviceFacts.SIZE), line);
            return 1;
        }
        if (fact == null) {
            return 0;
        }
        assertEquals(value.equals("Unknown") ? null : value.strip(), text(device.get(fact).orElse(null)), line);
        return 1;
    }

    @Test
    void damagedTablesGiveWhatIsSoundAndSayWhereItEnds() throws IOException {
        SmbiosTable virtual = table(OutsideData.file("smbios/siderolabs-go-smbios/HyperV.dmi"));
        assertTrue(virtual.problems().stream().anyMatch(p -> p.seen().contains("length is 3")
                || p.seen().contains("length")), virtual.problems().toString());
        SmbiosTable laptop = table(OutsideData.file("smbios/jrgerber-smbios-lib/jeffgerlap_3_2_0.dat"));
        assertTrue(!laptop.problems().isEmpty() && laptop.first(StructureKind.SYSTEM).isPresent(),
                laptop.problems().toString());
    }

    @Test
    void theRdramMachineOfAnOldListingIsReadWhole() throws IOException {
        Path file = OutsideData.file("smbios/rimm-text/dimension-8100.dmidecode-2.9.txt");
        SmbiosTable table = ((FirmwareReading.OfTable) reader.read(List.of(file)).get(0)).table();
        List<Structure> devices = table.memoryDevices();
        assertEquals(4, devices.size());
        assertTrue(devices.stream().anyMatch(one -> text(one.get(DeviceFacts.TYPE).orElse(null)).equals("RDRAM")));
        assertTrue(devices.stream().anyMatch(one -> one.get(DeviceFacts.SIZE).filter(ByteCount::isNothing)
                .isPresent()));
        assertTrue(devices.get(0).get(DeviceFacts.DETAIL).filter(d -> d.has(TypeDetail.Trait.RAMBUS)).isPresent());
    }

    @Test
    void everyListingOfThePublicCollectionGivesMachineArrayAndDevices() throws IOException {
        List<String> without = new ArrayList<>();
        int devices = 0;
        int machines = 0;
        try (Stream<Path> files = Files.list(OutsideData.file("linuxhw/listings"))) {
            for (Path file : files.sorted().toList()) {
                String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                long printed = text.lines().filter("Memory Device"::equals).count();
                SmbiosTable table = ((FirmwareReading.OfTable) reader.read(List.of(file)).get(0)).table();
                if (table.all(StructureKind.DEVICE).size() != printed) {
                    without.add(file.getFileName() + ": " + table.all(StructureKind.DEVICE).size() + " of " + printed);
                }
                table.problems().stream().filter(p -> p.expected().contains("lister prints"))
                        .forEach(p -> without.add(file.getFileName() + ": " + p));
                devices += table.all(StructureKind.DEVICE).size();
                machines++;
            }
        }
        assertEquals(List.of(), without);
        assertTrue(machines == 294 && devices > 900, machines + " machines, " + devices + " devices");
    }

    private List<Path> dumps() throws IOException {
        Path folder = OutsideData.file("smbios");
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".bin")).sorted().toList();
        }
    }

    private SmbiosTable table(Path file) throws IOException {
        FirmwareReading reading = reader.read(List.of(file)).get(0);
        assertTrue(reading instanceof FirmwareReading.OfTable, reading.toString());
        return ((FirmwareReading.OfTable) reading).table();
    }

    private SmbiosTable tableOf(Path folder) throws IOException {
        return reader.read(List.of(folder)).stream().filter(FirmwareReading.OfTable.class::isInstance)
                .map(one -> ((FirmwareReading.OfTable) one).table()).findFirst().orElseThrow();
    }

    private SmbiosTable listed(String place, byte[] content) {
        FirmwareReading reading = reader.read(place, content).get(0);
        assertTrue(reading instanceof FirmwareReading.OfTable, reading.toString());
        return ((FirmwareReading.OfTable) reading).table();
    }
}
