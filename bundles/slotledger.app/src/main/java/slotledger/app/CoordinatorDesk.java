package slotledger.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.Settlement;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.project.Author;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.ClosingProof;
import slotledger.model.task.Progress;
import slotledger.model.work.RoundSheet;

/** What a coordinator does with a plan of a project with a history until it is proved and closed. */
public interface CoordinatorDesk {

    /**
     * Makes the rounds of a plan anew, of all machines whose job has not ended, donors before receivers, and writes
     * them down in one entry.
     *
     * @return the rounds in the order of work; those for which no time was found name no technician
     */
    List<RoundSheet> makeRounds(Path project, RoundWish wish, Author author) throws DeskException;

    /** The rounds of the plan that is carried out, with their bags. */
    List<RoundSheet> roundSheets(Path project) throws DeskException;

    /** How far the order of a plan has come; of the plan that is to be carried out unless one is named. */
    OrderStatus order(Path project, OptionalInt plan) throws DeskException;

    /**
     * Writes down what happened to the order of a plan.
     *
     * @throws DeskException where nothing was written: the plan doesn't hold, was not approved yet, or has no such
     *     supplier or line; or more is drawn than is there
     */
    OrderStatus record(Path project, TradeEvent event, Author author) throws DeskException;

    /**
     * Shares out what arrived of an order so that most weighted targets are met soonest. Machines whose jobs are done
     * keep what they have.
     */
    Delivery allot(Path project, OptionalInt plan, Progress progress) throws DeskException;

    /** Ends an order of which nothing more will come: the rest is planned anew only as far as that brings targets. */
    Settlement settle(Path project, OptionalInt plan, Survey survey, Progress progress) throws DeskException;

    /**
     * Compares an inventory taken after the work with the plan that is carried out. Jobs where all agrees end as done;
     * what differs is named with the cheapest repair.
     *
     * @param inventories taken after the work
     * @param firmware    tables or listings of single machines, which say more than an inventory; may be none
     * @param files       the project's, for mapping and boards
     */
    ClosingProof prove(Path project, List<Path> inventories, List<Path> firmware, Project files, Author author,
            Progress progress) throws DeskException;

    /**
     * How the plan that is carried out ended.
     *
     * @param closing what {@link #prove} found; empty where nothing was proved yet
     */
    CloseOut closeOut(Path project, Optional<ClosingProof> closing, LocalDate date) throws DeskException;

    /** Writes the report, the workbook and the asset list of a close-out into a new folder, whole or not at all. */
    List<Path> writeCloseOut(CloseOut close, Path folder, boolean force) throws DeskException;
}
