package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Reads the cells of one sheet of an .xlsx workbook (ISO/IEC 29500-1, 18.3.1.99 worksheet). */
final class XlsxSheet {

    private static final int MOST_MERGED = 1 << 20;

    private final PartXml xml;
    private final XlsxCells cells;
    private final SheetVisitor visitor;
    private final Letters name = new Letters();
    private final RowCells row = new RowCells();
    private final List<CellRange> merged = new ArrayList<>();
    private final Set<Integer> hiddenColumns = new TreeSet<>();
    private int rowNumber;
    private boolean anyHidden;

    XlsxSheet(PartXml xml, XlsxCells cells, SheetVisitor visitor) {
        this.xml = xml;
        this.cells = cells;
        this.visitor = visitor;
    }

    void read(XlsxBook.Sheet sheet) throws IOException {
        try {
            xml.nextChild();
            if (!xml.name().equals("worksheet")) {
                throw BadSheetException.damaged("The sheet holds no cells but a %s.".formatted(xml.name()), null);
            }
            visitor.startSheet(sheet.name(), sheet.hidden());
            while (xml.nextChild()) {
                switch (xml.name()) {
                    case "sheetFormatPr" -> {
                        anyHidden = xml.flag("zeroHeight");
                        xml.skip();
                    }
                    case "cols" -> readColumns();
                    case "sheetData" -> readRows();
                    case "mergeCells" -> readMerged();
                    default -> xml.skip();
                }
            }
            xml.finish();
        } catch (BadSheetException bad) {
            throw bad.at(sheet.name(), rowNumber);
        }
        visitor.endSheet(merged, hiddenColumns);
    }

    private void readColumns() throws IOException {
        while (xml.nextChild()) {
            String min = xml.attribute("min");
            String max = xml.attribute("max");
            if (min != null && max != null && (xml.flag("hidden") || isZero(xml.attribute("width")))) {
                int last = Math.min(CellName.MOST_COLUMNS, CellName.number(max));
                for (int column = CellName.number(min); column <= last; column++) {
                    hiddenColumns.add(column);
                }
            }
            xml.skip();
        }
    }

    private static boolean isZero(String width) {
        return width != null && width.matches("0(\\.0*)?");
    }

    private void readRows() throws IOException {
        while (xml.nextChild()) {
            if (xml.name().equals("row")) {
                readRow();
            } else {
                xml.skip();
            }
        }
        rowNumber = 0;
    }

    private void readRow() throws IOException {
        boolean hidden = anyHidden;
        int number = rowNumber + 1;
        for (int i = 0; i < xml.attributes(); i++) {
            switch (xml.attributeName(i)) {
                case "r" -> {
                    xml.attributeValue(i, name);
                    number = CellName.number(name);
                }
                case "hidden" -> hidden = PartXml.isTrue(xml.attributeValue(i));
                case "ht" -> hidden |= isZero(xml.attributeValue(i));
                default -> { }
            }
        }
        rowNumber = number;
        row.clear();
        int column = 0;
        while (xml.nextChild()) {
            if (xml.name().equals("c")) {
                column = cells.read(xml, column + 1, row);
            } else {
                xml.skip();
            }
        }
        row.tell(rowNumber, hidden, visitor);
    }

    private void readMerged() throws IOException {
        while (xml.nextChild()) {
            String range = xml.attribute("ref");
            if (range != null) {
                merged.add(CellName.range(range));
            }
            if (merged.size() > MOST_MERGED) {
                throw BadSheetException.tooLarge("The sheet has more than %d merged ranges.".formatted(MOST_MERGED));
            }
            xml.skip();
        }
    }
}
