package slotledger.firmware.internal.smbios;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * One structure in the bytes of a table.
 *
 * @param at      offset of its first byte
 * @param length  of the formatted part; all of it lies within the data
 * @param strings where the strings begin
 * @param end     after the last string
 */
record RawStructure(byte[] data, int at, int length, int strings, int end) {

    /** DSP0134 sets no limit; a longer string is damage, and is cut. */
    static final int LONGEST_STRING = 512;

    int type() {
        return Bytes.u8(data, at);
    }

    int handle() {
        return Bytes.u16(data, at + 2);
    }

    boolean has(int offset, int size) {
        return offset + size <= length;
    }

    long number(int offset, int size) {
        return Bytes.number(data, at + offset, size);
    }

    /** The string of a number from 1 on; null where there are fewer. */
    String string(int wanted) {
        int start = strings;
        for (int number = 1; start < end && data[start] != 0; number++) {
            int stop = start;
            while (stop < end && data[stop] != 0) {
                stop++;
            }
            if (number == wanted) {
                return text(start, Math.min(stop - start, LONGEST_STRING));
            }
            start = stop + 1;
        }
        return null;
    }

    private String text(int start, int size) {
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(data, start, size)).toString();
        } catch (CharacterCodingException olderTable) {
            text = new String(data, start, size, StandardCharsets.ISO_8859_1);
        }
        return text.replaceAll("\\p{Cntrl}", ".");
    }
}
