package slotledger.firmware.internal.cim;

import java.util.Map;
import java.util.TreeMap;

/**
 * One instance of a class; of which one is told by its properties, since lists often leave its name out.
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

    /** Win32_ComputerSystem. */
    boolean isSystem() {
        // Whole records of boards, enclosures, arrays and modules have these two as well.
        return values.containsKey("Manufacturer") && values.containsKey("Model") && !isDevice() && !isArray()
                && !isChassis() && !isBoard();
    }

    /** Win32_ComputerSystemProduct. */
    boolean isProduct() {
        return values.containsKey("IdentifyingNumber") && values.containsKey("Vendor");
    }

    /** Win32_SystemEnclosure. */
    boolean isChassis() {
        return values.containsKey("SMBIOSAssetTag") || values.containsKey("ChassisTypes");
    }

    /** Win32_BaseBoard. */
    boolean isBoard() {
        return values.containsKey("Product") && values.containsKey("Manufacturer");
    }

    /** Win32_Processor. */
    boolean isProcessor() {
        return values.containsKey("NumberOfCores") && values.containsKey("Name");
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
