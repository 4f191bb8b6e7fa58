package slotledger.workbench.internal.work;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.app.CardDesk;
import slotledger.app.FleetDesk;
import slotledger.app.Stored;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.DeskJob;
import slotledger.workbench.internal.session.Opened;
import slotledger.workbench.internal.session.Session;

/**
 * The work of the open project: read when somebody wants to see it, told of what happens. Only for the window's thread.
 */
@Component(service = WorkSession.class)
public final class WorkSession {

    private record Found(Work work, Optional<Plan> plan) {
    }

    private final Session session;
    private final CardDesk cards;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private Optional<Work> work = Optional.empty();
    private Optional<Opened> asked = Optional.empty();

    @Activate
    public WorkSession(@Reference Session session, @Reference CardDesk cards) {
        this.session = Objects.requireNonNull(session, "session");
        this.cards = Objects.requireNonNull(cards, "cards");
    }

    Optional<Work> work() {
        return work;
    }

    Runnable listen(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    /** Reads the work of the open project, if it keeps a plan and was not read yet. */
    void want(Executor window) {
        Optional<Opened> opened = session.opened();
        if (opened.isPresent() && asked.filter(before -> before == opened.get()).isPresent()) {
            return;
        }
        asked = opened;
        work = Optional.empty();
        tell();
        stored().filter(home -> !home.state().plans().isEmpty()).ifPresent(home -> read(opened.get(), home, window));
    }

    /** What keeps the work from being shown, in words; empty where nothing does. */
    Optional<String> hindrance() {
        if (session.opened().isEmpty()) {
            return Optional.of(Texts.summary_nothing_open);
        }
        return stored().isEmpty() ? Optional.of(Texts.work_no_history)
                : stored().orElseThrow().state().plans().isEmpty() ? Optional.of(Texts.work_no_plan) : Optional.empty();
    }

    /** Writes down what happened to a machine's job; the window shows it once it is kept. */
    void happened(AssetTag machine, JobEvent.What what, Executor window) {
        Work now = work.orElseThrow();
        int plan = now.jobs().get(machine).plan();
        List<JobEvent> events = List.of(new JobEvent(UUID.randomUUID(), machine, plan, Instant.now(), what));
        Author author = new Author(System.getProperty("user.name", "window"), "");
        DeskJob<List<Job>> job = new DeskJob<>(Texts.with(Texts.job_record, machine),
                progress -> session.desk().work().record(now.project(), events, author), window, this::take);
        job.setUser(false);
        job.schedule();
    }

    private void take(List<Job> changed) {
        work = work.map(now -> now.with(changed));
        tell();
    }

    private Optional<Stored> stored() {
        return session.opened().flatMap(opened -> opened.survey().project().stored());
    }

    private void read(Opened opened, Stored home, Executor window) {
        FleetDesk desk = session.desk();
        Survey survey = opened.survey();
        new DeskJob<Found>(Texts.with(Texts.job_work, survey.project().title()), progress -> {
            List<Job> jobs = desk.work().jobs(home.home());
            List<Round> rounds = desk.work().rounds(home.home());
            if (jobs.isEmpty()) {
                return new Found(Work.of(home.home(), rounds, jobs, List.of()), Optional.empty());
            }
            int number = jobs.get(0).plan();
            Plan plan = desk.projects().keptPlan(survey, number);
            return new Found(Work.of(home.home(), rounds, jobs, cards.cards(survey, plan, number)),
                    Optional.of(plan));
        }, window, found -> {
            if (asked.filter(wanted -> wanted == opened).isPresent()) {
                work = Optional.of(found.work());
                if (session.plan().isEmpty()) {
                    found.plan().ifPresent(plan -> session.take(opened, plan));
                }
                tell();
            }
        }).schedule();
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
