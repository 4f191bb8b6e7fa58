package slotledger.app;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Fleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.TableUse;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;

/**
 * Everything a project's files say.
 *
 * @param project    the files
 * @param columns    how the columns of every table were understood
 * @param observed   how many machines the inventories list
 * @param boards     the catalog, by id
 * @param fleet      machines whose board is known
 * @param unresolved machines that can't be judged
 * @param market     offers
 * @param shelf      modules owned
 * @param policy     empty where the project has none
 * @param choices    what people decided beforehand
 * @param findings   of all files, in reading order
 * @param before     an earlier plan, of which as much is kept as costs nothing; empty where there is none
 */
public record Survey(
        Project project,
        List<TableUse> columns,
        int observed,
        List<Board> boards,
        Fleet fleet,
        List<ObservedMachine> unresolved,
        Market market,
        Shelf shelf,
        Optional<Policy> policy,
        Choices choices,
        List<Finding> findings,
        Optional<Plan> before) {

    /** There is no earlier plan. */
    public Survey(
            Project project,
            List<TableUse> columns,
            int observed,
            List<Board> boards,
            Fleet fleet,
            List<ObservedMachine> unresolved,
            Market market,
            Shelf shelf,
            Optional<Policy> policy,
            Choices choices,
            List<Finding> findings) {
        this(project, columns, observed, boards, fleet, unresolved, market, shelf, policy, choices, findings,
                Optional.empty());
    }

    /** A survey in which nobody decided anything beforehand. */
    public Survey(
            Project project,
            List<TableUse> columns,
            int observed,
            List<Board> boards,
            Fleet fleet,
            List<ObservedMachine> unresolved,
            Market market,
            Shelf shelf,
            Optional<Policy> policy,
            List<Finding> findings) {
        this(project, columns, observed, boards, fleet, unresolved, market, shelf, policy, Choices.NONE, findings);
    }

    public Survey {
        Objects.requireNonNull(project, "project");
        columns = List.copyOf(columns);
        boards = List.copyOf(boards);
        Objects.requireNonNull(fleet, "fleet");
        unresolved = List.copyOf(unresolved);
        Objects.requireNonNull(market, "market");
        Objects.requireNonNull(shelf, "shelf");
        Objects.requireNonNull(policy, "policy");
        Objects.requireNonNull(choices, "choices");
        findings = List.copyOf(findings);
        Objects.requireNonNull(before, "before");
    }

    /** The same with another policy. */
    public Survey with(Policy other) {
        return new Survey(project, columns, observed, boards, fleet, unresolved, market, shelf, Optional.of(other),
                choices, findings, before);
    }

    /** The same project at another time: its machines, offers, shelf and policy as they are then. */
    public Survey at(Project then, Fleet fleetThen, Market marketThen, Shelf shelfThen, Policy policyThen) {
        return new Survey(then, columns, observed, boards, fleetThen, unresolved, marketThen, shelfThen,
                Optional.of(policyThen), choices, findings, before);
    }

    /** The same with an earlier plan, or without one. */
    public Survey since(Optional<Plan> earlier) {
        return new Survey(project, columns, observed, boards, fleet, unresolved, market, shelf, policy, choices,
                findings, earlier);
    }
}
