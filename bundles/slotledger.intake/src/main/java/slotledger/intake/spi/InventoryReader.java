package slotledger.intake.spi;

import java.nio.file.Path;
import java.util.Optional;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.source.Ground;
import slotledger.model.task.Progress;

/**
 * Reads one kind of inventory. An OSGi service with the property {@link ReaderName}; of several readers that can read a
 * file, the one with the highest service ranking does. May be called from any thread.
 */
public interface InventoryReader {

    /** Whether this reader knows the kind of file, by its name or its first bytes; never fails. */
    boolean canRead(Path file);

    /** What the facts of this reader rest on; it decides who is believed where two inventories differ. */
    default Ground ground() {
        return Ground.SPREADSHEET;
    }

    /**
     * Reads an inventory. Every row or entry of it must become a machine or be named in a finding. Asset tags may come
     * twice; whoever joins the files sorts that out.
     *
     * @param mapping a file that says which column is what; a reader without columns ignores it
     * @throws IntakeException where the file can't be read at all
     */
    Reading<ObservedFleet> read(Path file, Optional<Path> mapping, Progress progress) throws IntakeException;
}
