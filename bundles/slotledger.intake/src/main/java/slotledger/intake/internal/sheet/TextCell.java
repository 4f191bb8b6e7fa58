package slotledger.intake.internal.sheet;

/** Text of cells, as workbooks write it. */
final class TextCell {

    /** A spreadsheet program stops at 32,767 characters a cell; other programs write longer ones. */
    static final int MOST_CHARACTERS = 1 << 20;

    private static final int ESCAPE = "_x000D_".length();
    private static final int HEX = 16;

    private TextCell() {
    }

    static BadSheetException tooLong() {
        return BadSheetException.tooLarge("A cell holds more than %d characters.".formatted(MOST_CHARACTERS));
    }

    /** Undoes the escapes of ISO/IEC 29500-1, 22.4.2.4 (ST_Xstring): _x000D_ stands for a carriage return. */
    static String unescaped(CharSequence written) {
        String text = written.toString();
        int at = text.indexOf("_x");
        if (at < 0) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        int copied = 0;
        while (at >= 0) {
            int code = escape(text, at);
            if (code >= 0) {
                plain.append(text, copied, at).append((char) code);
                copied = at + ESCAPE;
            }
            at = text.indexOf("_x", code >= 0 ? copied : at + 1);
        }
        return plain.append(text, copied, text.length()).toString();
    }

    private static int escape(String text, int at) {
        if (at + ESCAPE > text.length() || text.charAt(at + ESCAPE - 1) != '_') {
            return -1;
        }
        int code = 0;
        for (int i = at + 2; i < at + ESCAPE - 1; i++) {
            int digit = Character.digit(text.charAt(i), HEX);
            if (digit < 0) {
                return -1;
            }
            code = code * HEX + digit;
        }
        return code;
    }
}
