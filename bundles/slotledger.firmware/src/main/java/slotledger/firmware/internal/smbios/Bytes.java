package slotledger.firmware.internal.smbios;

/** Little-endian numbers in an array of bytes; who asks makes sure that they are there. */
final class Bytes {

    private static final int BYTE = 8;

    private Bytes() {
    }

    /** An unsigned number of at most eight bytes; of eight, the highest bit becomes the sign. */
    static long number(byte[] data, int at, int size) {
        long number = 0;
        for (int i = size - 1; i >= 0; i--) {
            number = number << BYTE | data[at + i] & 0xFF;
        }
        return number;
    }

    static int u8(byte[] data, int at) {
        return data[at] & 0xFF;
    }

    static int u16(byte[] data, int at) {
        return (int) number(data, at, 2);
    }

    static long u32(byte[] data, int at) {
        return number(data, at, Integer.BYTES);
    }

    /** Whether ASCII text stands there. */
    static boolean spells(byte[] data, int at, String text) {
        if (at < 0 || at > data.length - text.length()) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (data[at + i] != text.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the bytes add up to 0 modulo 256, as those of every entry point must. */
    static boolean addUp(byte[] data, int at, int length) {
        if (at < 0 || length < 0 || at > data.length - length) {
            return false;
        }
        int sum = 0;
        for (int i = 0; i < length; i++) {
            sum += data[at + i];
        }
        return (sum & 0xFF) == 0;
    }
}
