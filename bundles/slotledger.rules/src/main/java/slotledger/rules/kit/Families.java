package slotledger.rules.kit;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import slotledger.model.module.Generation;

/** The generations our rules speak of. */
public final class Families {

    /** DDR and everything after it, low-power parts among them. */
    public static final Set<Generation> DDR_ON =
            Collections.unmodifiableSet(EnumSet.range(Generation.DDR, Generation.LPDDR5X));

    private Families() {
    }
}
