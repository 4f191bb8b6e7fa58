package slotledger.app.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.WorkDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.PlanVersion;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;
import slotledger.store.StoreException;

/** Records work in projects that stay open for a moment between calls. */
final class DefaultWorkDesk implements WorkDesk {

    /** As many writers may come between, one after the other; each means that somebody else got through. */
    private static final int TRIES = 50;

    private final WorkSessions sessions;

    DefaultWorkDesk(WorkSessions sessions) {
        this.sessions = sessions;
    }

    @Override
    public List<Round> rounds(Path project) throws DeskException {
        return sessions.with(project, session -> session.state().rounds());
    }

    @Override
    public List<Job> jobs(Path project) throws DeskException {
        return sessions.with(project, session -> {
            PlanVersion version = session.carriedOut();
            return session.plan(version).work().stream()
                    .map(machine -> session.running().job(version.number(), machine.machine().tag())).toList();
        });
    }

    @Override
    public Job job(Path project, AssetTag machine) throws DeskException {
        return sessions.with(project, session -> {
            PlanVersion version = session.carriedOut();
            mustHaveJob(session, version, machine);
            return session.running().job(version.number(), machine);
        });
    }

    @Override
    public List<Job> record(Path project, List<JobEvent> events, Author author) throws DeskException {
        return sessions.with(project, session -> {
            for (int tries = 1; true; tries++) {
                List<JobEvent> fresh = fresh(session, events);
                for (JobEvent event : fresh) {
                    mustHaveJob(session, session.version(event.plan()), event.machine());
                }
                try {
                    if (!fresh.isEmpty()) {
                        session.append(new Change.Worked(fresh), author);
                    }
                    return told(session, events);
                } catch (StoreException problem) {
                    if (problem.trouble() != StoreException.Trouble.CHANGED || tries == TRIES) {
                        throw problem;
                    }
                    session.again();
                }
            }
        });
    }

    private static List<JobEvent> fresh(WorkSession session, List<JobEvent> events) {
        Set<UUID> seen = new HashSet<>();
        return events.stream().filter(event -> !session.running().knows(event.id()) && seen.add(event.id())).toList();
    }

    private static List<Job> told(WorkSession session, List<JobEvent> events) {
        Set<Job> jobs = new LinkedHashSet<>();
        events.forEach(event -> jobs.add(session.running().job(event.plan(), event.machine())));
        return new ArrayList<>(jobs);
    }

    private static void mustHaveJob(WorkSession session, PlanVersion version, AssetTag tag)
            throws StoreException, DeskException {
        Plan plan = session.plan(version);
        if (!session.hasJob(version, tag)) {
            throw new DeskException(Trouble.INPUT, plan.find(tag).filter(machine -> !machine.isOpened())
                    .map(MachinePlan::machine)
                    .map(machine -> "Plan " + version.number() + " leaves machine " + tag
                            + " as it is, so it has no job.")
                    .orElse("Plan " + version.number() + " knows no machine " + tag
                            + ". The tag must be written as in the inventory."));
        }
    }
}
