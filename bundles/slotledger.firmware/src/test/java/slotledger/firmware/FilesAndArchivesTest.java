package slotledger.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilesAndArchivesTest {

    private static final byte[] TABLE = new TableText().structure(TableText.ARRAY)
            .device(0, "00 20", "09", "1A", "60 09", "A").device(1, "00 00", "09", "1A", "00 00", "B")
            .structure(TableText.END).bytes();

    @TempDir
    private Path folder;

    @Test
    void theTwoFilesOfTheLinuxKernelAreOneTable() throws IOException {
        Files.write(folder.resolve("smbios_entry_point"), entryPoint());
        Files.write(folder.resolve("DMI"), TABLE);
        List<FirmwareReading> readings = new FirmwareReader().read(List.of(folder));
        assertEquals(1, readings.size());
        assertEquals(Optional.of("3.2"), ((FirmwareReading.OfTable) readings.get(0)).table().version());
        assertEquals(List.of(), readings.get(0).problems());
    }

    @Test
    void aWrongSumInTheEntryPointIsSaid() throws IOException {
        byte[] entry = entryPoint();
        entry[9]++;
        Files.write(folder.resolve("smbios_entry_point"), entry);
        Files.write(folder.resolve("DMI"), TABLE);
        assertTrue(new FirmwareReader().read(List.of(folder)).get(0).problems().toString().contains("checksum"));
    }

    @Test
    void anArchiveHoldsManyMachinesInTheOrderOfTheirNames() throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        entries.put("b/DMI", TABLE);
        entries.put("b/smbios_entry_point", entryPoint());
        entries.put("a.bin", TABLE);
        entries.put("notes.txt", "nothing of use".getBytes());
        List<FirmwareReading> readings = new FirmwareReader().read(List.of(zip("fleet.zip", entries)));
        assertEquals(List.of("a.bin", "b/DMI", "notes.txt"), readings.stream().map(FirmwareReading::place)
                .map(place -> place.substring(place.indexOf('!') + 1)).toList());
        assertTrue(readings.get(0) instanceof FirmwareReading.OfTable);
        assertTrue(readings.get(2) instanceof FirmwareReading.Refused);
    }

    @Test
    void anArchiveThatUnpacksToTooMuchIsStoppedAndSaidSo() throws IOException {
        Path bomb = folder.resolve("bomb.zip");
        byte[] megabyte = new byte[1 << 20];
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(bomb))) {
            zip.putNextEntry(new ZipEntry("zeros"));
            for (int i = 0; i < 40; i++) {
                zip.write(megabyte);
            }
        }
        assertTrue(Files.size(bomb) < 1 << 20, "a small file");
        List<FirmwareReading> readings = new FirmwareReader().read(List.of(bomb));
        assertEquals(1, readings.size());
        assertTrue(readings.get(0).problems().toString().contains("unpacks to too much"), readings.toString());
    }

    @Test
    void anArchiveInAnArchiveAndADamagedOneAreRefused() throws IOException {
        byte[] inner = Files.readAllBytes(zip("inner.zip", Map.of("a.bin", TABLE)));
        Path outer = zip("outer.zip", Map.of("inner.zip", inner));
        assertTrue(new FirmwareReader().read(List.of(outer)).get(0).problems().toString().contains("unpack it first"));
        Path cut = folder.resolve("cut.zip");
        try (OutputStream out = Files.newOutputStream(cut)) {
            out.write(inner, 0, 50);
        }
        assertTrue(new FirmwareReader().read(List.of(cut)).get(0) instanceof FirmwareReading.Refused);
    }

    private Path zip(String name, Map<String, byte[]> entries) throws IOException {
        Path file = folder.resolve(name);
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        return file;
    }

    /** DSP0134, section 5.2.2. */
    private static byte[] entryPoint() {
        byte[] entry = {'_', 'S', 'M', '3', '_', 0, 0x18, 3, 2, 0, 1, 0, 0, 0x10, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
        int sum = 0;
        for (byte one : entry) {
            sum += one;
        }
        entry[5] = (byte) -sum;
        return entry;
    }
}
