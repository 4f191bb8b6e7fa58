package slotledger.workbench.internal.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.source.Place;
import slotledger.workbench.internal.SmallFleet;

class FindingLineTest {

    private static final Finding NOTE = new Finding(Severity.NOTE, "note", Place.NOWHERE, Optional.empty(), "",
            "A column is hidden.", "", "Nothing.");
    private static final Finding ERROR = new Finding(Severity.ERROR, "size",
            Place.ofRow("fleet.xlsx", "PCs", 7).atColumn(6, "RAM"), Optional.of(new AssetTag("PC-1")), "4G?",
            "The size can't be read.", "a size such as 8 GB", "Correct the cell.");

    @Test
    void theWorstFindingsComeFirstAndEqualOnesStayInReadingOrder() {
        Finding second = ERROR.about(new AssetTag("PC-2"));
        assertEquals(List.of("PC-1", "PC-2", ""), lines(NOTE, ERROR, second).stream()
                .map(line -> line.machine().map(AssetTag::value).orElse("")).toList());
    }

    @Test
    void aLineSaysWhatWasSeenWhereAndWhatToDo() {
        assertEquals("The size can't be read. Seen: “4G?”. Expected: a size such as 8 GB.\nCorrect the cell.\n"
                + "fleet.xlsx, sheet PCs, row 7, column F (RAM)", lines(ERROR).get(0).inFull());
    }

    @Test
    void aFindingWithoutPlaceLeavesThePlaceEmpty() {
        assertEquals("A column is hidden.\nNothing.", lines(NOTE).get(0).inFull());
    }

    @Test
    void aTextWithBracesIsShownAsItIs() {
        Finding odd = new Finding(Severity.NOTE, "odd", Place.NOWHERE, Optional.empty(), "{0} it's '{1}'",
                "Odd.", "", "Nothing.");
        assertEquals("Odd. Seen: “{0} it's '{1}'”.", lines(odd).get(0).message());
    }

    private static List<FindingLine> lines(Finding... findings) {
        Survey survey = SmallFleet.opened(List.of(), List.of(), List.of(findings)).survey();
        return FindingLine.of(survey, Optional.empty());
    }
}
