package slotledger.firmware.internal.spd;

import slotledger.firmware.spd.ModuleShape;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdType;

/**
 * What an image says that can't be true together. A right checksum is no proof of honesty: who rewrites bytes writes a
 * checksum that fits.
 */
final class SpdChecks {

    private SpdChecks() {
    }

    static void check(Image image) {
        var facts = image.facts().build();
        int rate = facts.get(SpdFacts.RATE).orElse(0);
        facts.get(SpdFacts.PART).flatMap(part -> PartRate.of(part)).filter(printed -> rate > 0 && printed != rate)
                .ifPresent(printed -> image.contradiction(
                        "the part number %s means %d MT/s, the timing says %d".formatted(
                                facts.get(SpdFacts.PART).orElse(""), printed, rate),
                        "both to agree; read the label, the image may have been rewritten"));
        int check = facts.get(SpdFacts.CHECK_WIDTH).orElse(0);
        ModuleShape shape = facts.get(SpdFacts.SHAPE).orElse(null);
        boolean needsCheck = shape == ModuleShape.SO_UDIMM_72 || shape == ModuleShape.SO_RDIMM_72;
        if (needsCheck && check == 0) {
            image.contradiction(shape.text() + " without check bits", "72 bits");
        }
        int chip = facts.get(SpdFacts.CHIP_WIDTH).orElse(0);
        int density = facts.get(SpdFacts.DENSITY).orElse(0);
        facts.get(SpdFacts.TYPE).ifPresent(type -> {
            int most = largestDie(type);
            if (density > most) {
                image.contradiction("a die of %d Mbit".formatted(density),
                        "at most %d Mbit in %s".formatted(most, type.text()));
            }
            if (chip > 32) {
                image.contradiction("a chip %d bits wide".formatted(chip), "4 to 32 bits");
            }
        });
    }

    /** The largest that the standards name: JESD79 series, and JESD209 series for LPDDR; in Mbit. */
    private static int largestDie(SpdType type) {
        return switch (type) {
            case FPM, EDO -> 64;
            case SDR -> 512;
            case DDR -> 1024;
            case DDR2, DDR2_FB, DDR2_FB_PROBE -> 4096;
            case DDR3 -> 8 * 1024;
            case DDR4, DDR4E -> 16 * 1024;
            case LPDDR3, LPDDR4, LPDDR4X, LPDDR5, LPDDR5X -> 32 * 1024;
            case DDR5, NVDIMM_P -> 64 * 1024;
        };
    }
}
