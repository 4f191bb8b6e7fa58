package slotledger.intake;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slotledger.model.delivery.Receipt;
import slotledger.model.finding.Finding;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.LabelReading;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.Reconciliation;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;

/**
 * Reads what people have: inventories, offers, shelf lists, policies, choices. Files are .xlsx, .xls, .csv or (policy,
 * choices) text.
 */
public interface Intake {

    /**
     * Reads inventories into one observed fleet; an asset tag that occurs twice becomes a finding.
     *
     * @param files   one or several inventories
     * @param mapping a file that says which column is what; empty means by heading
     * @throws IntakeException where a file can't be read at all
     */
    Reading<ObservedFleet> readFleet(List<Path> files, Optional<Path> mapping, Progress progress)
            throws IntakeException;

    /**
     * Reads inventories as {@link #readFleet} does, and says of each fact what every source says of it. Spreadsheets
     * and firmware are joined by asset tag and serial number; who is believed stands in the mapping file.
     */
    Reading<Reconciliation> reconcile(List<Path> files, Optional<Path> mapping, Progress progress)
            throws IntakeException;

    /**
     * Reads what firmware among the inventories says of boards, one report a machine; spreadsheets are left out. Its
     * findings are those of {@link #readFleet} and are not given again.
     */
    Reading<List<BoardReport>> readBoards(List<Path> files, Progress progress) throws IntakeException;

    Reading<Market> readOffers(List<Path> files, Progress progress) throws IntakeException;

    Reading<Shelf> readShelf(List<Path> files, Progress progress) throws IntakeException;

    /** Modules that are on the shelf by their SPD image and in a machine by what is said there; findings alone. */
    List<Finding> compareShelf(List<Path> files, ObservedFleet fleet, Progress progress) throws IntakeException;

    /** Reads lists of what arrived of an order, all files as one list. */
    Reading<List<Receipt>> readReceipts(List<Path> files, Progress progress) throws IntakeException;

    Reading<Policy> readPolicy(Path file) throws IntakeException;

    /**
     * Reads what people decided.
     *
     * @param known what they can speak of; what is named and is not there becomes a finding
     */
    Reading<Choices> readChoices(Path file, Known known) throws IntakeException;

    /**
     * Reads what stands on a module's label or in a list ("8GB 2Rx8 PC4-2400T-SE1"); empty where no capacity is told.
     */
    Reading<Optional<ModuleKind>> readModule(String text);

    /** Reads a label part by part: what each was taken for, and what is told even where no capacity is. */
    LabelReading readLabel(String text);

    /** Writes an annotated copy of what was read of the inventories: the sheets with notes on the cells concerned. */
    void writeFindings(List<Path> files, List<Finding> findings, Path target)
            throws IntakeException;

    /** Writes what was compared as text with commas, one fact a row. */
    void writeReconciliation(Reconciliation reconciliation, Path target) throws IntakeException;

    /** Writes the fill-in files with explanations in them into a folder; returns what was written. */
    List<Path> writeTemplates(Path folder) throws IntakeException;
}
