package slotledger.model.project;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.delivery.TradeState;
import slotledger.model.work.Round;
import slotledger.model.work.WorkState;

/**
 * What holds after an entry.
 *
 * @param title     name for people
 * @param entry     the last entry looked at
 * @param parts     the version of each part that has files
 * @param plans     in the order they were made
 * @param decisions the entries of all decisions that hold, in the order they were made
 * @param work      the rounds, and how far all jobs have come
 * @param trade     what happened to the orders of its plans
 */
public record ProjectState(
        String title,
        long entry,
        Map<Part, PartVersion> parts,
        List<PlanVersion> plans,
        List<Entry> decisions,
        WorkState work,
        TradeState trade) {

    public ProjectState {
        Objects.requireNonNull(title, "title");
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        plans = List.copyOf(plans);
        decisions = List.copyOf(decisions);
        decisions.forEach(ProjectState::decision);
        Objects.requireNonNull(work, "work");
        Objects.requireNonNull(trade, "trade");
    }

    /** The plan that is carried out: that of the rounds, as long as it holds, or else the one to be carried out. */
    public Optional<PlanVersion> carriedOut() {
        Optional<PlanVersion> ofRounds = plan(work.plan());
        return ofRounds.isPresent() ? ofRounds : toBeCarriedOut();
    }

    /** The plan that was approved last, unless its order has ended; or else the last one made. */
    public Optional<PlanVersion> toBeCarriedOut() {
        Optional<PlanVersion> approved = trade.happened().stream()
                .filter(each -> each.event() instanceof TradeEvent.Approved)
                .map(each -> each.event().plan()).filter(number -> !trade.isEnded(number))
                .map(this::plan).flatMap(Optional::stream).reduce((one, other) -> other);
        return approved.isPresent() || plans.isEmpty() ? approved : Optional.of(plans.get(plans.size() - 1));
    }

    /** The rounds of the plan that is carried out; none where none were made of it. */
    public List<Round> rounds() {
        return carriedOut().filter(plan -> plan.number() == work.plan()).isPresent() ? work.rounds() : List.of();
    }

    /** The plan of that number, if it holds. */
    public Optional<PlanVersion> plan(int number) {
        return plans.stream().filter(plan -> plan.number() == number).findFirst();
    }

    /** The files of all parts. */
    public List<Original> files() {
        return parts.values().stream().flatMap(part -> part.files().stream()).toList();
    }

    /** The decision an entry of {@link #decisions()} holds. */
    public static Decision decision(Entry entry) {
        if (entry.change() instanceof Change.Decided decided) {
            return decided.decision();
        }
        throw new IllegalArgumentException("The entry %d must be a decision.".formatted(entry.number()));
    }
}
