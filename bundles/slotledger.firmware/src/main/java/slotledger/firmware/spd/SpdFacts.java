package slotledger.firmware.spd;

import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Fact;

/** Facts of a module or of soldered memory. Cycle times are in ps, rates in MT/s, voltages in mV, widths in bits. */
public final class SpdFacts {

    public static final Fact<SpdType> TYPE = new Fact<>("Type", SpdType.class);
    public static final Fact<String> REVISION = Fact.text("SPD revision");
    /** UDIMM, RDIMM, SO-DIMM and so on. */
    public static final Fact<ModuleShape> SHAPE = new Fact<>("Module", ModuleShape.class);
    /** Without check bits. */
    public static final Fact<ByteCount> CAPACITY = Fact.size("Capacity");
    /** As the module's label counts them: package ranks. */
    public static final Fact<Integer> RANKS = Fact.number("Ranks");
    /** More than the ranks where dies are stacked (3DS). */
    public static final Fact<Integer> LOGICAL_RANKS = Fact.number("Logical ranks");
    public static final Fact<Integer> CHIP_WIDTH = Fact.number("Chip width");
    public static final Fact<Integer> DATA_WIDTH = Fact.number("Data width");
    public static final Fact<Integer> CHECK_WIDTH = Fact.number("Check bits");
    /** Of one die, in Mbit. */
    public static final Fact<Integer> DENSITY = Fact.number("Chip density");
    public static final Fact<Integer> DIES = Fact.number("Dies a package");
    /** The shortest that the memory promises without a profile. */
    public static final Fact<Integer> CYCLE = Fact.number("Cycle time");
    /** The standard grade that the cycle time means. */
    public static final Fact<Integer> RATE = Fact.number("Base rate");
    public static final Fact<Integer> VOLTAGE = Fact.number("Voltage");
    public static final Fact<String> MAKER = Fact.text("Module maker");
    public static final Fact<String> CHIP_MAKER = Fact.text("Chip maker");
    public static final Fact<String> PART = Fact.text("Part number");
    public static final Fact<String> SERIAL = Fact.text("Serial number");
    /** Year and week: "2019 week 07". */
    public static final Fact<String> MADE = Fact.text("Made");

    private SpdFacts() {
    }
}
