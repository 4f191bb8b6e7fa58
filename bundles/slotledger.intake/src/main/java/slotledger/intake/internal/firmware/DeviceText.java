package slotledger.intake.internal.firmware;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.Structure;

/** Memory devices in words. */
final class DeviceText {

    private DeviceText() {
    }

    /** "SYSTEM ROM, 2 MB, Flash" */
    static String of(Structure device) {
        return Stream.of(device.get(DeviceFacts.LOCATOR), device.get(DeviceFacts.SIZE).map(ByteCount::toString),
                device.get(DeviceFacts.TYPE).map(MemoryType::text)).flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    static String part(Structure device) {
        return text(device, DeviceFacts.PART);
    }

    /** Serial numbers of a kind nobody gives are none: zeros, or one digit over and over. */
    static String serial(Structure device) {
        String serial = text(device, DeviceFacts.SERIAL);
        return List.of("0", "F").stream().anyMatch(digit -> serial.replace(digit, "").isEmpty()) ? "" : serial;
    }

    private static String text(Structure device, Fact<String> fact) {
        return device.get(fact).map(String::strip).orElse("");
    }
}
