package slotledger.firmware.internal.spd;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Facts;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.internal.words.Jep106;
import slotledger.firmware.internal.words.Placeholders;
import slotledger.firmware.spd.SpdFacts;

/** The bytes of an SPD image with what has been read of them. A byte beyond the end reads as 0. */
final class Image {

    /** What is expected of every checksum. */
    static final String SEALED = "both to be the same";

    private static final int POLYNOMIAL = 0x1021;
    private static final int LAST_WEEK = 53;

    private final byte[] data;
    private final Problems problems = new Problems();
    private final Facts.Builder facts = new Facts.Builder();

    Image(byte[] data) {
        this.data = data.clone();
    }

    int size() {
        return data.length;
    }

    int at(int offset) {
        return offset < data.length ? data[offset] & 0xFF : 0;
    }

    /** Bits from high to low, both included. */
    int bits(int offset, int high, int low) {
        return at(offset) >> low & (1 << high - low + 1) - 1;
    }

    int word(int offset) {
        return at(offset) | at(offset + 1) << 8;
    }

    int signed(int offset) {
        return (byte) at(offset);
    }

    boolean spells(int offset, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (at(offset + i) != bytes[i]) {
                return false;
            }
        }
        return offset + bytes.length <= data.length;
    }

    String hex(int offset, int size) {
        StringBuilder text = new StringBuilder("0x");
        for (int i = 0; i < size; i++) {
            text.append("%02X".formatted(at(offset + i)));
        }
        return text.toString();
    }

    Facts.Builder facts() {
        return facts;
    }

    Problems problems() {
        return problems;
    }

    <T> void fact(Fact<T> fact, int offset, T value) {
        facts.known(fact, hex(offset, 1), value);
    }

    <T> void unknown(Fact<T> fact, int offset, String expected) {
        facts.unknown(fact, hex(offset, 1));
        problem(offset, fact.name() + " is " + hex(offset, 1), expected);
    }

    void problem(int offset, String seen, String expected) {
        problems.add(offset, "SPD byte " + offset, seen, expected);
    }

    void contradiction(String seen, String expected) {
        problems.add(Problem.of("SPD", seen, expected));
    }

    /** Sum of bytes 0 to 62 in byte 63: JESD21-C 4.1.2. */
    void checkSum() {
        int sum = 0;
        for (int i = 0; i < 63; i++) {
            sum += at(i);
        }
        if ((sum & 0xFF) != at(63)) {
            problem(63, "the checksum is %s, the bytes give 0x%02X".formatted(hex(63, 1), sum & 0xFF),
                    SEALED);
        }
    }

    /** CRC-16 with polynomial 1021h, start 0, low byte first: JESD21-C 4.1.2.11, byte 126. */
    void checkCrc(int from, int to, int storedAt) {
        if (storedAt + 2 > data.length) {
            problem(data.length, "the image ends before its checksum at byte " + storedAt, "a whole image");
            return;
        }
        int crc = crc(from, to);
        if (crc != word(storedAt)) {
            problem(storedAt, "the checksum is 0x%04X, the bytes give 0x%04X".formatted(word(storedAt), crc),
                    SEALED);
        }
    }

    /** The CRC of bytes from one to another, the last not included. */
    int crc(int from, int to) {
        int crc = 0;
        for (int i = from; i < to; i++) {
            crc ^= at(i) << 8;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 0x8000) == 0 ? crc << 1 : crc << 1 ^ POLYNOMIAL;
            }
            crc &= 0xFFFF;
        }
        return crc;
    }

    /** Part number, ASCII padded with blanks or zeros. */
    void part(int offset, int size) {
        int there = Math.max(0, Math.min(size, data.length - offset));
        if (there == 0) {
            return;
        }
        String text = new String(data, offset, there, StandardCharsets.ISO_8859_1);
        int end = text.indexOf(0) >= 0 ? text.indexOf(0) : text.length();
        String readable = text.substring(0, end).replaceAll("[^\\x20-\\x7E]", ".").strip();
        boolean blank = readable.replace(".", "").isBlank();
        facts.told(SpdFacts.PART, readable, blank ? Optional.empty() : Placeholders.meaning(readable));
    }

    /** Two bytes: continuation codes with parity, then the code. */
    void maker(Fact<String> fact, int offset) {
        if (offset + 2 > data.length) {
            return;
        }
        boolean none = word(offset) == 0 || word(offset) == 0xFFFF;
        boolean odd = Jep106.hasOddParity(at(offset)) && Jep106.hasOddParity(at(offset + 1));
        facts.told(fact, hex(offset, 2), none || !odd ? Optional.empty() : Jep106.ofPair(at(offset), at(offset + 1)));
        if (!none && !odd) {
            problem(offset, "the number %s of a maker has a byte of even parity".formatted(hex(offset, 2)),
                    "an odd number of set bits in each (JEP106), as every maker's own tools write");
        }
    }

    /** Eight bytes: continuation codes 7Fh, then the code. */
    void oldMaker(int offset) {
        if (offset + 8 > data.length) {
            return;
        }
        facts.told(SpdFacts.MAKER, hex(offset, 8), Jep106.ofBytes(data, offset, 8));
    }

    void serial(int offset) {
        boolean none = word(offset) == 0 && word(offset + 2) == 0 || word(offset) + word(offset + 2) == 2 * 0xFFFF;
        if (offset + 4 <= data.length) {
            String text = hex(offset, 4);
            facts.told(SpdFacts.SERIAL, text, none ? Optional.empty() : Optional.of(text.substring(2)));
        }
    }

    /** Year and week as two pairs of decimal digits. */
    void made(int offset, int firstYear) {
        boolean decimal = decimal(offset) >= 0 && decimal(offset + 1) >= 0;
        int year = decimal ? decimal(offset) : at(offset);
        int week = decimal ? decimal(offset + 1) : at(offset + 1);
        if (word(offset) == 0 || word(offset) == 0xFFFF || offset + 2 > data.length) {
            facts.unknown(SpdFacts.MADE, hex(offset, 2));
            return;
        }
        if (!decimal) {
            problem(offset, "the date of making is " + hex(offset, 2), "decimal digits; taken as plain numbers");
        }
        if (year > 99 || week < 1 || week > LAST_WEEK) {
            facts.unknown(SpdFacts.MADE, hex(offset, 2));
            problem(offset, "the date of making is " + hex(offset, 2), "two digits of a year and a week to 53");
            return;
        }
        int whole = year >= 80 ? 1900 + year : 2000 + year;
        facts.known(SpdFacts.MADE, hex(offset, 2), "%d week %02d".formatted(whole, week));
        if (whole < firstYear) {
            problem(offset, "made in " + whole, "no year before " + firstYear + ", when such memory began");
        }
    }

    private int decimal(int offset) {
        int high = at(offset) >> 4;
        int low = at(offset) & 0xF;
        return high > 9 || low > 9 ? -1 : high * 10 + low;
    }
}
