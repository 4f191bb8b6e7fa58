package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.testkit.OutsideData;

class KitFilesTest {

    /** A dump has its entry point first, and the table from here on. */
    private static final int TABLE_AT = 0x20;

    @TempDir
    private Path folder;

    private Path collect(byte[] table, String... name) throws Exception {
        KitFiles.write(folder.resolve("kit"), true);
        Path source = Files.write(folder.resolve("DMI"), table);
        Path share = folder.resolve("share");
        List<String> command = new ArrayList<>(List.of("sh",
                folder.resolve("kit/collect-linux.sh").toString(), share.toString()));
        command.addAll(List.of(name));
        ProcessBuilder process = new ProcessBuilder(command).redirectErrorStream(true);
        process.environment().put("SLOTLEDGER_TABLE", source.toString());
        process.environment().put("SLOTLEDGER_IDS", folder.resolve("ids").toString());
        Process run = process.start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, run.waitFor(), said);
        return Path.of(said.strip());
    }

    private static byte[] structure(int type, int length, String... texts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(type);
        bytes.write(length);
        for (int i = 2; i < length; i++) {
            bytes.write(i == 2 ? type : i == 4 && texts.length > 0 ? 1 : 0);
        }
        for (String text : texts) {
            bytes.writeBytes(text.getBytes(StandardCharsets.ISO_8859_1));
            bytes.write(0);
        }
        bytes.write(0);
        if (texts.length == 0) {
            bytes.write(0);
        }
        return bytes.toByteArray();
    }

    private static byte[] table() {
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        table.writeBytes(structure(1, 27, "Kestrin"));
        table.writeBytes(structure(11, 5, "Property of Ida Example"));
        table.writeBytes(structure(17, 40));
        table.writeBytes(structure(127, 4));
        return table.toByteArray();
    }

    private static SmbiosTable read(Path file) throws Exception {
        return ((FirmwareReading.OfTable) new FirmwareReader().read(List.of(file)).get(0)).table();
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void theScriptKeepsWhatMemoryNeedsAndNothingElse() throws Exception {
        Path file = collect(table(), "K-17");
        assertEquals("K-17.txt", file.getFileName().toString());
        String text = Files.readString(file);
        assertFalse(text.contains("50 72 6f 70 65 72 74 79"), "the owner's text stays out");
        assertEquals(List.of(1, 17), read(file).structures().stream().map(one -> one.kind().type()).toList());
        try (var files = Files.list(file.getParent())) {
            assertEquals(1, files.count(), "nothing half-written stays behind");
        }
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void theFileIsNamedByTheSerialNumberUnlessThatIsAPlaceholder() throws Exception {
        Path ids = Files.createDirectory(folder.resolve("ids"));
        Files.writeString(ids.resolve("product_serial"), "S 47/11\n");
        assertEquals("S_47_11.txt", collect(table()).getFileName().toString());
        Files.writeString(ids.resolve("product_serial"), "Default string\n");
        Files.writeString(ids.resolve("chassis_asset_tag"), "K-18\n");
        assertEquals("K-18.txt", collect(table()).getFileName().toString());
    }

    /** Outside check: tables of real machines, read as they are and as the script collects them. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void whatTheScriptCollectsOfRealMachinesReadsLikeTheirTables() throws Exception {
        Path dumps = OutsideData.file("smbios/normalized");
        int compared = 0;
        try (var files = Files.list(dumps)) {
            for (Path dump : files.filter(each -> each.toString().endsWith(".bin")).sorted().limit(12).toList()) {
                byte[] bytes = Files.readAllBytes(dump);
                byte[] table = Arrays.copyOfRange(bytes, TABLE_AT, bytes.length);
                List<Structure> whole = read(dump).memoryDevices();
                List<Structure> collected = read(collect(table, "m" + compared)).memoryDevices();
                assertEquals(whole.size(), collected.size(), dump.toString());
                assertEquals(whole.stream().map(one -> one.facts().all().toString()).toList(),
                        collected.stream().map(one -> one.facts().all().toString()).toList(), dump.toString());
                compared++;
            }
        }
        assertTrue(compared > 5, "dumps compared: " + compared);
    }

    @Test
    void aKitIsNotWrittenOverFilesOfOthers() throws Exception {
        Files.writeString(Files.createDirectory(folder.resolve("kit")).resolve("mine.txt"), "mine");
        assertThrows(DeskException.class, () -> KitFiles.write(folder.resolve("kit"), true));
    }

    @Test
    void thePageNamesBothScripts() throws Exception {
        List<Path> files = KitFiles.write(folder.resolve("kit"), false);
        assertEquals(List.of("README.txt", "collect-linux.sh", "collect-windows.ps1"),
                files.stream().map(file -> file.getFileName().toString()).toList());
        String page = Files.readString(files.get(0));
        assertTrue(page.contains("collect-linux.sh") && page.contains("collect-windows.ps1"));
    }
}
