package slotledger.intake.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.task.Progress;

/** What every inventory reader must keep. Extend it with your reader and a file it reads. */
public abstract class InventoryReaderContract {

    @TempDir
    protected Path folder;

    protected abstract InventoryReader reader();

    /** Writes a file the reader reads, with at least one row that is no machine. */
    protected abstract Path example(Path target) throws IOException;

    /** The rows (or lines, or entries) of the example that must come back as a machine or in a finding. */
    protected abstract Set<Integer> rowsOfExample();

    /** Where the example goes, with the ending this reader knows. */
    protected abstract String exampleName();

    private Reading<ObservedFleet> read() throws IOException, IntakeException {
        return reader().read(example(folder.resolve(exampleName())), Optional.empty(), Progress.NONE);
    }

    @Test
    void itKnowsItsOwnKindOfFileAndNoOther() throws IOException {
        assertTrue(reader().canRead(example(folder.resolve(exampleName()))));
        assertFalse(reader().canRead(Files.writeString(folder.resolve("picture.png"), "not an inventory")));
        assertFalse(reader().canRead(folder.resolve("there is no such file.abc")));
    }

    @Test
    void everyRowIsAMachineOrNamedInAFinding() throws IOException, IntakeException {
        Reading<ObservedFleet> reading = read();
        Set<Integer> seen = new TreeSet<>();
        reading.value().machines().forEach(machine -> machine.place().row().ifPresent(seen::add));
        reading.findings().forEach(finding -> finding.place().row().ifPresent(seen::add));
        assertTrue(seen.containsAll(rowsOfExample()), "rows seen: " + seen);
    }

    @Test
    void everyMachineAndFindingSaysWhereItStands() throws IOException, IntakeException {
        Reading<ObservedFleet> reading = read();
        assertFalse(reading.value().machines().isEmpty());
        reading.value().machines().forEach(machine -> assertEquals(exampleName(), machine.place().file()));
        reading.findings().forEach(finding -> assertEquals(exampleName(), finding.place().file()));
    }

    @Test
    void whatCanNotBeReadIsRefusedWithAFinding() {
        Path missing = folder.resolve("missing-" + exampleName());
        IntakeException refused = assertThrows(IntakeException.class,
                () -> reader().read(missing, Optional.empty(), Progress.NONE));
        assertFalse(refused.finding().remedy().isBlank());
    }
}
