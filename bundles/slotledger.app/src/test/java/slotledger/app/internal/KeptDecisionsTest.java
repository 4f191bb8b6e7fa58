package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.app.Project;
import slotledger.app.Stored;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Whereabouts;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Decision;
import slotledger.model.project.Decision.Correction;
import slotledger.model.project.Decision.Mute;
import slotledger.model.project.Entry;
import slotledger.model.project.Fact;
import slotledger.model.project.Journal;
import slotledger.model.source.Place;

/** What people decided holds for a later inventory, and what disagrees with it is shown. */
class KeptDecisionsTest {

    private static final AssetTag TAG = new AssetTag("K-1");
    private static final Correction ROLE = new Correction(TAG, Fact.ROLE, "ofice", "office");

    private final List<Finding> findings = new ArrayList<>();

    @Test
    void aCorrectionHoldsWhileTheInventorySaysTheSame() {
        assertEquals("office", corrected("ofice").role());
        assertEquals(List.of(), findings);
    }

    @Test
    void aCorrectionHoldsAndTheConflictIsShownWhereTheInventorySaysSomethingNew() {
        assertEquals("office", corrected("lab").role());
        assertEquals(List.of("correction-conflict"), findings.stream().map(Finding::code).toList());
        Finding conflict = findings.get(0);
        assertEquals(Severity.WARNING, conflict.severity());
        assertEquals("lab", conflict.seen());
        assertTrue(conflict.message().contains("anna decided on 2026-11-28 (entry 2: counted)"), conflict.message());
        assertTrue(conflict.remedy().contains("project undo --entry 2"), conflict.remedy());
    }

    @Test
    void anInventoryThatAgreesByNowIsNoted() {
        assertEquals("office", corrected("office").role());
        assertEquals(List.of("correction-no-longer-needed"), findings.stream().map(Finding::code).toList());
    }

    @Test
    void aCorrectionOfAMachineThatIsGoneIsShown() {
        ObservedFleet fleet = new ObservedFleet(List.of(machine("K-2", "ofice")), List.of());
        ObservedFleet after = new Corrections(project(ROLE)).applied(fleet, findings);
        assertEquals("ofice", after.machines().get(0).role());
        assertEquals(List.of("correction-without-machine"), findings.stream().map(Finding::code).toList());
    }

    @Test
    void everyFactCanBeCorrectedAndNoOtherChanges() {
        ObservedMachine machine = machine("K-1", "lab");
        for (Fact fact : Fact.values()) {
            ObservedMachine after = ObservedFacts.with(machine, fact, "new");
            for (Fact other : Fact.values()) {
                assertEquals(other == fact ? "new" : ObservedFacts.of(machine, other), ObservedFacts.of(after, other));
            }
        }
    }

    @Test
    void aMutedWarningBecomesANoteWhereverItsRowHasGone() {
        Mutes mutes = new Mutes(project(new Mute("odd-size", "K-1", "80 GB")));
        Finding after = mutes.applied(List.of(warning(31, "80 GB"))).get(0);
        assertEquals(Severity.NOTE, after.severity());
        assertTrue(after.message().endsWith("Muted: anna decided on 2026-11-28 (entry 2: counted)."), after.message());
    }

    @Test
    void aMutedWarningIsShownAgainWhereSomethingElseIsSeen() {
        Mutes mutes = new Mutes(project(new Mute("odd-size", "K-1", "80 GB")));
        Finding after = mutes.applied(List.of(warning(7, "96 GB"))).get(0);
        assertEquals(Severity.WARNING, after.severity());
        assertTrue(after.message().contains("Not muted") && after.message().contains("80 GB"), after.message());
    }

    @Test
    void otherWarningsAndErrorsStayAsTheyAre() {
        Mutes mutes = new Mutes(project(new Mute("odd-size", "K-1", "80 GB")));
        Finding other = warning(7, "80 GB").about(new AssetTag("K-2"));
        Finding error = new Finding(Severity.ERROR, "odd-size", Place.NOWHERE, Optional.of(TAG), "80 GB", "m", "", "r");
        assertEquals(List.of(other, error), mutes.applied(List.of(other, error)));
    }

    private ObservedMachine corrected(String roleNow) {
        return new Corrections(project(ROLE))
                .applied(new ObservedFleet(List.of(machine("K-1", roleNow)), List.of()), findings).machines().get(0);
    }

    private static Finding warning(int row, String seen) {
        return new Finding(Severity.WARNING, "odd-size", Place.ofRow("fleet.xlsx", "PCs", row), Optional.of(TAG), seen,
                "The size is odd.", "a usual size", "Look at it.");
    }

    private static ObservedMachine machine(String tag, String role) {
        return new ObservedMachine(new AssetTag(tag), "S-1", "Kestrin", "KB-510", new Whereabouts("Main", "101"), "47",
                role, "Linux", "Corvid 5", OptionalInt.empty(), "", OptionalInt.empty(), Optional.empty(), List.of(),
                Place.ofRow("fleet.xlsx", "PCs", 14));
    }

    private static Project project(Decision decision) {
        Instant made = Instant.parse("2026-11-28T12:00:00Z");
        Journal journal = new Journal(List.of(
                new Entry(1, made, new Author("anna", ""), new Change.Created("school"), "a"),
                new Entry(2, made, new Author("anna", "counted"), new Change.Decided(decision), "b")));
        return new Project("school", List.of(), Optional.empty(), List.of(), List.of(), List.of(), Optional.empty(),
                Optional.empty(), LocalDate.of(2026, 11, 24),
                Optional.of(new Stored(Path.of("school"), journal.state())));
    }
}
