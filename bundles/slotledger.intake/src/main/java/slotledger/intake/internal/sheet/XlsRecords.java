package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.hssf.eventusermodel.HSSFListener;
import org.apache.poi.hssf.record.BOFRecord;
import org.apache.poi.hssf.record.BoolErrRecord;
import org.apache.poi.hssf.record.BoundSheetRecord;
import org.apache.poi.hssf.record.CellValueRecordInterface;
import org.apache.poi.hssf.record.ColumnInfoRecord;
import org.apache.poi.hssf.record.DateWindow1904Record;
import org.apache.poi.hssf.record.EOFRecord;
import org.apache.poi.hssf.record.ExtendedFormatRecord;
import org.apache.poi.hssf.record.FormatRecord;
import org.apache.poi.hssf.record.FormulaRecord;
import org.apache.poi.hssf.record.LabelRecord;
import org.apache.poi.hssf.record.LabelSSTRecord;
import org.apache.poi.hssf.record.MergeCellsRecord;
import org.apache.poi.hssf.record.NumberRecord;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.record.RowRecord;
import org.apache.poi.hssf.record.SSTRecord;
import org.apache.poi.hssf.record.StringRecord;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellRangeAddress;

/** Puts the records of an .xls workbook, told one by one, together to sheets and rows. */
final class XlsRecords implements HSSFListener {

    /** Carries what the visitor or our own checks throw past the catch-all for damaged records. */
    static final class Stopped extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Stopped(Exception cause) {
            super(cause);
        }

