package slotledger.rules.internal.chips;

import java.util.List;
import java.util.Set;
import slotledger.model.module.Buffering;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/** What the document says of the ranks of a channel. */
public final class ChannelRanks {

    /** The document says nothing. */
    public static final int UNSAID = 0;

    private static final Set<Buffering> LOAD_REDUCED_ONLY = Set.of(Buffering.LOAD_REDUCED);

    private ChannelRanks() {
    }

    /** Most ranks a channel drives, by its index: the least that is said of any of its sockets with a module. */
    public static int driven(Situation situation, int channel) {
        int driven = UNSAID;
        List<Placed> modules = situation.described();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.channel() == channel && module.way().channelRanks().isPresent()) {
                int said = module.way().channelRanks().getAsInt();
                driven = driven == UNSAID ? said : Math.min(driven, said);
            }
        }
        return driven;
    }

    /**
     * Whether the module may show the channel fewer ranks than it has: the buffer of a load-reduced module hides some
     * ("eight ranks a channel, more with LRDIMMs": System x3630 M4 product guide, page 12). A number that a document
     * names for load-reduced modules alone counts them as printed.
     */
    public static boolean mayBeHidden(Placed module) {
        return module.kind().buffering().isPresent() && module.kind().buffering().get() == Buffering.LOAD_REDUCED
                && !module.way().bufferings().equals(LOAD_REDUCED_ONLY);
    }
}
