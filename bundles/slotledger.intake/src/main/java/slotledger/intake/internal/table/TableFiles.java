package slotledger.intake.internal.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.model.finding.Finding;
import slotledger.model.observed.TableUse;
import slotledger.model.task.Progress;

/**
 * Finds the tables of one kind in several files.
 *
 * @param sheets      reads the files
 * @param headings    name of the list of headings
 * @param leastFields how many known headings make a table
 * @param expected    what is looked for, in words
 */
public record TableFiles(SheetFile sheets, String headings, int leastFields, String expected) {

    /** Passes all rows on; returns how their columns were understood. */
    public List<TableUse> read(List<Path> files, TableVisitor rows, Consumer<Finding> findings, Progress progress)
            throws IntakeException {
        List<TableUse> uses = new ArrayList<>();
        for (Path file : files) {
            TableFinder finder = new TableFinder(String.valueOf(file.getFileName()), Headings.of(headings, Map.of()),
                    leastFields, rows, findings);
            sheets.read(file, finder, progress);
            finder.endFile(expected);
            uses.addAll(finder.uses());
        }
        return uses;
    }
}
