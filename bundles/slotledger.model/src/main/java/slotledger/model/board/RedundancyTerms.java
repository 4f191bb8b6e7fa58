package slotledger.model.board;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What a board asks for, and leaves usable, where memory is kept back against errors.
 *
 * @param redundancy      which way of keeping back; not none
 * @param share           usable share of the memory that counts; empty means the largest rank of each channel is kept
 * @param ignoredChannels channels whose memory doesn't count then
 * @param sets            sockets filled together then, in the order they are filled; empty means as without it
 * @param channelRanks    least ranks of a filled channel
 */
public record RedundancyTerms(
        Redundancy redundancy,
        Optional<Share> share,
        Set<String> ignoredChannels,
        List<FillSet> sets,
        OptionalInt channelRanks) {

    public RedundancyTerms {
        Objects.requireNonNull(redundancy, "redundancy");
        Objects.requireNonNull(share, "share");
        ignoredChannels = Set.copyOf(ignoredChannels);
        sets = List.copyOf(sets);
        Objects.requireNonNull(channelRanks, "channelRanks");
        if (redundancy == Redundancy.NONE) {
            throw new IllegalArgumentException("The terms of a board must be for some redundancy.");
        }
    }

    /**
     * A part of the whole.
     *
     * @param parts  usable parts, at least 1
     * @param of     all parts, at least as many
     */
    public record Share(int parts, int of) {
        public Share {
            if (parts < 1 || of < parts) {
                throw new IllegalArgumentException("The share (%d of %d) must be some of all.".formatted(parts, of));
            }
        }
    }

    /**
     * Sockets filled together.
     *
     * @param processors how many processors are installed for this set
     * @param slots      labels of the sockets
     */
    public record FillSet(int processors, List<String> slots) {
        public FillSet {
            slots = List.copyOf(slots);
            if (processors < 1 || slots.isEmpty()) {
                throw new IllegalArgumentException("The set %s must have slots and processors.".formatted(slots));
            }
        }
    }
}
