package slotledger.export.internal.sheet;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A formula and the number of the plan it stands for must agree, or the workbook would change when it is opened. */
final class FormulaCheck {

    /** Less than half of the smallest amount of any currency with up to three digits. */
    private static final double TOLERANCE = 0.0004;

    private FormulaCheck() {
    }

    static void check(XSSFWorkbook workbook) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        check(cell, evaluator.evaluate(cell));
                    }
                }
            }
        }
    }

    private static void check(Cell cell, CellValue computed) {
        boolean same = cell.getCachedFormulaResultType() == computed.getCellType()
                && switch (computed.getCellType()) {
                    case NUMERIC -> Math.abs(cell.getNumericCellValue() - computed.getNumberValue()) < TOLERANCE;
                    case STRING -> cell.getStringCellValue().equals(computed.getStringValue());
                    case BOOLEAN -> cell.getBooleanCellValue() == computed.getBooleanValue();
                    case _NONE, FORMULA, BLANK, ERROR -> false;
                };
        if (!same) {
            throw new IllegalStateException(
                    ("The cell %s of sheet %s must hold what its formula %s gives (%s). "
                            + "Maybe the totals of the plan don't add up.")
                            .formatted(cell.getAddress(), cell.getSheet().getSheetName(), cell.getCellFormula(),
                                    computed.formatAsString()));
        }
    }
}
