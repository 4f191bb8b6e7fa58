package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.catalog.ResolvedFleet;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.source.Place;

/** Populations are written "slot 1, slot 2" in GB; "-" is an empty slot, "b" one with an airflow blank. */
class ProofMakerTest {

    private final SmallWorld world = new SmallWorld();

    @Test
    void aMachineWithEveryModuleInItsPlannedSlotIsDone() {
        assertEquals(ProofOutcome.DONE, outcome("4 -", "4 8", "4 8"));
    }

    @Test
    void aMachineLeftAsItWasIsNotDone() {
        assertEquals(ProofOutcome.NOT_DONE, outcome("4 -", "4 8", "4 -"));
    }

    @Test
    void theRightModulesInOtherSlotsAreDoneDifferently() {
        MachineProof proof = prove("4 -", "4 8", "8 4");
        assertEquals(ProofOutcome.DONE_DIFFERENTLY, proof.outcome());
        assertEquals(List.of("S1", "S2"), proof.differences().stream().map(MachineProof.Difference::where).toList());
    }

    @Test
    void moreThanPlannedIsDoneDifferently() {
        assertEquals(ProofOutcome.DONE_DIFFERENTLY, outcome("4 -", "4 8", "8 8"));
    }

    @Test
    void lessThanPlannedIsWorse() {
        assertEquals(ProofOutcome.WORSE, outcome("4 -", "8 8", "8 -"));
    }

    @Test
    void anUntouchedMachineThatLostAModuleIsWorse() {
        assertEquals(ProofOutcome.WORSE, outcome("8 8", "8 8", "8 -"));
    }

    @Test
    void aPopulationTheRulesForbidIsWorseHoweverLarge() {
        assertEquals(ProofOutcome.WORSE, outcome("4 -", "4 8", "64 8"));
    }

    @Test
    void aMachineTheInventoryDoesNotListIsNotSeen() {
        MachinePlan plan = world.plan("A1", "4 -", "4 8");
        Proof proof = world.prove(List.of(plan), new ResolvedFleet(world.fleet(), List.of(), List.of()), List.of());
        assertEquals(ProofOutcome.NOT_SEEN, proof.machines().get(0).outcome());
        assertFalse(proof.isComplete());
    }

    @Test
    void aMachineThePlanDoesNotKnowBecomesAFinding() {
        Proof proof = world.prove(
                List.of(), new ResolvedFleet(world.fleet(world.machine("B9", "4 -")), List.of(), List.of()), List.of());
        assertEquals(List.of("machine-not-in-plan"), proof.findings().stream().map(Finding::code).toList());
    }

    @Test
    void anInventoryThatDoesNotNameSlotsProvesTheModulesOnly() {
        Machine after = world.machine("A1", "8 4");
        Finding assumed = new Finding(Severity.WARNING, "slots-assumed", Place.NOWHERE, Optional.of(after.tag()), "",
                "Which slot is not said.", "", "Look.");
        Proof proof = world.prove(List.of(world.plan("A1", "4 -", "4 8")),
                new ResolvedFleet(world.fleet(after), List.of(), List.of()), new ArrayList<>(List.of(assumed)));
        assertEquals(ProofOutcome.DONE, proof.machines().get(0).outcome());
        assertTrue(proof.machines().get(0).remark().contains("does not say in which slots"));
        assertTrue(proof.isComplete());
    }

    @Test
    void aFillerTheInventoryDoesNotNameIsCheckedByEyeAndNoFailure() {
        for (String found : List.of("8 -", "8 b")) {
            MachineProof proof = prove("8 8", "8 b", found);
            assertEquals(ProofOutcome.DONE, proof.outcome());
            assertEquals("Not seen by firmware, check by eye: airflow blank in S2.", proof.remark());
        }
    }

    @Test
    void aFillerTheInventoryNamesNeedsNoSecondLook() {
        Machine after = world.machine("A1", "8 b");
        Proof proof = world.prove(List.of(world.plan("A1", "8 8", "8 b")),
                new ResolvedFleet(world.fleet(after), List.of(), List.of()), Set.of(after.tag()), List.of());
        assertEquals(ProofOutcome.DONE, proof.machines().get(0).outcome());
        assertEquals("", proof.machines().get(0).remark());
    }

    @Test
    void aModuleInPlaceOfAPlannedFillerIsNoMatch() {
        assertEquals(ProofOutcome.DONE_DIFFERENTLY, outcome("4 4", "8 b", "8 4"));
    }

    @Test
    void fillersAssumedAfterTheWorkDoNotHideThatModulesAreInOtherSlots() {
        assertEquals("The planned modules are in other slots than planned.", prove("4 -", "8 b", "b 8").remark());
    }

    private ProofOutcome outcome(String before, String planned, String found) {
        return prove(before, planned, found).outcome();
    }

    private MachineProof prove(String before, String planned, String found) {
        Fleet fleet = world.fleet(world.machine("A1", found));
        return world.prove(List.of(world.plan("A1", before, planned)),
                new ResolvedFleet(fleet, List.of(), List.of()), List.of()).machines().get(0);
    }
}
