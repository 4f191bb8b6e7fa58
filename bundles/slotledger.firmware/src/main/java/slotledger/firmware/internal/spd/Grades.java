package slotledger.firmware.internal.spd;

import java.util.OptionalInt;
import slotledger.firmware.spd.SpdType;

/**
 * Standard grades in MT/s of each kind of memory, and which of them a cycle time means: the standards store picoseconds
 * cut to whole ones, so that 357 ps, which is 5602 MT/s, means 5600. Sources: JESD79 to JESD79-5, JESD209-3 to -5.
 */
final class Grades {

    private static final double NEAR = 0.012;
    private static final long PS_MT = 1_000_000;

    private Grades() {
    }

    /** Data transferred in one cycle of the clock whose time the SPD gives. */
    private static int perCycle(SpdType type, int cycle) {
        return switch (type) {
            case FPM, EDO, SDR -> 1;
            case DDR, DDR2, DDR2_FB, DDR2_FB_PROBE, DDR3, DDR4, DDR4E, LPDDR3, LPDDR4, LPDDR4X, DDR5, NVDIMM_P -> 2;
            // Images give the clock of commands, or since revision 1.1 that of data, which is four times as fast
            // (JESD209-5): no grade has a cycle of commands below 750 ps, or one of data above 625.
            case LPDDR5, LPDDR5X -> cycle < 700 ? 2 : 8;
        };
    }

    private static int[] grades(SpdType type) {
        return switch (type) {
            case FPM, EDO -> new int[0];
            case SDR -> new int[] {66, 83, 100, 125, 133, 143, 150, 166};
            case DDR -> new int[] {200, 266, 333, 400, 433, 466, 500};
            case DDR2, DDR2_FB, DDR2_FB_PROBE -> new int[] {400, 533, 667, 800, 1066};
            case DDR3 -> new int[] {800, 1066, 1333, 1600, 1866, 2133};
            case DDR4, DDR4E -> new int[] {1600, 1866, 2133, 2400, 2666, 2933, 3200};
            case LPDDR3 -> new int[] {800, 1066, 1333, 1600, 1866, 2133};
            case LPDDR4, LPDDR4X -> new int[] {1600, 2133, 2400, 2666, 3200, 3733, 4266};
            case DDR5, NVDIMM_P -> new int[] {3200, 3600, 4000, 4400, 4800, 5200, 5600, 6000, 6400, 6800, 7200, 7600,
                8000, 8400, 8800};
            case LPDDR5, LPDDR5X -> new int[] {3200, 4267, 5500, 6000, 6400, 7500, 8533, 9600, 10667};
        };
    }

    /** The rate that a cycle time gives by arithmetic. */
    static int plain(SpdType type, int cycle) {
        return cycle <= 0 ? 0 : (int) Math.round((double) PS_MT * perCycle(type, cycle) / cycle);
    }

    /** The standard grade that a cycle time means. */
    static OptionalInt standard(SpdType type, int cycle) {
        if (cycle <= 0) {
            return OptionalInt.empty();
        }
        double rate = (double) PS_MT * perCycle(type, cycle) / cycle;
        int best = 0;
        for (int grade : grades(type)) {
            if (Math.abs(rate - grade) < Math.abs(rate - best)) {
                best = grade;
            }
        }
        return best > 0 && Math.abs(rate - best) <= best * NEAR ? OptionalInt.of(best) : OptionalInt.empty();
    }

    /** The standard grade, or plain arithmetic where there is none: of profiles, which keep to no list. */
    static int near(SpdType type, int cycle) {
        return standard(type, cycle).orElse(plain(type, cycle));
    }
}
