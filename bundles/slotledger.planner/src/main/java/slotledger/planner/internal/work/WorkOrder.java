package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;

/**
 * Puts machines into an order in which every receiver comes after its donors. Somebody walks through all rooms and
 * opens what is ready; a machine that is only opened for its modules waits until nothing else is ready, so that few
 * modules lie on the bench. Where machines wait for each other in a ring, the one that lacks least is opened first.
 */
final class WorkOrder {

    private final List<Job> jobs;
    private final Bench bench;
    private final TreeSet<Integer> ready = new TreeSet<>();
    private final TreeSet<Integer> donors = new TreeSet<>();
    private final Map<Piece, TreeSet<Integer>> waiting = new HashMap<>();
    private final TreeSet<Integer> stuck = new TreeSet<>();

    /** The opened machines among the jobs. */
    WorkOrder(List<Job> jobs, Bench bench) {
        this.jobs = jobs.stream().filter(Job::isOpened).sorted(Job.WALK).toList();
        this.bench = bench;
        for (int i = 0; i < this.jobs.size(); i++) {
            if (this.jobs.get(i).isDonor()) {
                donors.add(i);
            } else {
                sort(i);
            }
        }
    }

    /** Does one machine after the other; the worker takes and puts modules. */
    void work(Worker worker) {
        int place = -1;
        for (int done = 0; done < jobs.size(); done++) {
            Optional<Integer> next = nextReady(place).or(this::nextDonor);
            boolean isRing = next.isEmpty();
            place = next.orElseGet(this::leastLacking);
            forget(place);
            worker.doJob(jobs.get(place), isRing);
            jobs.get(place).changes().out().values().forEach(this::wake);
        }
    }

    /** Does the moves of one machine. */
    interface Worker {
        void doJob(Job job, boolean opensRing);
    }

    private void forget(int job) {
        if (stuck.remove(job)) {
            waiting.values().forEach(set -> set.remove(job));
        }
    }

    private void sort(int job) {
        Map<Piece, Integer> lacks = bench.lacks(jobs.get(job));
        if (lacks.isEmpty()) {
            ready.add(job);
            return;
        }
        stuck.add(job);
        waiting.computeIfAbsent(lacks.keySet().iterator().next(), unused -> new TreeSet<>()).add(job);
    }

    private void wake(SlotContent pulled) {
        pulled.piece().map(waiting::remove).ifPresent(woken -> woken.forEach(job -> {
            stuck.remove(job);
            sort(job);
        }));
    }

    /** The next one ready on the way; from the end of the way back to its start. */
    private Optional<Integer> nextReady(int place) {
        while (!ready.isEmpty()) {
            Integer job = ready.higher(place) == null ? ready.first() : ready.higher(place);
            ready.remove(job);
            if (bench.lacks(jobs.get(job)).isEmpty()) {
                return Optional.of(job);
            }
            sort(job);
        }
        return Optional.empty();
    }

    private Optional<Integer> nextDonor() {
        List<Integer> able = donors.stream().filter(donor -> bench.lacks(jobs.get(donor)).isEmpty()).toList();
        Optional<Integer> next = able.stream().filter(this::helpsSomebody).findFirst()
                .or(() -> able.stream().findFirst());
        next.ifPresent(donors::remove);
        return next;
    }

    private boolean helpsSomebody(int donor) {
        return jobs.get(donor).changes().out().values().stream()
                .anyMatch(content -> content.piece().filter(this::isWaitedFor).isPresent());
    }

    private boolean isWaitedFor(Piece piece) {
        return waiting.containsKey(piece) && !waiting.get(piece).isEmpty();
    }

    private int leastLacking() {
        List<Integer> left = new ArrayList<>(stuck);
        left.addAll(donors);
        int job = left.stream()
                .min(Comparator.<Integer>comparingInt(each -> bench.lacks(jobs.get(each)).values().stream()
                        .mapToInt(Integer::intValue).sum()).thenComparing(Comparator.naturalOrder()))
                .orElseThrow(() -> new IllegalStateException("The order of work must hold every machine."));
        donors.remove(job);
        return job;
    }
}
