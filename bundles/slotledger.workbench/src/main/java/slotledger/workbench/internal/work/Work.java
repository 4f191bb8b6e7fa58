package slotledger.workbench.internal.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.Round;

/**
 * The work on a project's machines as far as it has come.
 *
 * @param project folder of the project
 * @param rounds  none where none were made
 * @param cards   what is to be done, by machine, in the order of work
 * @param jobs    how far it is, by machine, in the order of work
 */
public record Work(Path project, List<Round> rounds, Map<AssetTag, JobCard> cards, Map<AssetTag, Job> jobs) {

    public Work {
        Objects.requireNonNull(project, "project");
        rounds = List.copyOf(rounds);
        cards = Collections.unmodifiableMap(new LinkedHashMap<>(cards));
        jobs = Collections.unmodifiableMap(new LinkedHashMap<>(jobs));
    }

    /**
     * Puts together what was read.
     *
     * @param made one card for each job
     */
    static Work of(Path project, List<Round> rounds, List<Job> told, List<JobCard> made) {
        Map<AssetTag, Job> jobs = new LinkedHashMap<>();
        told.forEach(job -> jobs.put(job.machine(), job));
        Map<AssetTag, JobCard> cards = new LinkedHashMap<>();
        made.forEach(card -> cards.put(card.machine(), card));
        return new Work(project, rounds, cards, jobs);
    }

    /** The same after some jobs went on. */
    Work with(List<Job> changed) {
        Map<AssetTag, Job> all = new LinkedHashMap<>(jobs);
        changed.forEach(job -> all.put(job.machine(), job));
        return new Work(project, rounds, cards, all);
    }

    /**
     * The machines somebody may mean who typed or scanned something, without regard to case: only the one whose tag or
     * serial number it is, if there is one; else all whose tag has it as a part.
     */
    List<AssetTag> meant(String typed) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<AssetTag> near = new ArrayList<>();
        for (JobCard card : cards.values()) {
            String tag = card.machine().value().toLowerCase(Locale.ROOT);
            if (tag.equals(wanted) || !wanted.isEmpty() && card.serial().toLowerCase(Locale.ROOT).equals(wanted)) {
                return List.of(card.machine());
            }
            if (!wanted.isEmpty() && tag.contains(wanted)) {
                near.add(card.machine());
            }
        }
        return near;
    }

    /** The next machine of the same round, or of the order of work where there are no rounds, that is still to do. */
    Optional<AssetTag> after(AssetTag machine) {
        List<AssetTag> way = rounds.stream().map(Round::machines).filter(machines -> machines.contains(machine))
                .findFirst().orElseGet(() -> List.copyOf(jobs.keySet()));
        return way.subList(way.indexOf(machine) + 1, way.size()).stream()
                .filter(tag -> jobs.containsKey(tag) && !jobs.get(tag).state().isEnded()).findFirst();
    }

    /** How many jobs have ended. */
    long ended() {
        return jobs.values().stream().filter(job -> job.state().isEnded()).count();
    }
}
