package slotledger.firmware.internal.spd;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.firmware.spd.ModuleShape;
import slotledger.firmware.spd.Profile;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdType;

/** DDR5: JESD400-5. */
final class Ddr5Spd {

    private static final int[] DENSITIES_GBIT = {0, 4, 8, 12, 16, 24, 32, 48, 64};
    private static final int[] DIES = {1, 1, 2, 4, 8, 16};
    private static final int CRC_AT = 510;
    private static final int XMP_AT = 640;
    private static final int XMP_PROFILE_SIZE = 64;
    private static final int EXPO_AT = 832;

    private Ddr5Spd() {
    }

    static List<Profile> decode(Image image, SpdType type) {
        SpdDecoder.revision(image);
        shape(image);
        int density = image.bits(4, 4, 0) < DENSITIES_GBIT.length ? DENSITIES_GBIT[image.bits(4, 4, 0)] * 1024 : 0;
        int dies = image.bits(4, 7, 5) < DIES.length ? DIES[image.bits(4, 7, 5)] : 0;
        int width = 4 << image.bits(6, 7, 5);
        int ranks = image.bits(234, 5, 3) + 1;
        int channels = 1 << image.bits(235, 6, 5);
        int data = (8 << image.bits(235, 2, 0)) * channels;
        int check = switch (image.bits(235, 4, 3)) {
            case 1 -> 4 * channels;
            case 2 -> 8 * channels;
            default -> 0;
        };
        image.fact(SpdFacts.DENSITY, 4, density);
        image.fact(SpdFacts.DIES, 4, dies);
        image.fact(SpdFacts.CHIP_WIDTH, 6, width);
        image.fact(SpdFacts.RANKS, 234, ranks);
        image.fact(SpdFacts.LOGICAL_RANKS, 234, ranks * Math.max(1, dies));
        image.fact(SpdFacts.DATA_WIDTH, 235, data);
        image.fact(SpdFacts.CHECK_WIDTH, 235, check);
        SpdDecoder.capacity(image, 4, density, data, width, (long) ranks * dies);
        if (image.bits(234, 6, 6) == 1) {
            image.problem(234, "its ranks are not alike", "like ranks; the capacity is that of the first kind alone");
        }
        if (image.bits(16, 7, 4) == 0) {
            image.fact(SpdFacts.VOLTAGE, 16, 1100);
        } else {
            image.unknown(SpdFacts.VOLTAGE, 16, "1.1 V (bits 7 to 4 are 0)");
        }
        SpdDecoder.cycle(image, type, 20, image.word(20));
        image.checkCrc(0, CRC_AT, CRC_AT);
        image.maker(SpdFacts.MAKER, 512);
        image.made(515, 2020);
        image.serial(517);
        image.part(521, 30);
        image.maker(SpdFacts.CHIP_MAKER, 552);
        List<Profile> profiles = new ArrayList<>();
        xmp(image, type, profiles);
        expo(image, type, profiles);
        return profiles;
    }

    private static void shape(Image image) {
        ModuleShape shape = switch (image.bits(3, 3, 0)) {
            case 1 -> ModuleShape.RDIMM;
            case 2 -> ModuleShape.UDIMM;
            case 3 -> ModuleShape.SO_DIMM;
            case 4 -> ModuleShape.LRDIMM;
            case 5 -> ModuleShape.CUDIMM;
            case 6 -> ModuleShape.CSODIMM;
            case 7 -> ModuleShape.MRDIMM;
            case 8 -> ModuleShape.CAMM2;
            case 0xA -> ModuleShape.DDIMM;
            case 0xB -> ModuleShape.SOLDERED;
            default -> null;
        };
        if (shape == null) {
            image.unknown(SpdFacts.SHAPE, 3, "a module type of JESD400-5");
        } else {
            image.fact(SpdFacts.SHAPE, 3, shape);
        }
    }

    /** Three profiles in the bytes that the standard leaves to users: 0C 4A, then which of them are in use. */
    private static void xmp(Image image, SpdType type, List<Profile> profiles) {
        if (!image.spells(XMP_AT, 0x0C, 0x4A)) {
            return;
        }
        for (int number = 0; number < 3; number++) {
            int at = XMP_AT + (number + 1) * XMP_PROFILE_SIZE;
            int cycle = image.word(at + 5);
            if (image.bits(XMP_AT + 3, number, number) == 1 && cycle > 0) {
                profiles.add(new Profile("XMP 3 profile " + (number + 1), cycle, Grades.near(type, cycle),
                        volts(image, at + 1)));
            }
        }
    }

    /** The letters EXPO, then two profiles of 40 bytes from the tenth byte on. */
    private static void expo(Image image, SpdType type, List<Profile> profiles) {
        if (!image.spells(EXPO_AT, 'E', 'X', 'P', 'O')) {
            return;
        }
        for (int number = 0; number < 2; number++) {
            int at = EXPO_AT + 10 + number * 40;
            int cycle = image.word(at + 4);
            if (cycle > 0) {
                profiles.add(new Profile("EXPO profile " + (number + 1), cycle, Grades.near(type, cycle),
                        volts(image, at)));
            }
        }
    }

    /** Whole volts in bits 6 and 5, twentieths in the others. */
    private static Optional<Integer> volts(Image image, int offset) {
        return Optional.of(image.bits(offset, 6, 5) * 1000 + image.bits(offset, 4, 0) * 50).filter(mv -> mv > 0);
    }
}
