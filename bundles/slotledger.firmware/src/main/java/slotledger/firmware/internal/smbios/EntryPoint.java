package slotledger.firmware.internal.smbios;

import java.util.Optional;
import slotledger.firmware.fact.Problems;

/**
 * What an entry point says of its table: DSP0134, section 5.2.
 *
 * @param at      offset of its anchor
 * @param length  of the entry point
 * @param version such as "2.8"
 * @param address of the table in the machine's memory
 * @param bytes   of the table; the largest possible ones for a 64-bit entry point
 * @param count   of structures; 0 where it doesn't say
 */
record EntryPoint(int at, int length, String version, long address, long bytes, int count) {

    private static final int SHORT_LENGTH = 0x0F;
    private static final int OLD_LENGTH = 0x1F;
    private static final int NEW_LENGTH = 0x18;

    /** Reads the one that stands at an offset; empty where none does. */
    static Optional<EntryPoint> read(byte[] data, int at, Problems problems) {
        if (Bytes.spells(data, at, "_SM3_") && at + NEW_LENGTH <= data.length) {
            int length = Bytes.u8(data, at + 6);
            check(data, at, length, problems);
            String version = Bytes.u8(data, at + 7) + "." + Bytes.u8(data, at + 8);
            return Optional.of(new EntryPoint(at, Math.max(length, NEW_LENGTH), version,
                    Bytes.number(data, at + 0x10, Long.BYTES), Bytes.u32(data, at + 0x0C), 0));
        }
        if (Bytes.spells(data, at, "_SM_") && Bytes.spells(data, at + 0x10, "_DMI_")
                && at + OLD_LENGTH <= data.length) {
            // Some firmware of version 2.1 says 1Eh where it means 1Fh: DSP0134, note in section 5.2.1.
            int length = Math.max(Bytes.u8(data, at + 5), OLD_LENGTH);
            check(data, at, length, problems);
            return Optional.of(new EntryPoint(at, length, version(data, at, problems), Bytes.u32(data, at + 0x18),
                    Bytes.u16(data, at + 0x16), Bytes.u16(data, at + 0x1C)));
        }
        if (Bytes.spells(data, at, "_DMI_") && at + SHORT_LENGTH <= data.length) {
            check(data, at, SHORT_LENGTH, problems);
            int revision = Bytes.u8(data, at + 0x0E);
            return Optional.of(new EntryPoint(at, SHORT_LENGTH, (revision >> 4) + "." + (revision & 0xF),
                    Bytes.u32(data, at + 8), Bytes.u16(data, at + 6), Bytes.u16(data, at + 0x0C)));
        }
        return Optional.empty();
    }

    private static void check(byte[] data, int at, int length, Problems problems) {
        if (!Bytes.addUp(data, at, length)) {
            problems.add(at, "the entry point", "its checksum is wrong", "bytes that add up to 0 modulo 256");
        }
    }

    /** Three versions that no standard has are misprints for known ones; the usual Linux lister corrects them too. */
    private static String version(byte[] data, int at, Problems problems) {
        String told = Bytes.u8(data, at + 6) + "." + Bytes.u8(data, at + 7);
        String meant = switch (told) {
            case "2.31", "2.33" -> told.equals("2.31") ? "2.3" : "2.6";
            case "2.51" -> "2.6";
            default -> told;
        };
        if (!meant.equals(told)) {
            problems.add(at + 6, "the entry point", "it says version " + told, "a version of the standard; taken as "
                    + meant);
        }
        return meant;
    }
}
