package slotledger.firmware.smbios;

import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;

/** Facts of an array of memory devices: DSP0134, section 7.17. */
public final class ArrayFacts {

    public static final Fact<ArrayLocation> LOCATION = new Fact<>("Location", ArrayLocation.class);
    public static final Fact<ArrayUse> USE = new Fact<>("Use", ArrayUse.class);
    public static final Fact<ErrorCorrection> CORRECTION =
            new Fact<>("Error Correction Type", ErrorCorrection.class);
    public static final Fact<ByteCount> LARGEST = Fact.size("Maximum Capacity");
    public static final Fact<Integer> DEVICES = Fact.number("Number Of Devices");

    private ArrayFacts() {
    }
}
