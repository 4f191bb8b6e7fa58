package slotledger.export;

import java.nio.file.Path;
import slotledger.model.plan.Plan;
import slotledger.model.proof.Proof;

/** Writes and reads back the files that other runs build on. Files are written whole or not at all. */
public interface PlanFiles {

    /** Writes plan.json by its published schema. */
    void writePlan(Plan plan, Path file) throws ExportException;

    /** Reads what {@link #writePlan} wrote; the result equals the plan written. */
    Plan readPlan(Path file) throws ExportException;

    /** Writes the proof workbook. */
    void writeProof(Proof proof, Path file) throws ExportException;
}
