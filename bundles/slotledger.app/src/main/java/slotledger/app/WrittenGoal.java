package slotledger.app;

import java.nio.file.Path;
import java.util.Objects;

/**
 * One goal of a plan, written out for a general solver.
 *
 * @param file  the integer programme; the values of the goals before this one are rows in it
 * @param goal  what is looked for, a short phrase
 * @param value the best found: weight missed, minor units of money, or work
 * @param bound nothing smaller is possible
 */
public record WrittenGoal(Path file, String goal, long value, long bound) {
    public WrittenGoal {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(goal, "goal");
    }
}