        void rethrow() throws IOException {
            if (getCause() instanceof IOException bad) {
                throw bad;
            }
            throw (RuntimeException) getCause();
        }
    }

    private static final int MOST_COLUMNS = 256;

    private final SheetVisitor visitor;
    private final List<BoundSheetRecord> bound = new ArrayList<>();
    private final Map<Integer, String> formats = new HashMap<>();
    private final List<Integer> formatOfStyle = new ArrayList<>();
    private final Map<Integer, NumberStyle> styles = new HashMap<>();
    private final RowCells row = new RowCells();
    private final BitSet hiddenRows = new BitSet();
    private final Set<Integer> hiddenColumns = new TreeSet<>();
    private final List<CellRange> merged = new ArrayList<>();
    private SSTRecord texts;
    private boolean date1904;
    private List<BoundSheetRecord> inFileOrder = List.of();
    private int sheet = -1;
    private int depth;
    private boolean cells;
    private int rowNumber;
    private FormulaRecord awaitsText;

    XlsRecords(SheetVisitor visitor) {
        this.visitor = visitor;
    }

    String sheetName() {
        return sheet >= 0 && sheet < inFileOrder.size() ? inFileOrder.get(sheet).getSheetname() : "";
    }

    int rowNumber() {
        return rowNumber;
    }

    @Override
    public void processRecord(Record found) {
        if (found instanceof BOFRecord begin) {
            begin(begin);
        } else if (found instanceof EOFRecord) {
            end();
        } else if (depth == 1 && sheet < 0) {
            bookRecord(found);
        } else if (depth == 1 && cells) {
            sheetRecord(found);
        }
    }

    /** Charts inside a sheet are told as books within it. */
    private void begin(BOFRecord begin) {
        depth++;
        if (depth > 1 || begin.getType() == BOFRecord.TYPE_WORKBOOK) {
            return;
        }
        if (sheet < 0) {
            inFileOrder = List.of(BoundSheetRecord.orderByBofPosition(bound));
        }
        sheet++;
        cells = begin.getType() == BOFRecord.TYPE_WORKSHEET && sheet < inFileOrder.size();
        if (cells) {
            BoundSheetRecord tab = inFileOrder.get(sheet);
            guarded(() -> visitor.startSheet(tab.getSheetname(), tab.isHidden() || tab.isVeryHidden()));
        }
    }

    private void end() {
        depth--;
        if (depth == 0 && cells) {
            tellRow();
            guarded(() -> visitor.endSheet(List.copyOf(merged), Set.copyOf(hiddenColumns)));
            merged.clear();
            hiddenColumns.clear();
            hiddenRows.clear();
            rowNumber = 0;
            awaitsText = null;
            cells = false;
        }
    }

    /** A workbook cut off between two records looks fine to the library. */
    void finish() {
        if (depth != 0 || sheet + 1 < bound.size()) {
            throw new Stopped(BadSheetException.damaged("The workbook ends before its last sheet does.", null)
                    .at(sheetName(), rowNumber));
        }
    }

    private void bookRecord(Record found) {
        if (found instanceof BoundSheetRecord tab) {
            bound.add(tab);
        } else if (found instanceof SSTRecord table) {
            texts = table;
        } else if (found instanceof FormatRecord format) {
            formats.put(format.getIndexCode(), format.getFormatString());
        } else if (found instanceof ExtendedFormatRecord style) {
            formatOfStyle.add((int) style.getFormatIndex());
        } else if (found instanceof DateWindow1904Record window) {
            date1904 = window.getWindowing() == 1;
        }
    }

    private void sheetRecord(Record found) {
        if (found instanceof CellValueRecordInterface cell) {
            cell(cell);
        } else if (found instanceof StringRecord text && awaitsText != null) {
            add(awaitsText, Cell.Type.TEXT, text.getString());
            awaitsText = null;
        } else if (found instanceof RowRecord line) {
            hiddenRows.set(line.getRowNumber(), line.getZeroHeight());
        } else if (found instanceof ColumnInfoRecord columns
                && (columns.getHidden() || columns.getColumnWidth() == 0)) {
            for (int i = columns.getFirstColumn(); i <= Math.min(columns.getLastColumn(), MOST_COLUMNS - 1); i++) {
                hiddenColumns.add(i + 1);
            }
        } else if (found instanceof MergeCellsRecord ranges) {
            for (int i = 0; i < ranges.getNumAreas(); i++) {
                CellRangeAddress area = ranges.getAreaAt(i);
                merged.add(new CellRange(area.getFirstRow() + 1, area.getFirstColumn() + 1,
                        area.getLastRow() + 1, area.getLastColumn() + 1));
            }
        }
    }

    private void cell(CellValueRecordInterface cell) {
        if (cell.getRow() + 1 != rowNumber) {
            tellRow();
            rowNumber = cell.getRow() + 1;
        }
        awaitsText = null;
        if (cell.getColumn() < 0 || cell.getColumn() >= MOST_COLUMNS) {
            throw new Stopped(BadSheetException.damaged("The row has a cell in column %d."
                    .formatted(cell.getColumn()), null).at(sheetName(), rowNumber));
        }
        if (cell instanceof LabelSSTRecord label) {
            add(cell, Cell.Type.TEXT, texts.getString(label.getSSTIndex()).getString());
        } else if (cell instanceof LabelRecord label) {
            add(cell, Cell.Type.TEXT, label.getValue());
        } else if (cell instanceof NumberRecord number) {
            addNumber(cell, number.getValue());
        } else if (cell instanceof BoolErrRecord value) {
            if (value.isBoolean()) {
                add(cell, Cell.Type.BOOLEAN, value.getBooleanValue() ? "TRUE" : "FALSE");
            } else {
                add(cell, Cell.Type.ERROR, error(value.getErrorValue()));
            }
        } else if (cell instanceof FormulaRecord formula) {
            addResult(formula);
        }
    }

    private void addResult(FormulaRecord formula) {
        switch (formula.getCachedResultTypeEnum()) {
            case STRING -> awaitsText = formula.hasCachedResultString() ? formula : null;
            case BOOLEAN -> add(formula, Cell.Type.BOOLEAN, formula.getCachedBooleanValue() ? "TRUE" : "FALSE");
            case ERROR -> add(formula, Cell.Type.ERROR, error(formula.getCachedErrorValue()));
            case NUMERIC -> addNumber(formula, formula.getValue());
            default -> { }
        }
    }

    private static String error(int code) {
        return FormulaError.isValidCode(code) ? FormulaError.forInt(code).getString() : "#ERR!";
    }

    private void addNumber(CellValueRecordInterface cell, double value) {
        NumberStyle style = styles.computeIfAbsent((int) cell.getXFIndex(), this::style);
        guarded(() -> row.add(style.cell(cell.getColumn() + 1, value, NumberText.of(value), date1904)));
    }

    private NumberStyle style(int index) {
        int format = index < formatOfStyle.size() ? formatOfStyle.get(index) : 0;
        return NumberStyle.of(format, formats.get(format));
    }

    private void add(CellValueRecordInterface cell, Cell.Type type, String text) {
        guarded(() -> row.add(new Cell(cell.getColumn() + 1, type, text, Double.NaN)));
    }

    private void tellRow() {
        if (rowNumber > 0) {
            guarded(() -> row.tell(rowNumber, hiddenRows.get(rowNumber - 1), visitor));
        }
        row.clear();
    }

    private interface Work {
        void run() throws IOException;
    }

    private static void guarded(Work work) {
        try {
            work.run();
        } catch (IOException | RuntimeException stop) {
            throw new Stopped(stop);
        }
    }
}
