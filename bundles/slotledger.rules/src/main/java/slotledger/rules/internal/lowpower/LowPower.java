package slotledger.rules.internal.lowpower;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;

/** The families of low-power memory. */
final class LowPower {

    static final Set<Generation> GENERATIONS =
            Collections.unmodifiableSet(EnumSet.range(Generation.LPDDR3, Generation.LPDDR5X));

    /** Those that also come on modules (JESD318). */
    static final Set<Generation> ON_MODULES =
            Collections.unmodifiableSet(EnumSet.of(Generation.LPDDR5, Generation.LPDDR5X));

    private LowPower() {
    }

    static boolean is(ModuleKind kind) {
        return kind.generation().isPresent() && GENERATIONS.contains(kind.generation().get());
    }
}
