package slotledger.intake.internal.sheet;

/** Names of cells and ranges as workbooks write them: B7, $B$7, A1:C3. */
final class CellName {

    static final int MOST_COLUMNS = 16_384;
    /** One spreadsheet program can be built for sixteen times as many rows as the usual 1,048,576. */
    static final int MOST_ROWS = 1 << 24;

    private static final int LETTERS = 26;
    private static final int DECIMAL = 10;

    private CellName() {
    }

    /** The 1-based column of a cell's name. */
    static int column(CharSequence name) throws BadSheetException {
        int column = 0;
        int i = 0;
        for (; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c == '$') {
                continue;
            }
            int letter = (c & ~0x20) - 'A';
            if (letter < 0 || letter >= LETTERS) {
                break;
            }
            column = column * LETTERS + letter + 1;
            if (column > MOST_COLUMNS) {
                throw impossible(name);
            }
        }
        if (column == 0) {
            throw impossible(name);
        }
        return column;
    }

    /** The 1-based row of a cell's name. */
    static int row(String name) throws BadSheetException {
        int start = name.length();
        while (start > 0 && name.charAt(start - 1) >= '0' && name.charAt(start - 1) <= '9') {
            start--;
        }
        return number(name.substring(start));
    }

    /** A row number by itself. */
    static int number(CharSequence digits) throws BadSheetException {
        int number = 0;
        for (int i = 0; i < digits.length(); i++) {
            int digit = digits.charAt(i) - '0';
            if (digit < 0 || digit >= DECIMAL || number > MOST_ROWS) {
                throw impossible(digits);
            }
            number = number * DECIMAL + digit;
        }
        if (number < 1 || number > MOST_ROWS) {
            throw impossible(digits);
        }
        return number;
    }

    static CellRange range(String name) throws BadSheetException {
        int colon = name.indexOf(':');
        String first = colon < 0 ? name : name.substring(0, colon);
        String last = name.substring(colon + 1);
        int top = row(first);
        int left = column(first);
        int bottom = row(last);
        int right = column(last);
        return new CellRange(Math.min(top, bottom), Math.min(left, right),
                Math.max(top, bottom), Math.max(left, right));
    }

    private static BadSheetException impossible(CharSequence name) {
        return BadSheetException.damaged("The workbook names an impossible cell or row (%s)."
                .formatted(name.length() > LETTERS ? name.subSequence(0, LETTERS) + "\u2026" : name), null);
    }
}
