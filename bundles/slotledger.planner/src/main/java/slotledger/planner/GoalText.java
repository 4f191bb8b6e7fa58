package slotledger.planner;

import java.util.Objects;

/**
 * One goal of a plan, written out for a general solver.
 *
 * @param goal  what is looked for, a short phrase
 * @param value the best found; weight missed, minor units of money, or work, all to be made small
 * @param bound nothing better than this is possible
 * @param text  the programme in the form that was asked for
 */
public record GoalText(String goal, long value, long bound, String text) {
    public GoalText {
        Objects.requireNonNull(goal, "goal");
        Objects.requireNonNull(text, "text");
    }
}
