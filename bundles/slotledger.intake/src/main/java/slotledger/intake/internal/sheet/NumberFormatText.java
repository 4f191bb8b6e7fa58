package slotledger.intake.internal.sheet;

/**
 * The text of a number format (ISO/IEC 29500-1, 18.8.31): its first section, taken apart into the words around the
 * number and the least digits. Whatever is more than that (conditions, thousands left out, fractions, several groups
 * of digits) gives the plain style: better no unit than a wrong one.
 */
final class NumberFormatText {

    private static final NumberStyle NONE = NumberStyle.PLAIN;

    private final StringBuilder prefix = new StringBuilder();
    private final StringBuilder suffix = new StringBuilder();
    private int digits;
    private boolean number;
    private boolean ended;
    private boolean fraction;
    private boolean percent;
    private char last;

    private NumberFormatText() {
    }

    static NumberStyle style(String format) {
        return new NumberFormatText().read(format);
    }

    private NumberStyle read(String format) {
        int i = 0;
        while (i < format.length() && format.charAt(i) != ';') {
            char c = format.charAt(i);
            int end = i + 1;
            switch (c) {
                case '"' -> {
                    end = after(format, '"', i + 1);
                    literal(format.substring(i + 1, Math.max(i + 1, end - 1)));
                }
                case '\\' -> {
                    literal(format.substring(i + 1, Math.min(format.length(), i + 2)));
                    end = i + 2;
                }
                case '_', '*' -> {
                    literal(" ");
                    end = i + 2;
                }
                case '[' -> {
                    end = after(format, ']', i + 1);
                    if (!bracket(format.substring(i + 1, Math.max(i + 1, end - 1)))) {
                        return NONE;
                    }
                }
                case '0', '#', '?', '.', ',' -> {
                    if (ended) {
                        return NONE;
                    }
                    placeholder(c);
                }
                case '%' -> {
                    percent = true;
                    ended = number;
                }
                case 'G', 'g' -> {
                    if (!format.regionMatches(true, i, "General", 0, "General".length()) || number) {
                        return NONE;
                    }
                    number = true;
                    last = '#';
                    digits = 1;
                    end = i + "General".length();
                }
                default -> {
                    if (Character.isLetterOrDigit(c) || c == '@' || c == '/') {
                        return NONE;
                    }
                    literal(String.valueOf(c));
                }
            }
            i = end;
        }
        if (!number || last == ',') {
            return NONE;
        }
        NumberStyle style = new NumberStyle(false, percent, prefix.toString().stripLeading(),
                suffix.toString().stripTrailing(), Math.max(1, digits));
        return style.equals(NONE) ? NONE : style;
    }

    private static int after(String format, char closing, int from) {
        int at = format.indexOf(closing, from);
        return at < 0 ? format.length() : at + 1;
    }

    private void literal(String text) {
        if (number) {
            ended = true;
            suffix.append(text);
        } else {
            prefix.append(text);
        }
    }

    /** {@code [$€-407]} is a currency, {@code [Red]} a colour, {@code [>=1000]} a condition that changes the unit. */
    private boolean bracket(String content) {
        if (content.startsWith("$")) {
            int dash = content.indexOf('-');
            literal(content.substring(1, dash < 0 ? content.length() : dash));
            return true;
        }
        return !content.isEmpty() && Character.isLetter(content.charAt(0));
    }

    private void placeholder(char c) {
        number = true;
        last = c;
        if (c == '.') {
            fraction = true;
        } else if (c == '0' && !fraction) {
            digits++;
        }
    }
}
