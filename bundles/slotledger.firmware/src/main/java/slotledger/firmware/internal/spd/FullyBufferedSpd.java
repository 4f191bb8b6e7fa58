package slotledger.firmware.internal.spd;

import java.util.List;
import slotledger.firmware.spd.ModuleShape;
import slotledger.firmware.spd.Profile;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdType;

/** Fully buffered DDR2 modules: JESD21-C, section 4.1.2.7. */
final class FullyBufferedSpd {

    private static final int DATA_BITS = 64;
    private static final int CHECK_BITS = 8;

    private FullyBufferedSpd() {
    }

    static List<Profile> decode(Image image, SpdType type) {
        SpdDecoder.revision(image);
        image.fact(SpdFacts.SHAPE, 2, ModuleShape.FB_DIMM);
        int banks = 4 << image.bits(4, 1, 0);
        int columns = image.bits(4, 4, 2) + 9;
        int rows = image.bits(4, 7, 5) + 12;
        int width = 4 << image.bits(7, 2, 0);
        int ranks = image.bits(7, 5, 3);
        image.fact(SpdFacts.RANKS, 7, ranks);
        image.fact(SpdFacts.LOGICAL_RANKS, 7, ranks);
        image.fact(SpdFacts.CHIP_WIDTH, 7, width);
        image.fact(SpdFacts.DATA_WIDTH, 7, DATA_BITS);
        image.fact(SpdFacts.CHECK_WIDTH, 7, CHECK_BITS);
        int density = (int) ((1L << rows + columns) * banks * width >> 20);
        image.fact(SpdFacts.DENSITY, 4, density);
        SpdDecoder.capacity(image, 4, density, DATA_BITS, width, ranks);
        // Bytes 9 and 10 are dividend and divisor of the time base in ns.
        SpdDecoder.cycle(image, type, 11,
                image.at(10) == 0 ? 0 : image.at(11) * 1000 * image.at(9) / image.at(10));
        image.fact(SpdFacts.VOLTAGE, 3, 1800);
        image.checkCrc(0, image.bits(0, 7, 7) == 1 ? 117 : 126, 126);
        image.maker(SpdFacts.MAKER, 117);
        image.made(120, 2004);
        image.serial(122);
        image.part(128, 18);
        image.maker(SpdFacts.CHIP_MAKER, 148);
        return List.of();
    }
}
