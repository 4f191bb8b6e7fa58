package slotledger.intake.internal.receipt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.table.Grid;
import slotledger.model.delivery.Receipt;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.task.Progress;

class ReceiptReaderTest {

    private static Reading<List<Receipt>> read(String grid) throws IntakeException {
        return new ReceiptReader(new Grid("== Delivery\n" + grid))
                .read(List.of(Path.of("received.xlsx")), Progress.NONE);
    }

    private static List<Finding> errors(Reading<List<Receipt>> reading) {
        return reading.findings().stream().filter(finding -> finding.severity() == Severity.ERROR).toList();
    }

    @Test
    void packsAndModulesAreTakenAsTheyAreCounted() throws IntakeException {
        Reading<List<Receipt>> packs = read("""
                Supplier | Part | Packs | Unusable
                Nord | N-1 | 3 | 1
                """);
        assertEquals(List.of(), packs.findings());
        assertEquals(OptionalInt.of(3), packs.value().get(0).packs());
        assertEquals(1, packs.value().get(0).unusable());
        Receipt modules = read("""
                Supplier | Part | Modules
                Nord | N-1 | 12
                """).value().get(0);
        assertEquals(OptionalInt.of(12), modules.modules());
        assertEquals(OptionalInt.empty(), modules.packs());
        assertEquals(0, modules.unusable());
    }

    @ParameterizedTest
    @CsvSource({
        "Nord | N-1 | two | 0, C",
        "Nord | N-1 | -2 | 0, C",
        "Nord | N-1 | 2.5 | 0, C",
        "Nord | N-1 |  | 0, C",
        "Nord | N-1 | 99999999999 | 0, C",
        "Nord |  | 2 | 0, B",
        "Nord | N-1 | 2 | one, D",
        "Nord | N-1 | 2 | -1, D",
    })
    void aRowThatIsNotClearIsLeftOutAndNamedByFileSheetRowAndColumn(String row, String column) throws IntakeException {
        Reading<List<Receipt>> reading = read("Supplier | Part | Packs | Unusable\nNord | N-0 | 1 | 0\n" + row + "\n");
        assertEquals(1, reading.value().size(), reading.value().toString());
        assertFalse(errors(reading).isEmpty(), reading.findings().toString());
        for (Finding error : errors(reading)) {
            assertEquals("received.xlsx", error.place().file());
            assertEquals("Delivery", error.place().sheet());
            assertEquals(OptionalInt.of(3), error.place().row(), error.toString());
            assertTrue(error.toString().contains("row 3, column " + column), error.toString());
            assertFalse(error.expected().isEmpty(), error.toString());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Supplier | Part | Note, packs-or-modules",
        "Supplier | Part | Packs | Modules, packs-or-modules",
        "Supplier | Packs | Unusable, no-part-column",
    })
    void aTableWithoutTheColumnsItNeedsIsNotUsed(String headings, String code) throws IntakeException {
        Reading<List<Receipt>> reading = read(headings + "\nNord | 3 | 2 | 1\n");
        assertEquals(List.of(), reading.value());
        Finding error = errors(reading).stream().filter(each -> each.code().equals(code)).findFirst().orElseThrow();
        assertEquals("received.xlsx", error.place().file());
        assertEquals(OptionalInt.of(1), error.place().row());
        assertEquals("Delivery", error.place().sheet());
        assertFalse(error.expected().isEmpty());
    }
}
