package slotledger.intake.spi;

import java.nio.file.Path;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;

/**
 * Reads one kind of offer or price list. An OSGi service with the property {@link ReaderName}; of several sources that
 * can read a file, the one with the highest service ranking does. May be called from any thread.
 */
public interface OfferSource {

    /** Whether this source knows the kind of file, by its name or its first bytes; never fails. */
    boolean canRead(Path file);

    /**
     * Reads offers. Every row of the file must become (part of) an offer or be named in a finding.
     *
     * @throws IntakeException where the file can't be read at all
     */
    Reading<Market> read(Path file, Progress progress) throws IntakeException;
}
