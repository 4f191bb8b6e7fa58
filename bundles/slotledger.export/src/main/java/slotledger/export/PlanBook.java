package slotledger.export;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Market;

/**
 * A plan with what is needed to print it.
 *
 * @param plan       the plan
 * @param boards     every board of its machines
 * @param market     offers that were considered, and the suppliers' terms
 * @param unresolved machines of the inventory that could not be planned
 * @param findings   findings of intake and catalog, to say why
 * @param before     an earlier plan, to say what has changed since
 */
public record PlanBook(
        Plan plan,
        Map<BoardId, Board> boards,
        Market market,
        List<ObservedMachine> unresolved,
        List<Finding> findings,
        Optional<Plan> before) {

    /** There is no earlier plan. */
    public PlanBook(
            Plan plan,
            Map<BoardId, Board> boards,
            Market market,
            List<ObservedMachine> unresolved,
            List<Finding> findings) {
        this(plan, boards, market, unresolved, findings, Optional.empty());
    }

    public PlanBook {
        Objects.requireNonNull(plan, "plan");
        boards = Map.copyOf(boards);
        Objects.requireNonNull(market, "market");
        unresolved = List.copyOf(unresolved);
        findings = List.copyOf(findings);
        Objects.requireNonNull(before, "before");
    }
}
