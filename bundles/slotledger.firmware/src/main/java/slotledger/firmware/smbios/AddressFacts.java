package slotledger.firmware.smbios;

import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;

/** Facts of the addresses of an array or a device: DSP0134, sections 7.20 and 7.21. */
public final class AddressFacts {

    public static final Fact<ByteCount> START = Fact.size("Starting Address");
    /** The last byte. */
    public static final Fact<ByteCount> END = Fact.size("Ending Address");
    public static final Fact<Integer> ARRAY = Fact.number("Physical Array Handle");
    public static final Fact<Integer> DEVICE = Fact.number("Physical Device Handle");
    public static final Fact<Integer> MAPPED = Fact.number("Memory Array Mapped Address Handle");
    public static final Fact<Integer> PARTITION_WIDTH = Fact.number("Partition Width");
    public static final Fact<Integer> ROW = Fact.number("Partition Row Position");
    public static final Fact<Integer> INTERLEAVE_POSITION = Fact.number("Interleave Position");
    public static final Fact<Integer> INTERLEAVE_DEPTH = Fact.number("Interleaved Data Depth");

    private AddressFacts() {
    }
}
