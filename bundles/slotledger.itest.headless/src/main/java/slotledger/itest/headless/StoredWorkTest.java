package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.CoordinatorDesk;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.RoundWish;
import slotledger.app.Survey;
import slotledger.app.WorkDesk;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.model.work.RoundSheet;

/** Work on the machines of a plan, kept in a real project. */
class StoredWorkTest {

    private static final Author BEN = new Author("ben", "");
    private static final LocalDate DAY = LocalDate.of(2026, 12, 9);

    @TempDir
    Path top;

    private final FleetDesk desk = Demo.desk();
    private final WorkDesk work = desk.work();

    @Test
    void aPlanGoesItsWayFromApprovalToTheProof() throws Exception {
        Path project = top.resolve("school");
        Plan plan = plan(project);
        CoordinatorDesk coordinator = desk.coordinator();
        coordinator.record(project, new TradeEvent.Approved(1, "Head"), BEN);
        String offer = plan.purchases().get(0).offer().id();
        int ordered = plan.purchases().get(0).modules();
        coordinator.record(project, new TradeEvent.Received(1, DAY, offer, ordered - 1, 0, 1, true, ""), BEN);
        Delivery delivery = coordinator.allot(project, OptionalInt.empty(), Progress.NONE);
        assertEquals(plan.work().size(), delivery.now().work().size() + delivery.waiting().size());
        assertEquals(ordered - 1, delivery.lines().get(0).usable());

        List<RoundSheet> rounds = coordinator.makeRounds(project, new RoundWish(OptionalInt.empty(), List.of("Ben",
                "Ada"), List.of(), 20, Duration.ofMinutes(15), Duration.ofMinutes(30)), BEN);
        assertEquals(plan.work().size(), rounds.stream().mapToInt(sheet -> sheet.round().machines().size()).sum());
        assertEquals(rounds.stream().map(RoundSheet::round).toList(), work.rounds(project));

        List<AssetTag> tags = work.jobs(project).stream().map(Job::machine).toList();
        work.record(project, tags.stream().skip(1).map(tag -> event(tag, new What.Became(JobState.DONE, ""))).toList(),
                BEN);
        CloseOut said = coordinator.closeOut(project, Optional.empty(), DAY);
        Path assets = coordinator.writeCloseOut(said, top.resolve("said"), false).get(2);
        ClosingProof closing = coordinator.prove(project, List.of(assets), List.of(), Demo.open(project), BEN,
                Progress.NONE);
        assertEquals(List.of(), closing.deviations().stream().filter(each -> !each.machine().equals(tags.get(0)))
                .toList());
        assertEquals(ProofOutcome.NOT_DONE, closing.proof().machines().stream()
                .filter(each -> each.plan().machine().tag().equals(tags.get(0))).findFirst().orElseThrow().outcome());
        assertEquals(plan.work().size() - 1, closing.proof().machines().stream()
                .filter(each -> each.plan().isOpened() && each.outcome() == ProofOutcome.DONE).count());
    }

    @Test
    void workIsRecordedBesideOtherChangesAndCanBeTakenBack() throws Exception {
        Path project = top.resolve("school");
        Plan plan = plan(project);

        List<Job> jobs = work.jobs(project);
        assertEquals(plan.work().stream().map(each -> each.machine().tag()).toList(),
                jobs.stream().map(Job::machine).toList());
        AssetTag first = jobs.get(0).machine();
        work.record(project, List.of(event(first, new What.Ticked(1, true))), BEN);
        desk.projects().bringIn(project, List.of(Demo.folder().resolve("policy.yaml")), BEN);
        work.record(project, List.of(event(first, new What.Became(JobState.DONE, ""))), BEN);
        assertEquals(Set.of(1), work.job(project, first).ticked());
        assertEquals(JobState.DONE, work.job(project, first).state());

        desk.projects().undo(project, OptionalLong.empty(), BEN);
        assertEquals(JobState.PLANNED, work.job(project, first).state());
        assertEquals(Set.of(1), work.job(project, first).ticked());
    }

    private Plan plan(Path project) throws Exception {
        desk.projects().create(project, Optional.of(Demo.evening(top.resolve("evening"))), BEN);
        assertTrue(assertThrows(DeskException.class, () -> work.jobs(project)).getMessage().contains("no plan yet"));
        Survey survey = desk.survey(Demo.open(project), Progress.NONE);
        Plan plan = desk.plan(survey, Progress.NONE);
        desk.export(survey, plan, top.resolve("plan"), false, Progress.NONE);
        desk.projects().keepPlan(survey, top.resolve("plan/plan.json"), BEN);
        return plan;
    }

    private static JobEvent event(AssetTag machine, What what) {
        return new JobEvent(UUID.randomUUID(), machine, 1, Instant.now(), what);
    }
}
