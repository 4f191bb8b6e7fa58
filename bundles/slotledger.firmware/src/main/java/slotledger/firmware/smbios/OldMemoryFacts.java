package slotledger.firmware.smbios;

import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;

/** Facts of memory controller and modules as tables before version 2.1 tell them: DSP0134, sections 7.6 and 7.7. */
public final class OldMemoryFacts {

    /** Of a controller: the largest module in each of its slots. */
    public static final Fact<ByteCount> LARGEST_MODULE = Fact.size("Maximum Memory Module Size");
    public static final Fact<Integer> SLOTS = Fact.number("Associated Memory Slots");
    /** Of a module. */
    public static final Fact<String> SOCKET = Fact.text("Socket Designation");
    /** In ns. */
    public static final Fact<Integer> ACCESS_TIME = Fact.number("Current Speed");
    public static final Fact<ByteCount> INSTALLED = Fact.size("Installed Size");
    public static final Fact<ByteCount> ENABLED = Fact.size("Enabled Size");

    private OldMemoryFacts() {
    }
}
