package slotledger.workbench.internal.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.workbench.internal.SmallFleet;

class FleetTableTest {

    private static final Population BARE = Population.empty(SmallFleet.BOARD);

    private final FleetTable table = new FleetTable();

    @BeforeEach
    void showFourMachines() {
        table.show(FleetRow.of(SmallFleet.opened(List.of(
                SmallFleet.machine("PC-10", "North", "Lab 1", BARE.with("S1", SmallFleet.dimm(4))),
                SmallFleet.machine("PC-9", "North", "Lab 2", BARE.with("S1", SmallFleet.dimm(16))),
                SmallFleet.machine("PC-8", "South", "Lab 1", BARE.with("S1", new SlotContent.Unread("4G?")))),
                List.of(SmallFleet.unresolved("OLD-1")), List.of()), Optional.empty()));
    }

    @Test
    void unresolvedMachinesStandBelowTheOthersInInventoryOrder() {
        assertEquals(List.of("PC-10", "PC-9", "PC-8", "OLD-1"), tags());
    }

    @Test
    void everyWordOfTheFilterMustOccurInSomeColumn() {
        table.filter("  LAB north 16");
        assertEquals(List.of("PC-9"), tags());
        table.filter("judged");
        assertEquals(List.of("OLD-1"), tags());
        table.filter("");
        assertEquals(4, tags().size());
    }

    @Test
    void totalsSortBySizeWithTheUnknownFirst() {
        table.sort(FleetColumn.TOTAL, false);
        assertEquals(List.of("PC-8", "OLD-1", "PC-10", "PC-9"), tags());
        table.sort(FleetColumn.TOTAL, true);
        assertEquals(List.of("PC-9", "PC-10", "PC-8", "OLD-1"), tags());
    }

    @Test
    void tagsSortByTheirNumbersAndUnsortingBringsTheInventoryOrderBack() {
        table.sort(FleetColumn.TAG, false);
        assertEquals(List.of("OLD-1", "PC-8", "PC-9", "PC-10"), tags());
        table.unsort();
        assertEquals("PC-10", tags().get(0));
    }

    @Test
    void theOrderStaysWhenTheFilterChanges() {
        table.sort(FleetColumn.TAG, true);
        table.filter("pc-");
        assertEquals(List.of("PC-10", "PC-9", "PC-8"), tags());
    }

    @Test
    void aMachineThatTheFilterHidesHasNoLine() {
        assertEquals(1, table.indexOf(new AssetTag("PC-9")));
        table.filter("south");
        assertEquals(-1, table.indexOf(new AssetTag("PC-9")));
    }

    private List<String> tags() {
        return table.visible().stream().map(row -> row.tag().value()).toList();
    }
}
