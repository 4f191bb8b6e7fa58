package slotledger.model.machine;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.board.BoardId;
import slotledger.model.board.Redundancy;
import slotledger.model.source.Place;

/**
 * One computer of a known board.
 *
 * @param tag             asset tag, unique in the fleet
 * @param serial          serial number; empty means unknown
 * @param where           site and room
 * @param costCentre      who pays; empty means unknown
 * @param role            what it is used for; a policy sets a target for a role
 * @param board           its board
 * @param processors      how many processors are installed
 * @param processor       which processor, by the board's name for it; empty means unknown
 * @param operatingSystem as the inventory names it; empty means unknown
 * @param redundancy      whether memory is kept back against errors
 * @param population      what is in its slots now
 * @param place           where in the inventory it stands
 */
public record Machine(
        AssetTag tag,
        String serial,
        Whereabouts where,
        String costCentre,
        String role,
        BoardId board,
        int processors,
        Optional<String> processor,
        Optional<String> operatingSystem,
        Redundancy redundancy,
        Population population,
        Place place) {

    public Machine {
        Objects.requireNonNull(tag, "tag");
        Objects.requireNonNull(serial, "serial");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(costCentre, "costCentre");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(board, "board");
        Objects.requireNonNull(processor, "processor");
        Objects.requireNonNull(operatingSystem, "operatingSystem");
        Objects.requireNonNull(redundancy, "redundancy");
        Objects.requireNonNull(population, "population");
        Objects.requireNonNull(place, "place");
        if (processors < 1) {
            throw new IllegalArgumentException(
                    "The processors (%d) of machine %s must be at least 1.".formatted(processors, tag));
        }
    }
}
