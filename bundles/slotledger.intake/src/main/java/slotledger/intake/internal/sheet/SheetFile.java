package slotledger.intake.internal.sheet;

import java.nio.file.Path;
import slotledger.intake.IntakeException;
import slotledger.model.task.Progress;

/** Reads one kind of file as sheets of cells, in little memory. */
public interface SheetFile {

    /**
     * Tells the visitor everything in the file.
     *
     * @throws IntakeException where the file is not what it claims to be, is locked by a password, is damaged, or asks
     *                         for more memory than any honest file; the finding says what to do
     */
    void read(Path file, SheetVisitor visitor, Progress progress) throws IntakeException;
}
