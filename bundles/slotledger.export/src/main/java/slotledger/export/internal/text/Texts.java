package slotledger.export.internal.text;

/** Makes texts of unknown origin fit for print, pages and workbooks. */
public final class Texts {

    private static final int REPLACEMENT = 0xFFFD;
    private static final int CELL_LIMIT = 32_767;

    private Texts() {
    }

    /**
     * One printable line: control characters and line ends become blanks; marks that steer the writing direction go,
     * since they can make a text look like another one (Unicode Standard Annex 9, section 2).
     */
    public static String line(String text) {
        StringBuilder line = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            if (isDirectionMark(point)) {
                return;
            }
            if (Character.isISOControl(point) || point == 0x2028 || point == 0x2029) {
                line.append(' ');
            } else {
                line.appendCodePoint(isXml(point) ? point : REPLACEMENT);
            }
        });
        return line.toString().strip();
    }

    /** The text with what XML 1.0 can't hold replaced by U+FFFD (XML 1.0, section 2.2). */
    public static String xml(String text) {
        if (text.codePoints().allMatch(Texts::isXml)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(point -> clean.appendCodePoint(isXml(point) ? point : REPLACEMENT));
        return clean.toString();
    }

    /** A text for a cell of a workbook: valid XML, at most 32,767 characters, read as it is written. */
    public static String cell(String text) {
        // "_x0041_" in a cell is read as the character with that number (ECMA-376 part 1, 22.4.2.4).
        String literal = xml(text).replaceAll("_(?=x[0-9A-Fa-f]{4}_)", "_x005F_");
        return shortened(literal, CELL_LIMIT);
    }

    /** The text, cut with an ellipsis where it has more characters than allowed. */
    public static String shortened(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        int end = most - 1;
        return text.substring(0, Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end) + "…";
    }

    /** The text, or the other one where it is blank. */
    public static String or(String text, String other) {
        return text.isBlank() ? other : text;
    }

    /** "1 module", "2 modules". */
    public static String count(long count, String one, String more) {
        return count + " " + (count == 1 ? one : more);
    }

    private static boolean isXml(int point) {
        return point == '\t' || point == '\n' || point == '\r'
                || point >= 0x20 && point <= 0xD7FF
                || point >= 0xE000 && point <= 0xFFFD
                || point >= 0x10000;
    }

    private static boolean isDirectionMark(int point) {
        return point == 0x061C
                || point == 0x200E || point == 0x200F
                || point >= 0x202A && point <= 0x202E
                || point >= 0x2066 && point <= 0x2069;
    }
}
