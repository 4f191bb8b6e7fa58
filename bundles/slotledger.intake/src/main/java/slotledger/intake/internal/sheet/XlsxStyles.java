package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The styles of a workbook's cells, as far as they say what a number means. */
final class XlsxStyles {

    /** A workbook can have 65,490 cell styles. */
    private static final int MOST = 1 << 17;

    private final List<NumberStyle> styles = new ArrayList<>();

    void read(PartXml xml) throws IOException {
        Map<Integer, String> formats = new HashMap<>();
        List<Integer> formatOfStyle = new ArrayList<>();
        xml.nextChild();
        while (xml.nextChild()) {
            switch (xml.name()) {
                case "numFmts" -> {
                    while (xml.nextChild()) {
                        String code = xml.attribute("formatCode");
                        formats.put(number(xml.attribute("numFmtId")), code == null ? "" : TextCell.unescaped(code));
                        checkCount(formats.size());
                        xml.skip();
                    }
                }
                case "cellXfs" -> {
                    while (xml.nextChild()) {
                        formatOfStyle.add(number(xml.attribute("numFmtId")));
                        checkCount(formatOfStyle.size());
                        xml.skip();
                    }
                }
                default -> xml.skip();
            }
        }
        xml.finish();
        Map<Integer, NumberStyle> known = new HashMap<>();
        formatOfStyle.forEach(id ->
                styles.add(known.computeIfAbsent(id, format -> NumberStyle.of(format, formats.get(format)))));
    }

    /** A style a cell names; a name that means nothing is read as no style, as spreadsheet programs do. */
    NumberStyle get(int index) {
        return index >= 0 && index < styles.size() ? styles.get(index) : NumberStyle.PLAIN;
    }

    private static int number(String digits) {
        try {
            return digits == null ? 0 : Integer.parseInt(digits);
        } catch (NumberFormatException none) {
            return 0;
        }
    }

    private static void checkCount(int count) throws BadSheetException {
        if (count > MOST) {
            throw BadSheetException.tooLarge("The workbook has more than %d styles.".formatted(MOST));
        }
    }
}
