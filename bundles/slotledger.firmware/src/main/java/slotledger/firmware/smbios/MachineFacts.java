package slotledger.firmware.smbios;

import slotledger.firmware.fact.Fact;

/** Facts of firmware, system, board, chassis and processor: DSP0134, sections 7.1 to 7.5. */
public final class MachineFacts {

    /** Of the BIOS. */
    public static final Fact<String> VENDOR = Fact.text("Vendor");
    public static final Fact<String> RELEASED = Fact.text("Release Date");
    /** Of system, board, chassis and processor. */
    public static final Fact<String> MAKER = Fact.text("Manufacturer");
    public static final Fact<String> PRODUCT = Fact.text("Product Name");
    public static final Fact<String> VERSION = Fact.text("Version");
    public static final Fact<String> SERIAL = Fact.text("Serial Number");
    public static final Fact<String> ASSET_TAG = Fact.text("Asset Tag");
    public static final Fact<String> UUID = Fact.text("UUID");
    public static final Fact<String> SKU = Fact.text("SKU Number");
    public static final Fact<String> FAMILY = Fact.text("Family");
    /** Of a chassis, in the words of DSP0134, section 7.4.1. */
    public static final Fact<String> CHASSIS_TYPE = Fact.text("Type");
    /** Of the system, where a list tells it: the name that the machine has in its network. */
    public static final Fact<String> HOST = Fact.text("Computer Name");
    /** Of a processor: where it sits, and how many cores run. */
    public static final Fact<String> SOCKET = Fact.text("Socket Designation");
    public static final Fact<Integer> CORES = Fact.number("Core Count");
    public static final Fact<Integer> THREADS = Fact.number("Thread Count");

    private MachineFacts() {
    }
}
