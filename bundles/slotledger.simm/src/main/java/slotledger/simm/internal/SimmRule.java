package slotledger.simm.internal;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/** A rule of page-mode memory: 30- and 72-pin SIMMs, and what else is sold with FPM or EDO chips. */
abstract class SimmRule extends Rule {

    static final Set<Generation> PAGE_MODE =
            Collections.unmodifiableSet(EnumSet.of(Generation.FPM, Generation.EDO));

    /** The same rule stands in course texts for technicians. */
    static final Source BANK_TEXT = Source.document("Encyclopaedia text on SIMMs (altsci copy)",
            "modules a bank = data bits of the bus / data bits of the module; some boards read half a bank, some "
                    + "interleave two");

    static final Source MAC_TEXT = Source.document("Macintosh II memory upgrade text",
            "\"each bank of 4 sockets ... completely filled with 4 SIMMs of the same size, or left completely empty; "
                    + "Bank A must always be filled\"; tables by model in Apple Technical Note HW25/#176");

    /** How to tell FPM from EDO (common practice, no source). */
    static final String TELL_FPM_FROM_EDO = "The label seldom says it; the part number on the chips does, and so does "
            + "the firmware at the start on many boards of 1995 and later. Take what is in the machine already.";

    SimmRule(RulePage page) {
        super(page);
    }

    @Override
    public final Set<Generation> families() {
        return PAGE_MODE;
    }

    /** Whether a socket for page-mode memory is filled; boards of 1997 have sockets for SDR beside such. */
    static boolean isUsed(Situation situation) {
        if (PAGE_MODE.containsAll(situation.generations())) {
            return !situation.filled().isEmpty();
        }
        List<Placed> modules = situation.described();
        for (int i = 0; i < modules.size(); i++) {
            if (ModuleFacts.isPageMode(modules.get(i).way().generation())) {
                return true;
            }
        }
        return false;
    }
}
