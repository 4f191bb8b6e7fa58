package slotledger.catalog;

import slotledger.model.observed.ObservedFleet;

/** Finds the board of each observed machine and puts its modules into that board's slots. */
public interface FleetResolver {

    /** Each observed machine is either in the fleet or among the unresolved ones; nothing is guessed silently. */
    ResolvedFleet resolve(ObservedFleet observed, Catalog catalog);
}
