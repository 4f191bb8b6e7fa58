package slotledger.model.difference;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is different between a project after one entry and after a later one. In each list "none" stands where there is
 * nothing: a machine that came, an offer that went.
 *
 * @param before    the earlier entry
 * @param after     the later entry
 * @param fleet     machines that came, went or changed, fact by fact
 * @param offers    offers and suppliers' terms
 * @param shelf     counts
 * @param policy    what is wanted and allowed
 * @param files     files of boards, choices and column mappings, by name
 * @param decisions corrections, pins and mutes that hold on one side only
 * @param plan      the last plans, where they differ and can be compared
 */
public record ProjectDifference(
        long before,
        long after,
        List<Term> fleet,
        List<Term> offers,
        List<Term> shelf,
        List<Term> policy,
        List<Term> files,
        List<Term> decisions,
        Optional<Difference> plan) {

    public ProjectDifference {
        fleet = List.copyOf(fleet);
        offers = List.copyOf(offers);
        shelf = List.copyOf(shelf);
        policy = List.copyOf(policy);
        files = List.copyOf(files);
        decisions = List.copyOf(decisions);
        Objects.requireNonNull(plan, "plan");
    }

    public static ProjectDifference of(ProjectSide before, ProjectSide after) {
        return new ProjectDifference(before.entry(), after.entry(),
                FleetTerms.of(before.machines(), after.machines()),
                TradeTerms.offers(before.market(), after.market()),
                TradeTerms.shelf(before.shelf(), after.shelf()),
                TradeTerms.policy(before.policy(), after.policy()),
                ProjectTerms.files(before.state(), after.state()),
                ProjectTerms.decisions(before.state(), after.state()),
                before.plan().flatMap(then -> after.plan().filter(now -> Difference.isComparable(then, now))
                        .map(now -> Difference.of(then, now))));
    }

    public boolean isNone() {
        return fleet.isEmpty() && offers.isEmpty() && shelf.isEmpty() && policy.isEmpty() && files.isEmpty()
                && decisions.isEmpty() && plan.isEmpty();
    }
}
