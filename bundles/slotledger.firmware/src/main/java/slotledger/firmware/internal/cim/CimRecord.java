package slotledger.firmware.internal.cim;

import java.util.Map;
import java.util.TreeMap;

/**
 * One instance of a class.
 *
 * @param values by the names of properties, whose capitals don't count
 */
record CimRecord(Map<String, String> values) {

    CimRecord {
        Map<String, String> copy = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        copy.putAll(values);
        values = copy;
    }

    /** What stands there; blank where nothing does. */
    String get(String property) {
        return values.getOrDefault(property, "");
    }

    boolean isArray() {
        return values.containsKey("MemoryDevices");
    }

    boolean isDevice() {
        return values.containsKey("Capacity") && !isArray()
                && (values.containsKey("DeviceLocator") || values.containsKey("FormFactor")
                        || values.containsKey("BankLabel") || values.containsKey("PartNumber"));
    }
}
