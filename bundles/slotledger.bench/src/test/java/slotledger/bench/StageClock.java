package slotledger.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import slotledger.model.task.Progress;

/** Notes how long a plan stays in each of its steps, by the names they report. */
final class StageClock implements Progress {

    /** What the steps of a plan belong to, in their order; a step of another name looks for the best plan. */
    enum Stage { CLASSES, LISTING, SOLVING, EXPANDING, AUDIT }

    private static final double NANOS = 1e9;

    private final long start = System.nanoTime();
    private final Map<String, Double> seconds = new LinkedHashMap<>();
    private String step = "grouping machines into classes";
    private long since = start;

    @Override
    public synchronized void step(String what, double done) {
        if (!what.equals(step)) {
            long now = System.nanoTime();
            seconds.merge(step, (now - since) / NANOS, Double::sum);
            System.err.printf("%9.2f s  %s%n", (now - start) / NANOS, what);
            step = what;
            since = now;
        }
    }

    @Override
    public boolean isCancelled() {
        return false;
    }

    /** Seconds in each stage so far. */
    synchronized Map<Stage, Double> stages() {
        Map<Stage, Double> stages = new LinkedHashMap<>();
        for (Stage stage : Stage.values()) {
            stages.put(stage, 0.0);
        }
        seconds.forEach((name, spent) -> stages.merge(stage(name), spent, Double::sum));
        return stages;
    }

    /** Seconds from the start until now. */
    double total() {
        return (System.nanoTime() - start) / NANOS;
    }

    private static Stage stage(String name) {
        return switch (name) {
            case "grouping machines into classes" -> Stage.CLASSES;
            case "looking at the machines as they are", "looking at what fits", "listing populations" -> Stage.LISTING;
            case "naming every module's way" -> Stage.EXPANDING;
            case "checking the plan", "plan checked" -> Stage.AUDIT;
            default -> Stage.SOLVING;
        };
    }
}
