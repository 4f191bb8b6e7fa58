package slotledger.serve.internal.round;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import slotledger.app.CardDesk;
import slotledger.app.DeskException;
import slotledger.app.WorkDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Author;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;

/** The rounds of one project, for several phones at once. */
public final class RoundDesk {

    /** Rounds change rarely, and every question opens the project anew. */
    private static final long ROUNDS_HOLD_NANOS = Duration.ofSeconds(5).toNanos();

    private final Path project;
    private final WorkDesk work;
    private final CardDesk cards;
    private final LongSupplier nanos;
    private final Map<Integer, Map<AssetTag, JobCard>> known = new HashMap<>();
    private List<Round> rounds = List.of();
    private long roundsRead;
    private boolean read;

    public RoundDesk(Path project, WorkDesk work, CardDesk cards, LongSupplier nanos) {
        this.project = project;
        this.work = work;
        this.cards = cards;
        this.nanos = nanos;
    }

    /** All rounds, as they were at most some seconds ago. */
    public synchronized List<Round> rounds() throws DeskException {
        if (!read || nanos.getAsLong() - roundsRead > ROUNDS_HOLD_NANOS) {
            rounds = work.rounds(project);
            roundsRead = nanos.getAsLong();
            read = true;
        }
        return rounds;
    }

    /** The card of each machine of a round, in the order of work. */
    public synchronized Map<AssetTag, JobCard> cards(Round round) throws DeskException {
        if (!known.containsKey(round.plan())) {
            Map<AssetTag, JobCard> made = new HashMap<>();
            cards.cards(project, round.plan(), Progress.NONE).forEach(card -> made.put(card.machine(), card));
            known.put(round.plan(), made);
        }
        return known.get(round.plan());
    }

    /** How far the machines of a round are, in the order of the round. */
    public List<Job> jobs(Round round) throws DeskException {
        Map<AssetTag, Job> all = new HashMap<>();
        work.jobs(project).forEach(job -> all.put(job.machine(), job));
        return round.machines().stream()
                .map(machine -> all.getOrDefault(machine, Job.planned(machine, round.plan()))).toList();
    }

    /** Writes down what was said on a round; returns the jobs that were told of. */
    public List<Job> record(Round round, List<JobEvent> events) throws DeskException {
        String who = round.technician().isEmpty() ? "round " + round.id() : round.technician();
        return work.record(project, events, new Author(who, "said on a phone, round " + round.id()));
    }
}
