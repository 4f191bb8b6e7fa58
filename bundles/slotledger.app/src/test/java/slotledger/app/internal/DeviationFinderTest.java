package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.catalog.ResolvedFleet;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.Deviation;
import slotledger.model.proof.Deviation.Kind;
import slotledger.model.proof.Proof;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Operation;
import slotledger.model.work.Job;
import slotledger.model.work.JobState;
import slotledger.rules.standard.StandardRules;

/** Populations are written "slot 1, slot 2" in GB. */
class DeviationFinderTest {

    private static final AssetTag ONE = new AssetTag("K-1");

    private final SmallWorld world = new SmallWorld();
    private final List<MachinePlan> plans = new ArrayList<>();
    private final List<Machine> found = new ArrayList<>();
    private final Map<AssetTag, AfterFacts> facts = new HashMap<>();
    private final Map<AssetTag, Job> jobs = new HashMap<>();

    @Test
    void aMachineThatIsAsPlannedEndsItsJobAndOneThatIsDoneAlreadyIsLeft() {
        machine("K-1", "4 -", "4 8", "4 8");
        machine("K-2", "4 -", "4 8", "4 8");
        jobs.put(new AssetTag("K-2"), new Job(new AssetTag("K-2"), 1, JobState.DONE, "", Set.of(), Map.of(), List.of(),
                Optional.empty()));
        ClosingProof closing = find();
        assertEquals(List.of(ONE), closing.closed());
        assertTrue(closing.isClean());
    }

    @Test
    void aMissingModuleIsFetchedFromTheMachineThatHasItTooMuch() {
        machine("K-1", "4 -", "4 8", "4 4");
        machine("K-2", "4 4", "4 4", "4 8");
        ClosingProof closing = find();
        assertEquals("K-2, slot S2", closing.deviations().stream().filter(each -> each.machine().equals(ONE))
                .map(Deviation::repair).findFirst().orElseThrow().replaceAll(".*machine (.*), where.*", "$1"));
    }

    @Test
    void aModuleInTheWrongSlotIsMovedOver() {
        machine("K-1", "4 -", "4 8", "8 4");
        List<Deviation> deviations = find().deviations();
        assertEquals(List.of(Kind.WRONG_SLOT, Kind.WRONG_SLOT), deviations.stream().map(Deviation::kind).toList());
        assertEquals("Move it over from slot S2.", deviations.get(0).repair());
        assertEquals("Move it over from slot S1.", deviations.get(1).repair());
    }

    @Test
    void aModuleNobodyHasTooMuchOfComesFromTheSparesOrIsOrdered() {
        machine("K-1", "4 -", "4 8", "4 4");
        Deviation only = find().deviations().get(0);
        assertEquals(Kind.OTHER_MODULE, only.kind());
        assertTrue(only.repair().startsWith("Take one from the spares; else order one 8 GB"), only.repair());
    }

    @Test
    void oneModuleRepairsOneMachineOnly() {
        machine("K-1", "4 -", "4 8", "4 16");
        machine("K-2", "4 4", "4 4", "4 8");
        machine("K-3", "4 -", "4 8", "4 16");
        long fetched = find().deviations().stream().filter(each -> each.repair().contains("K-2, slot S2")).count();
        assertEquals(1, fetched);
    }

    @Test
    void aMachineLeftAsItWasIsOneDeviationAndItsJobStays() {
        machine("K-1", "4 -", "4 8", "4 -");
        ClosingProof closing = find();
        assertEquals(List.of(Kind.NOT_DONE), closing.deviations().stream().map(Deviation::kind).toList());
        assertEquals(List.of(), closing.closed());
    }

    @Test
    void whatFirmwareSaysOfRateEccAndTotalIsCompared() {
        machine("K-1", "4 -", "4 8", "4 8");
        MachinePlan plan = plans.get(0);
        Operation runs = plan.runsAfter();
        plans.set(0, new MachinePlan(plan.machine(), plan.target(), plan.after(), plan.outcome(), plan.moves(),
                plan.runsNow(), new Operation(runs.installed(), runs.addressable(), runs.usable(), runs.mode(),
                        Optional.of(new Rate(2400)), "", runs.peak(), true), plan.obstacle(), plan.labour(),
                plan.workOrder()));
        facts.put(ONE, new AfterFacts(Map.of(), Optional.of(Capacity.ofGiB(11)), OptionalInt.of(2133),
                Optional.of(false)));
        ClosingProof closing = find();
        assertEquals(List.of(Kind.RATE, Kind.ECC, Kind.REMAPPED),
                closing.deviations().stream().map(Deviation::kind).toList());
        assertEquals("2133 MT/s", closing.deviations().get(0).found());
        assertEquals(List.of(), closing.closed());
    }

    @Test
    void aTotalThatLacksAWholeModuleIsMissingMemoryAndASmallShareIsNothing() {
        machine("K-1", "4 -", "4 8", "4 8");
        facts.put(ONE, new AfterFacts(Map.of(), Optional.of(Capacity.ofGiB(8)), OptionalInt.empty(), Optional.empty()));
        assertEquals(List.of(Kind.MISSING), find().deviations().stream().map(Deviation::kind).toList());
        facts.put(ONE, new AfterFacts(Map.of(), Optional.of(Capacity.ofMiB(11900)), OptionalInt.empty(),
                Optional.empty()));
        assertEquals(List.of(), find().deviations());
    }

    @Test
    void serialNumbersTellThePlannedModuleFromANeighbours() {
        machine("K-1", "4 -", "4 8", "4 8");
        machine("K-2", "4 -", "4 8", "4 8");
        AssetTag two = new AssetTag("K-2");
        jobs.put(ONE, read(ONE, "00a1"));
        jobs.put(two, read(two, "00B2"));
        facts.put(ONE, serial("B2"));
        facts.put(two, serial("0x00B2"));
        ClosingProof closing = find();
        assertEquals(1, closing.serials());
        assertEquals(List.of(Kind.SERIAL), closing.deviations().stream().map(Deviation::kind).toList());
        assertEquals(List.of(two), closing.closed());
        facts.put(two, serial("A1"));
        facts.put(ONE, serial("B2"));
        assertTrue(find().deviations().get(0).repair().contains("is in K-2, s2"));
    }

    @Test
    void everyKindNamesItsCausesWithTheirSources() {
        for (Kind kind : Kind.values()) {
            assertFalse(kind.causes().isEmpty());
            kind.causes().forEach(cause -> assertFalse(cause.source().isBlank() || cause.text().isBlank()));
        }
    }

    private static Job read(AssetTag tag, String serial) {
        return new Job(tag, 1, JobState.IN_WORK, "", Set.of(), Map.of("S2", serial), List.of(), Optional.empty());
    }

    private static AfterFacts serial(String serial) {
        return new AfterFacts(Map.of("s2", serial), Optional.empty(), OptionalInt.empty(), Optional.empty());
    }

    private void machine(String tag, String before, String planned, String after) {
        plans.add(world.plan(tag, before, planned));
        found.add(world.machine(tag, after));
        jobs.put(new AssetTag(tag), Job.planned(new AssetTag(tag), 1));
    }

    private ClosingProof find() {
        Fleet after = world.fleet(found.toArray(Machine[]::new));
        Proof proof = world.prove(plans, new ResolvedFleet(after, List.of(), List.of()), List.of());
        return new DeviationFinder(StandardRules.create(), after, facts, jobs).find(proof);
    }
}
