package slotledger.firmware.smbios;

import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;

/**
 * Facts of a memory device, which is a slot with what is in it, or memory that is soldered down: DSP0134, section 7.18.
 * Rates are in MT/s (older tables print the same number as MHz), voltages in mV, widths in bits.
 */
public final class DeviceFacts {

    public static final Fact<Integer> ARRAY = Fact.number("Array Handle");
    public static final Fact<Integer> TOTAL_WIDTH = Fact.number("Total Width");
    public static final Fact<Integer> DATA_WIDTH = Fact.number("Data Width");
    /** Nothing where the slot is empty. */
    public static final Fact<ByteCount> SIZE = Fact.size("Size");
    public static final Fact<FormFactor> FORM = new Fact<>("Form Factor", FormFactor.class);
    /** Devices of one set must be filled together; 0 for none. */
    public static final Fact<Integer> SET = Fact.number("Set");
    public static final Fact<String> LOCATOR = Fact.text("Locator");
    public static final Fact<String> BANK_LOCATOR = Fact.text("Bank Locator");
    public static final Fact<MemoryType> TYPE = new Fact<>("Type", MemoryType.class);
    public static final Fact<TypeDetail> DETAIL = new Fact<>("Type Detail", TypeDetail.class);
    public static final Fact<Integer> RATE = Fact.number("Speed");
    public static final Fact<String> MAKER = Fact.text("Manufacturer");
    public static final Fact<String> SERIAL = Fact.text("Serial Number");
    public static final Fact<String> ASSET_TAG = Fact.text("Asset Tag");
    public static final Fact<String> PART = Fact.text("Part Number");
    public static final Fact<Integer> RANKS = Fact.number("Rank");
    public static final Fact<Integer> CONFIGURED_RATE = Fact.number("Configured Memory Speed");
    public static final Fact<Integer> LOWEST_VOLTAGE = Fact.number("Minimum Voltage");
    public static final Fact<Integer> HIGHEST_VOLTAGE = Fact.number("Maximum Voltage");
    public static final Fact<Integer> CONFIGURED_VOLTAGE = Fact.number("Configured Voltage");
    public static final Fact<MemoryTechnology> TECHNOLOGY =
            new Fact<>("Memory Technology", MemoryTechnology.class);
    public static final Fact<String> MODULE_MAKER = Fact.text("Module Manufacturer ID");
    public static final Fact<ByteCount> NON_VOLATILE_SIZE = Fact.size("Non-Volatile Size");
    public static final Fact<ByteCount> VOLATILE_SIZE = Fact.size("Volatile Size");
    public static final Fact<ByteCount> CACHE_SIZE = Fact.size("Cache Size");
    public static final Fact<ByteCount> LOGICAL_SIZE = Fact.size("Logical Size");

    private DeviceFacts() {
    }
}
