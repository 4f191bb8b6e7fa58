package slotledger.firmware.internal.spd;

import java.util.List;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.spd.ModuleShape;
import slotledger.firmware.spd.Profile;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdType;

/** FPM, EDO, SDR, DDR and DDR2: JESD21-C, section 4.1.2.4 with appendices D and E, and 4.1.2.10. */
final class ParallelSpd {

    /** Tenths of a nanosecond that only this standard has: byte 9 of DDR2. */
    private static final int[] ODD_TENTHS = {250, 333, 667, 750, 875};
    private static final int SO_DIMM_WIDTH_LIMIT = 144;

    private ParallelSpd() {
    }

    static List<Profile> decode(Image image, SpdType type) {
        boolean second = type == SpdType.DDR2;
        image.fact(SpdFacts.REVISION, 62, image.bits(62, 7, 4) + "." + image.bits(62, 3, 0));
        shape(image, type);
        int ranks = second ? image.bits(5, 2, 0) + 1 : image.at(5);
        int width = image.word(6) == 0xFFFF || second ? image.at(6) : image.word(6);
        boolean corrects = (image.at(11) & 2) != 0 || !second && image.at(11) == 1;
        int check = corrects && width % 9 == 0 ? width / 9 : width == 72 ? 8 : 0;
        image.fact(SpdFacts.RANKS, 5, ranks);
        image.fact(SpdFacts.LOGICAL_RANKS, 5, ranks);
        image.fact(SpdFacts.DATA_WIDTH, 6, width - check);
        image.fact(SpdFacts.CHECK_WIDTH, 11, check);
        int chip = second ? image.at(13) : image.bits(13, 6, 0);
        if (chip > 0) {
            image.fact(SpdFacts.CHIP_WIDTH, 13, chip);
        }
        capacity(image, type, width - check, ranks, chip);
        int cycle = cycle(image.at(9));
        if (type == SpdType.FPM || type == SpdType.EDO) {
            image.facts().unknown(SpdFacts.CYCLE, image.hex(9, 1));
        } else {
            SpdDecoder.cycle(image, type, 9, cycle);
        }
        voltage(image);
        image.checkSum();
        image.oldMaker(64);
        image.part(73, 18);
        image.made(93, second ? 2003 : type == SpdType.DDR ? 1999 : 1993);
        image.serial(95);
        return List.of();
    }

    private static void shape(Image image, SpdType type) {
        if (type == SpdType.DDR2) {
            ModuleShape shape = switch (image.at(20)) {
                case 0x01 -> ModuleShape.RDIMM;
                case 0x02 -> ModuleShape.UDIMM;
                case 0x04 -> ModuleShape.SO_DIMM;
                case 0x06 -> ModuleShape.SO_RDIMM_72;
                case 0x07 -> ModuleShape.SO_UDIMM_72;
                case 0x08 -> ModuleShape.MICRO_DIMM;
                case 0x10 -> ModuleShape.MINI_RDIMM;
                case 0x20 -> ModuleShape.MINI_UDIMM;
                default -> null;
            };
            if (shape == null) {
                image.unknown(SpdFacts.SHAPE, 20, "a module type of JESD21-C 4.1.2.10");
            } else {
                image.fact(SpdFacts.SHAPE, 20, shape);
            }
        } else if ((image.at(21) & 2) != 0) {
            image.fact(SpdFacts.SHAPE, 21, ModuleShape.RDIMM);
        } else if (type == SpdType.SDR && (image.at(21) & 1) != 0) {
            image.fact(SpdFacts.SHAPE, 21, ModuleShape.BUFFERED_DIMM);
        } else {
            // Nothing in the image tells a DIMM without registers from an SO-DIMM.
            image.facts().unknown(SpdFacts.SHAPE, image.hex(21, 1));
        }
    }

    /** The lower digit's half of rows and columns is that of rank 1, the upper that of rank 2 where it differs. */
    private static void capacity(Image image, SpdType type, int width, int ranks, int chip) {
        int banks = type == SpdType.FPM || type == SpdType.EDO ? 1 : image.at(17);
        int rowBits = type == SpdType.DDR2 ? image.bits(3, 4, 0) : image.bits(3, 3, 0);
        int shift = rowBits + image.bits(4, 3, 0);
        if (width <= 0 || width > SO_DIMM_WIDTH_LIMIT || ranks < 1 || ranks > 8 || shift < 10 || shift > 32
                || banks < 1 || banks > 64) {
            image.facts().unknown(SpdFacts.CAPACITY, image.hex(3, 4));
            image.problem(3, "rows %d, columns %d, ranks %d, width %d, banks %d".formatted(image.bits(3, 3, 0),
                    image.bits(4, 3, 0), ranks, width, banks), "values that give a capacity");
            return;
        }
        long bytes = (1L << shift) * banks * width / 8 * ranks;
        boolean uneven = type != SpdType.DDR2 && ranks == 2 && (image.at(3) > 0xF || image.at(4) > 0xF);
        if (uneven) {
            int rows = image.bits(3, 7, 4) == 0 ? image.bits(3, 3, 0) : image.bits(3, 7, 4);
            int columns = image.bits(4, 7, 4) == 0 ? image.bits(4, 3, 0) : image.bits(4, 7, 4);
            bytes = ((1L << shift) + (1L << rows + columns)) * banks * width / 8;
        }
        image.facts().known(SpdFacts.CAPACITY, image.hex(3, 4), new ByteCount(bytes));
        if (chip > 0 && !uneven) {
            image.facts().known(SpdFacts.DENSITY, image.hex(3, 2), (int) ((1L << shift) * banks * chip >> 20));
        }
    }

    /** Nanoseconds and tenths of them as two digits, in ps. */
    static int cycle(int digits) {
        int tenths = digits & 0xF;
        int picoseconds = tenths < 10 ? tenths * 100 : tenths - 10 < ODD_TENTHS.length ? ODD_TENTHS[tenths - 10] : 0;
        return (digits >> 4) * 1000 + picoseconds;
    }

    private static void voltage(Image image) {
        switch (image.at(8)) {
            case 0 -> image.fact(SpdFacts.VOLTAGE, 8, 5000);
            case 1, 2, 3 -> image.fact(SpdFacts.VOLTAGE, 8, 3300);
            case 4 -> image.fact(SpdFacts.VOLTAGE, 8, 2500);
            case 5 -> image.fact(SpdFacts.VOLTAGE, 8, 1800);
            default -> image.unknown(SpdFacts.VOLTAGE, 8, "an interface from 0 to 5");
        }
    }
}
