package slotledger.model.delivery;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;

/**
 * What arrived of a plan's order, and what can be done with it.
 *
 * @param lines    every line of the order
 * @param done     machines somebody finished before
 * @param now      the plan cut down to the machines that can be done now, in their order of work
 * @param waiting  machines that can't be done yet
 * @param findings about the lists of what arrived
 */
public record Delivery(
        List<Line> lines, List<AssetTag> done, Plan now, List<Waiting> waiting, List<Finding> findings) {

    public Delivery {
        lines = List.copyOf(lines);
        done = List.copyOf(done);
        Objects.requireNonNull(now, "now");
        waiting = List.copyOf(waiting);
        findings = List.copyOf(findings);
    }

    /** Whether everything that was ordered is there and usable. */
    public boolean isComplete() {
        return lines.stream().allMatch(line -> line.state() == State.COMPLETE || line.state() == State.OVER);
    }

    /** How much of an order line is there. */
    public enum State {
        COMPLETE("complete"),
        SHORT("short"),
        NOTHING("nothing yet"),
        OVER("more than ordered");

        private final String text;

        State(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * One line of the order.
     *
     * @param purchase what was ordered
     * @param usable   modules that arrived and can be used
     * @param unusable modules that arrived dead or wrong
     */
    public record Line(Purchase purchase, int usable, int unusable) {
        public Line {
            Objects.requireNonNull(purchase, "purchase");
        }

        public State state() {
            if (usable + unusable == 0) {
                return State.NOTHING;
            }
            int more = Integer.compare(usable, purchase.modules());
            return more < 0 ? State.SHORT : more == 0 ? State.COMPLETE : State.OVER;
        }

        /** Modules still wanted: not there, or there and not usable. */
        public int missing() {
            return Math.max(0, purchase.modules() - usable);
        }
    }

    /**
     * A machine that can't be done yet.
     *
     * @param machine which machine
     * @param needs   what goes into it from outside, and how many of each
     */
    public record Waiting(AssetTag machine, Map<SlotContent, Integer> needs) {
        public Waiting {
            Objects.requireNonNull(machine, "machine");
            needs = Map.copyOf(needs);
        }
    }
}
