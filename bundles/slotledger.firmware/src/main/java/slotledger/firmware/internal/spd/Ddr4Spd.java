package slotledger.firmware.internal.spd;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.firmware.spd.ModuleShape;
import slotledger.firmware.spd.Profile;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdType;

/** DDR4: JESD21-C, section 4.1.2.12 (annex L); LPDDR3 to LPDDR5X keep to the same layout (annex M, JESD406-5). */
final class Ddr4Spd {

    private static final int FINE_PS = 1;
    private static final int MEDIUM_PS = 125;
    private static final int PROFILES_AT = 384;

    private Ddr4Spd() {
    }

    static List<Profile> decode(Image image, SpdType type) {
        boolean mobile = type != SpdType.DDR4 && type != SpdType.DDR4E;
        SpdDecoder.revision(image);
        shape(image);
        int density = density(image.bits(4, 3, 0));
        int width = 4 << image.bits(12, 2, 0);
        int ranks = image.bits(12, 5, 3) + 1;
        int dies = image.bits(6, 6, 4) + 1;
        boolean stacked = !mobile && image.bits(6, 7, 7) == 1 && image.bits(6, 1, 0) == 2;
        int data = 8 << image.bits(13, 2, 0);
        image.fact(SpdFacts.DENSITY, 4, density);
        image.fact(SpdFacts.DIES, 6, dies);
        image.fact(SpdFacts.CHIP_WIDTH, 12, width);
        image.fact(SpdFacts.RANKS, 12, ranks);
        image.fact(SpdFacts.LOGICAL_RANKS, 12, stacked ? ranks * dies : ranks);
        if (mobile) {
            // Firmware disagrees on what byte 13 counts, a channel or the package; all dies together are the capacity.
            image.facts().unknown(SpdFacts.DATA_WIDTH, image.hex(13, 1));
            SpdDecoder.capacity(image, 4, density, width, width, dies);
        } else {
            image.fact(SpdFacts.DATA_WIDTH, 13, data);
            image.fact(SpdFacts.CHECK_WIDTH, 13, image.bits(13, 4, 3) == 1 ? 8 : 0);
            SpdDecoder.capacity(image, 4, density, data, width, (long) ranks * (stacked ? dies : 1));
        }
        if (!mobile && image.bits(12, 6, 6) == 1) {
            image.problem(12, "its ranks are not alike", "like ranks; the capacity is that of the first kind alone");
        }
        voltage(image, type);
        SpdDecoder.cycle(image, type, 18, image.at(18) * MEDIUM_PS + image.signed(125) * FINE_PS);
        crc(image, mobile);
        image.maker(SpdFacts.MAKER, 320);
        image.made(323, mobile ? 2011 : 2013);
        image.serial(325);
        image.part(329, 20);
        image.maker(SpdFacts.CHIP_MAKER, 350);
        return profiles(image, type);
    }

    private static int density(int code) {
        return switch (code) {
            case 8 -> 12 * 1024;
            case 9 -> 24 * 1024;
            case 10 -> 3 * 1024;
            case 11 -> 6 * 1024;
            case 12 -> 18 * 1024;
            default -> code < 8 ? 256 << code : 0;
        };
    }

    private static void shape(Image image) {
        ModuleShape shape = switch (image.bits(3, 3, 0)) {
            case 1 -> ModuleShape.RDIMM;
            case 2 -> ModuleShape.UDIMM;
            case 3 -> ModuleShape.SO_DIMM;
            case 4 -> ModuleShape.LRDIMM;
            case 5 -> ModuleShape.MINI_RDIMM;
            case 6 -> ModuleShape.MINI_UDIMM;
            case 7, 0xE -> ModuleShape.SOLDERED;
            case 8 -> ModuleShape.SO_RDIMM_72;
            case 9 -> ModuleShape.SO_UDIMM_72;
            case 0xC -> ModuleShape.SO_DIMM_16;
            case 0xD -> ModuleShape.SO_DIMM_32;
            default -> null;
        };
        if (shape == null) {
            image.unknown(SpdFacts.SHAPE, 3, "a module type of annex L");
        } else {
            image.fact(SpdFacts.SHAPE, 3, shape);
        }
    }

    private static void voltage(Image image, SpdType type) {
        if (type == SpdType.DDR4 || type == SpdType.DDR4E) {
            if (image.bits(11, 0, 0) == 1) {
                image.fact(SpdFacts.VOLTAGE, 11, 1200);
            } else {
                image.unknown(SpdFacts.VOLTAGE, 11, "1.2 V (bit 0)");
            }
        } else {
            image.facts().unknown(SpdFacts.VOLTAGE, image.hex(11, 1));
        }
    }

    /** Soldered memory often has no checksum: its bytes are part of a machine's firmware, which has one itself. */
    private static void crc(Image image, boolean mobile) {
        boolean none = image.word(126) == 0;
        if (!mobile || !none) {
            image.checkCrc(0, 126, 126);
        }
        if (image.size() >= 256 && !mobile) {
            image.checkCrc(128, 254, 254);
        }
    }

    /** Two profiles in the bytes that the standard leaves to makers: 0C 4A, then which of them are in use. */
    private static List<Profile> profiles(Image image, SpdType type) {
        List<Profile> profiles = new ArrayList<>();
        if (image.spells(PROFILES_AT, 0x0C, 0x4A)) {
            for (int number = 0; number < 2; number++) {
                int at = 393 + number * 47;
                int cycle = image.at(at + 3) * MEDIUM_PS + image.signed(at + 38) * FINE_PS;
                if (image.bits(386, number, number) == 1 && cycle > 0) {
                    int volts = image.bits(at, 7, 7) * 1000 + image.bits(at, 6, 0) * 10;
                    profiles.add(new Profile("XMP 2 profile " + (number + 1), cycle, Grades.near(type, cycle),
                            Optional.of(volts).filter(mv -> mv > 0)));
                }
            }
        }
        return profiles;
    }
}
