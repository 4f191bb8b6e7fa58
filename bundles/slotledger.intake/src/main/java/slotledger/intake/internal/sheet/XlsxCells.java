package slotledger.intake.internal.sheet;

import java.io.IOException;

/** Reads single cells of an .xlsx workbook (ISO/IEC 29500-1, 18.3.1.4 c). */
final class XlsxCells {

    private static final String SHARED = "s";
    /** Letters of a wrong value that a finding repeats. */
    private static final int SHOWN = 40;

    private final SharedStrings strings;
    private final XlsxStyles styles;
    private final boolean date1904;
    private final Letters attribute = new Letters();
    private final Letters value = new Letters();
    private final Letters formula = new Letters();
    private final Letters inline = new Letters();
    private boolean hasFormula;
    private boolean hasValue;

    XlsxCells(SharedStrings strings, XlsxStyles styles, boolean date1904) {
        this.strings = strings;
        this.styles = styles;
        this.date1904 = date1904;
    }

    /**
     * Reads the cell that the parser has entered.
     *
     * @param next its column where it does not say
     * @return its column
     */
    int read(PartXml xml, int next, RowCells row) throws IOException {
        int column = next;
        int style = 0;
        String type = "n";
        for (int i = 0; i < xml.attributes(); i++) {
            switch (xml.attributeName(i)) {
                case "r" -> {
                    xml.attributeValue(i, attribute);
                    column = CellName.column(attribute);
                }
                case "s" -> {
                    xml.attributeValue(i, attribute);
                    style = index(attribute);
                }
                case "t" -> {
                    xml.attributeValue(i, attribute);
                    type = attribute.is('s') ? SHARED : attribute.toString();
                }
                default -> { }
            }
        }
        if (column > CellName.MOST_COLUMNS) {
            throw BadSheetException.damaged("The row has more than %d cells.".formatted(CellName.MOST_COLUMNS), null);
        }
        readContent(xml);
        Cell cell = cell(column, style, type);
        if (cell != null) {
            row.add(cell);
        }
        return column;
    }

    private void readContent(PartXml xml) throws IOException {
        hasFormula = false;
        hasValue = false;
        value.clear();
        formula.clear();
        inline.clear();
        while (xml.nextChild()) {
            switch (xml.name()) {
                case "v" -> {
                    hasValue = true;
                    xml.text(value);
                }
                case "f" -> {
                    hasFormula = true;
                    xml.text(formula);
                }
                case "is" -> SharedStrings.appendRich(xml, inline);
                default -> xml.skip();
            }
        }
    }

    private Cell cell(int column, int style, String type) throws BadSheetException {
        if (type.equals(SHARED) && value.length() > 0) {
            return text(column, strings.get(index(value)));
        }
        if (inline.length() > 0) {
            return text(column, TextCell.unescaped(inline));
        }
        boolean emptyText = type.equals("str") && hasValue;
        if (value.length() == 0) {
            return hasFormula && !emptyText ? uncalculated(column) : null;
        }
        return switch (type) {
            case "n" -> number(column, style);
            case "str", "inlineStr" -> text(column, TextCell.unescaped(value));
            case "b" -> new Cell(column, Cell.Type.BOOLEAN,
                    PartXml.isTrue(value.toString().strip()) ? "TRUE" : "FALSE", Double.NaN);
            case "e" -> new Cell(column, Cell.Type.ERROR, value.toString().strip(), Double.NaN);
            case "d" -> date(column);
            default -> throw BadSheetException.damaged("A cell is of no known type (%s).".formatted(type), null);
        };
    }

    private static Cell text(int column, String text) {
        return new Cell(column, Cell.Type.TEXT, text, Double.NaN);
    }

    /** A formula whose result was never stored: what a person would see is not in the file. */
    private Cell uncalculated(int column) {
        return new Cell(column, Cell.Type.ERROR, "=" + (formula.length() == 0 ? "\u2026" : formula), Double.NaN);
    }

    private Cell number(int column, int style) throws BadSheetException {
        long whole = value.digits();
        if (whole >= 0) {
            return styles.get(style).cell(column, whole, value.toString(), date1904);
        }
        String written = value.toString().strip();
        try {
            double number = Double.parseDouble(written);
            if (Double.isFinite(number)) {
                return styles.get(style).cell(column, number, NumberText.of(written, number), date1904);
            }
        } catch (NumberFormatException none) {
            // Told below.
        }
        throw BadSheetException.damaged("A cell that should hold a number holds something else (%s)."
                .formatted(written.substring(0, Math.min(SHOWN, written.length()))), null);
    }

    private Cell date(int column) {
        String written = value.toString().strip();
        double days = NumberText.days(written);
        String shown = NumberText.date(days, false);
        return shown == null || days < NumberText.LEAP_BUG
                ? text(column, written)
                : new Cell(column, Cell.Type.DATE, shown, days);
    }

    private static int index(Letters digits) throws BadSheetException {
        long number = digits.digits();
        if (number >= 0 && number <= Integer.MAX_VALUE) {
            return (int) number;
        }
        try {
            return Integer.parseUnsignedInt(digits.toString().strip());
        } catch (NumberFormatException none) {
            throw BadSheetException.damaged("A cell points to text or style \"%s\"."
                    .formatted(digits.subSequence(0, Math.min(SHOWN, digits.length()))), none);
        }
    }
}
