package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.Fleet;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.trade.Shelf;
import slotledger.model.unit.Capacity;
import slotledger.rules.standard.StandardRules;

/** The board takes unbuffered DDR4 DIMMs. */
class ConfusionsTest {

    private final SmallWorld world = new SmallWorld();
    private final Fleet fleet = world.fleet(world.machine("A", "8 -"), world.machine("B", "8 8"));

    private static ModuleKind dimm(Generation generation, int gibibytes) {
        return ModuleKind.of(generation, Form.DIMM, Capacity.ofGiB(gibibytes));
    }

    private List<Finding> findings(Piece... pieces) {
        Map<Piece, Integer> shelf = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            shelf.put(piece, 1);
        }
        return new Confusions(StandardRules.create()).findings(fleet, Market.NONE, new Shelf(shelf), Progress.NONE);
    }

    @Test
    void aModuleThatGoesInAndIsWrongIsAWarning() {
        List<Finding> findings = findings(dimm(Generation.DDR4, 8).with(Buffering.REGISTERED));
        assertEquals(1, findings.size());
        Finding finding = findings.get(0);
        assertEquals(Severity.WARNING, finding.severity());
        assertTrue(finding.message().startsWith("A registered DDR4 DIMM looks like a DDR4 DIMM without register and is "
                + "wrong for Small One: no start."), finding.message());
        assertEquals("8 GB DDR4 DIMM, registered", finding.seen());
        assertTrue(finding.remedy().matches("Tell them apart. By eye: .+ On the label: .+"), finding.remedy());
    }

    @Test
    void oneThatDoesNotGoInIsANote() {
        List<Finding> findings = findings(dimm(Generation.DDR5, 8));
        assertEquals(List.of(Severity.NOTE), findings.stream().map(Finding::severity).toList());
    }

    @Test
    void manyKindsOfOneThingAreOneFinding() {
        List<Finding> findings = findings(dimm(Generation.DDR5, 8), dimm(Generation.DDR5, 16),
                dimm(Generation.DDR5, 24), dimm(Generation.DDR5, 32), dimm(Generation.DDR5, 48));
        assertEquals(1, findings.size());
        assertTrue(findings.get(0).seen().endsWith(" and 2 more"), findings.get(0).seen());
    }

    @Test
    void whatIsRightOrLooksLikeNothingWantedIsNoFinding() {
        assertEquals(List.of(), findings(dimm(Generation.DDR4, 8).with(Buffering.UNBUFFERED),
                dimm(Generation.DDR2, 2).with(Buffering.FULLY_BUFFERED), dimm(Generation.DDR4, 8)));
    }
}
