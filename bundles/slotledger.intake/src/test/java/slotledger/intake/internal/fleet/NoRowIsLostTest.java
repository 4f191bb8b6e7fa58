package slotledger.intake.internal.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.table.Mapping;
import slotledger.model.observed.ObservedFleet;

class NoRowIsLostTest {

    private static final String HEADINGS =
            "Asset tag | Serial | Model | Room | Slots | RAM | Slot 1 | Slot 2 | Notes\n";

    @Provide
    Arbitrary<List<List<String>>> rows() {
        Arbitrary<String> cell = Arbitraries.of("", "", "A-1", "A-2", "K10", "8", "4GB", "2x4 GB", "empty", "n/a",
                "Total",
                "!#REF!", "@2026-08-04", "~4", "see below, please ask", "DDR4-2666", "=1+1", "../x", "999999", "-3",
                        "Ω≈ç",
                "‮abc", "0 GB", "4096 GB", "1e9", "EXAMPLE 1", "Asset tag", "Model", "ab,cd;ef", "4/4/-/-", "?",
                        "1.234");
        return cell.list().ofSize(9).list().ofMaxSize(70);
    }

    @Property(tries = 300)
    void everyRowIsAMachineOrNamedInAFinding(@ForAll("rows") List<List<String>> rows) throws IntakeException {
        StringBuilder grid = new StringBuilder(HEADINGS);
        Set<Integer> written = new TreeSet<>();
        for (int i = 0; i < rows.size(); i++) {
            grid.append(String.join(" | ", rows.get(i))).append('\n');
            if (rows.get(i).stream().anyMatch(cell -> !cell.isEmpty())) {
                written.add(i + 2);
            }
        }
        Reading<ObservedFleet> reading = InventoryTest.read(grid.toString(), Mapping.NONE);
        Set<Integer> seen = new TreeSet<>();
        reading.value().machines().forEach(machine -> seen.add(machine.place().row().getAsInt()));
        reading.findings().forEach(finding -> finding.place().row().ifPresent(seen::add));
        reading.columns().forEach(table -> seen.add(table.headerRow()));
        seen.remove(1);
        assertEquals(written, seen);
        int machines = reading.value().machines().size();
        assertEquals(machines, reading.value().machines().stream().map(machine -> machine.tag()).distinct().count());
    }
}
