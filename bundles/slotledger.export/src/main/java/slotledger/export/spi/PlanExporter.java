package slotledger.export.spi;

import java.nio.file.Path;
import java.util.List;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.model.task.Progress;

/** Writes a plan in one form. Register as a service; each needs a name of its own. */
public interface PlanExporter {

    /** Short name a user can ask for, lower-case words with hyphens: "order-workbook". */
    String name();

    /** Its place among the others in the list of files a person is shown; smaller comes first. */
    default int rank() {
        return 100;
    }

    /**
     * Writes its files into the folder, which exists and is new; returns them in the order a person would open them.
     *
     * @throws ExportException where a file can't be written
     */
    List<Path> write(PlanBook book, Path folder, Progress progress) throws ExportException;
}
