package slotledger.firmware.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.fact.Coded;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;
import slotledger.testkit.OutsideData;

/** Outside check: the JSON lists that another decoder made of six real tables. */
class DecodedListsTest {

    private static final Pattern DEVICES = Pattern.compile("\"MemoryDevices\": \\[(.*?)\\n\\t]", Pattern.DOTALL);
    private static final Pattern DEVICE = Pattern.compile("\\{[^{}]*}");

    @Test
    void everyDeviceHasTheNumbersOfTheOtherDecodersList() throws IOException {
        int devices = 0;
        try (Stream<Path> files = Files.list(OutsideData.file("smbios/siderolabs-go-smbios"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
                Matcher list = DEVICES.matcher(Files.readString(file));
                if (!list.find()) {
                    continue;
                }
                List<Structure> decoded = table(Path.of(file.toString().replace(".json", ".dmi")))
                        .all(StructureKind.DEVICE);
                List<String> listed = DEVICE.matcher(list.group(1)).results().map(one -> one.group()).toList();
                assertEquals(listed.size(), decoded.size(), file.toString());
                for (int i = 0; i < listed.size(); i++) {
                    compare(file + " " + i, decoded.get(i), listed.get(i));
                    devices++;
                }
            }
        }
        assertEquals(78, devices);
    }

    private static void compare(String place, Structure device, String json) {
        number(place, json, "TotalWidth", device, DeviceFacts.TOTAL_WIDTH);
        number(place, json, "DataWidth", device, DeviceFacts.DATA_WIDTH);
        number(place, json, "Speed", device, DeviceFacts.RATE);
        number(place, json, "ConfiguredMemorySpeed", device, DeviceFacts.CONFIGURED_RATE);
        number(place, json, "ConfiguredVoltage", device, DeviceFacts.CONFIGURED_VOLTAGE);
        number(place, json, "FormFactor", device, DeviceFacts.FORM);
        number(place, json, "MemoryType", device, DeviceFacts.TYPE);
        number(place, json, "PhysicalMemoryArrayHandle", device, DeviceFacts.ARRAY);
        int size = Integer.parseInt(value(json, "Size"));
        if (size < 0x7FFF) {
            assertEquals(size, device.get(DeviceFacts.SIZE).orElseThrow().bytes() >> 20, place);
        }
        assertEquals(value(json, "DeviceLocator").strip(), device.facts().raw(DeviceFacts.LOCATOR).orElse("").strip(),
                place);
        assertEquals(value(json, "PartNumber").strip(), device.facts().raw(DeviceFacts.PART).orElse("").strip(), place);
    }

    private static void number(String place, String json, String key, Structure device, Fact<?> fact) {
        int listed = Integer.parseInt(value(json, key));
        Object ours = device.get(fact).orElse(null);
        // What the table says is unknown has no value here, and its code in the list: 0, 1, 2 or all ones.
        if (ours != null || listed > 2 && listed != 0xFFFF) {
            assertEquals(listed, ours instanceof Coded coded ? coded.code() : ours, place + ": " + key);
        }
    }

    private static String value(String json, String key) {
        Matcher matcher = Pattern.compile("\"" + key + "\": \"?([^\"\\n,]*)").matcher(json);
        return matcher.find() ? matcher.group(1) : "0";
    }

    private static SmbiosTable table(Path file) throws IOException {
        return ((FirmwareReading.OfTable) new FirmwareReader().read(List.of(file)).get(0)).table();
    }
}
