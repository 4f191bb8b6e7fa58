package slotledger.workbench.internal.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;

class FindingsFilterTest {

    private static final FindingLine TWICE = line(Severity.ERROR, "PC-1", "fleet.xlsx, row 4", "The tag stands twice.");
    private static final FindingLine SIZE = line(Severity.WARNING, "PC-2", "fleet.xlsx, row 5", "The sizes disagree.");

    private final FindingsFilter findings = new FindingsFilter();

    @Test
    void withoutWordsEverythingShows() {
        findings.show(List.of(TWICE, SIZE));
        assertEquals(List.of(TWICE, SIZE), findings.visible());
        assertEquals("1 errors · 1 warnings · 0 notes", findings.summary());
    }

    @Test
    void allWordsMustBeSomewhereInTheLine() {
        findings.show(List.of(TWICE, SIZE));
        findings.filter("  FLEET pc-2 ");
        assertEquals(List.of(SIZE), findings.visible());
        assertEquals("1 shown · 1 errors · 1 warnings · 0 notes", findings.summary());
        findings.filter("fleet pc-3");
        assertEquals(List.of(), findings.visible());
    }

    @Test
    void aCleanProjectSaysSo() {
        assertEquals("The files hold nothing doubtful.", findings.summary());
    }

    private static FindingLine line(Severity severity, String tag, String place, String message) {
        return new FindingLine(severity, Optional.of(new AssetTag(tag)), place, message, "Look at it.");
    }
}
