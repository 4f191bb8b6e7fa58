package slotledger.intake.internal.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.table.Grid;
import slotledger.model.task.Progress;
import slotledger.model.trade.Shelf;

class ShelfTest {

    private static Shelf read(String grid) throws IntakeException {
        return new ShelfReader(new Grid(grid)).read(List.of(Path.of("shelf.xlsx")), Progress.NONE).value();
    }

    @Test
    void modulesAndFillersAreCountedInFileOrder() throws IntakeException {
        Shelf shelf = read("""
                Module | Count
                CRIMM | 3
                8GB PC4-2666V-U | 2
                airflow blank | 4
                continuity module | 2
                """);
        assertEquals("{184-pin continuity module=5, 8 GB DDR4-2666 DIMM, non-ECC, unbuffered=2, airflow blank=4}",
                shelf.pieces().toString());
    }

    @Test
    void aModuleWhoseTextSpeaksOfTerminationIsNoFiller() throws IntakeException {
        assertEquals("{8 GB DDR4-2666 DIMM, non-ECC, unbuffered=2}", read("""
                Module | Count
                8GB PC4-2666V-U, on-die termination | 2
                """).pieces().toString());
    }
}
