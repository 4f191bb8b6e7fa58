package slotledger.firmware.internal.spd;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.firmware.spd.ModuleShape;
import slotledger.firmware.spd.Profile;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdType;

/** DDR3: JESD21-C, section 4.1.2.11 (annex K). */
final class Ddr3Spd {

    private static final int FIRST_YEAR = 2006;
    private static final int PROFILES_AT = 176;

    private Ddr3Spd() {
    }

    static List<Profile> decode(Image image) {
        SpdDecoder.revision(image);
        shape(image);
        int density = 256 << image.bits(4, 3, 0);
        int width = 4 << image.bits(7, 2, 0);
        int ranks = image.bits(7, 5, 3) + 1;
        int data = 8 << image.bits(8, 2, 0);
        image.fact(SpdFacts.DENSITY, 4, density);
        image.fact(SpdFacts.CHIP_WIDTH, 7, width);
        image.fact(SpdFacts.RANKS, 7, ranks);
        image.fact(SpdFacts.LOGICAL_RANKS, 7, ranks);
        image.fact(SpdFacts.DATA_WIDTH, 8, data);
        image.fact(SpdFacts.CHECK_WIDTH, 8, image.bits(8, 4, 3) == 1 ? 8 : 0);
        SpdDecoder.capacity(image, 4, density, data, width, ranks);
        // Byte 6 says which voltages it runs at: bit 0 that it does NOT at 1.5 V, bit 1 at 1.35, bit 2 at 1.25.
        int volts = image.bits(6, 2, 0);
        image.fact(SpdFacts.VOLTAGE, 6, (volts & 4) != 0 ? 1250 : (volts & 2) != 0 ? 1350 : 1500);
        SpdDecoder.cycle(image, SpdType.DDR3, 12, time(image, 12, 34, 10));
        image.checkCrc(0, image.bits(0, 7, 7) == 1 ? 117 : 126, 126);
        image.maker(SpdFacts.MAKER, 117);
        image.made(120, FIRST_YEAR);
        image.serial(122);
        image.part(128, 18);
        image.maker(SpdFacts.CHIP_MAKER, 148);
        return profiles(image);
    }

    /** A time in medium time bases, whose dividend and divisor stand at an offset, and fine ones; in ps. */
    private static int time(Image image, int offset, int fineAt, int baseAt) {
        if (image.at(baseAt + 1) == 0) {
            return 0;
        }
        int fineDivisor = image.bits(9, 3, 0);
        int fine = fineAt == 0 || fineDivisor == 0 ? 0 : image.signed(fineAt) * image.bits(9, 7, 4) / fineDivisor;
        return image.at(offset) * 1000 * image.at(baseAt) / image.at(baseAt + 1) + fine;
    }

    private static void shape(Image image) {
        ModuleShape shape = switch (image.bits(3, 3, 0)) {
            case 1 -> ModuleShape.RDIMM;
            case 2 -> ModuleShape.UDIMM;
            case 3 -> ModuleShape.SO_DIMM;
            case 4 -> ModuleShape.MICRO_DIMM;
            case 5 -> ModuleShape.MINI_RDIMM;
            case 6 -> ModuleShape.MINI_UDIMM;
            case 8 -> ModuleShape.SO_UDIMM_72;
            case 9 -> ModuleShape.SO_RDIMM_72;
            case 0xB -> ModuleShape.LRDIMM;
            case 0xC -> ModuleShape.SO_DIMM_16;
            case 0xD -> ModuleShape.SO_DIMM_32;
            default -> null;
        };
        if (shape == null) {
            image.unknown(SpdFacts.SHAPE, 3, "a module type of annex K");
        } else {
            image.fact(SpdFacts.SHAPE, 3, shape);
        }
    }

    /** Two profiles in the bytes that the standard leaves to makers: 0C 4A, then which of them are in use. */
    private static List<Profile> profiles(Image image) {
        List<Profile> profiles = new ArrayList<>();
        if (image.spells(PROFILES_AT, 0x0C, 0x4A)) {
            for (int number = 0; number < 2; number++) {
                int at = 185 + number * 35;
                int cycle = time(image, at + 1, 0, 180 + 2 * number);
                if (image.bits(178, number, number) == 1 && cycle > 0) {
                    int volts = image.bits(at, 6, 5) * 1000 + image.bits(at, 4, 0) * 50;
                    profiles.add(new Profile("XMP profile " + (number + 1), cycle,
                            Grades.near(SpdType.DDR3, cycle), Optional.of(volts).filter(mv -> mv > 0)));
                }
            }
        }
        return profiles;
    }
}
