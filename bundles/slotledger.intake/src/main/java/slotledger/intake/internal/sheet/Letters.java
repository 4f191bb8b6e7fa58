package slotledger.intake.internal.sheet;

import java.util.Arrays;
import org.codehaus.stax2.typed.TypedValueDecoder;

/**
 * Characters that the parser hands over, in an array that is used again and again: most values of a workbook are
 * numbers and names of cells, which need no string.
 */
final class Letters extends TypedValueDecoder implements CharSequence {

    private static final int DECIMAL = 10;
    /** Whole numbers of up to so many digits are exact in a double. */
    private static final int EXACT_DIGITS = 15;

    private char[] chars = new char[64];
    private int length;

    void clear() {
        length = 0;
    }

    void append(char[] source, int start, int count) {
        if (length + count > chars.length) {
            chars = Arrays.copyOf(chars, Math.max(length + count, 2 * chars.length));
        }
        System.arraycopy(source, start, chars, length, count);
        length += count;
    }

    /** The value if these are only digits, few enough and without a needless zero in front; else -1. */
    long digits() {
        if (length == 0 || length > EXACT_DIGITS || length > 1 && chars[0] == '0') {
            return -1;
        }
        long number = 0;
        for (int i = 0; i < length; i++) {
            int digit = chars[i] - '0';
            if (digit < 0 || digit >= DECIMAL) {
                return -1;
            }
            number = number * DECIMAL + digit;
        }
        return number;
    }

    boolean is(char only) {
        return length == 1 && chars[0] == only;
    }

    @Override
    public void decode(String value) {
        clear();
        append(value.toCharArray(), 0, value.length());
    }

    @Override
    public void decode(char[] buffer, int start, int end) {
        clear();
        append(buffer, start, end - start);
    }

    @Override
    public void handleEmptyValue() {
        clear();
    }

    @Override
    public int length() {
        return length;
    }

    @Override
    public char charAt(int index) {
        return chars[index];
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return new String(chars, start, end - start);
    }

    @Override
    public String toString() {
        return new String(chars, 0, length);
    }
}
