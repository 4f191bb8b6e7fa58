package slotledger.export;

import java.nio.file.Path;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Plan;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.Proof;

/** Writes single files, and reads back those that other runs build on. Files are written whole or not at all. */
public interface PlanFiles {

    /** Writes plan.json by its published schema. */
    void writePlan(Plan plan, Path file) throws ExportException;

    /** Reads what {@link #writePlan} wrote; the result equals the plan written. */
    Plan readPlan(Path file) throws ExportException;

    /** Writes the proof workbook. */
    void writeProof(Proof proof, Path file) throws ExportException;

    /** Writes what is different between two plans as a workbook. */
    void writeDifference(Difference difference, Path file) throws ExportException;

    /** Writes what arrived, for which machine it is, and which machines wait, as a workbook. */
    void writeArrivals(Delivery delivery, Path file) throws ExportException;

    /** Writes the same for a plan that has ended, with what has changed against the plan as it was. */
    void writeArrivals(Settlement settled, Path file) throws ExportException;

    /** Writes the workbook that says which module goes into which slot of a board. */
    void writeMatrix(BoardMatrix matrix, Path file) throws ExportException;

    /**
     * Writes a curve of budgets as a workbook with a chart.
     *
     * @param title name of the project
     */
    void writeCurve(BudgetCurve curve, String title, Path file) throws ExportException;

    /** Writes how a plan ended, as a report to print. */
    void writeCloseReport(CloseOut close, Path file) throws ExportException;

    /** Writes how a plan ended, as a workbook. */
    void writeCloseBook(CloseOut close, Path file) throws ExportException;

    /** Writes what each machine holds after the work, as a list (CSV) that inventories take in. */
    void writeAssets(CloseOut close, Path file) throws ExportException;
}
