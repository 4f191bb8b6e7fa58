package slotledger.rules.internal.ddr5;

import java.util.Optional;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ModuleKind;
import slotledger.rules.kit.ModuleFacts;

/** The size of the dies of a DDR5 module, as far as its capacity alone says it. */
final class Dies {

    private static final int GBIT_24 = 24 * 1024;

    private Dies() {
    }

    /** Known or derived; 24 Gbit for capacities such as 24, 48 and 96 GB; 0 where it is not known. */
    static int mebibits(ModuleKind kind) {
        Optional<ChipSize> size = ModuleFacts.chipSize(kind);
        return size.isPresent() ? size.get().mebibits() : isOfThirds(kind) ? GBIT_24 : 0;
    }

    /** Whether the capacity is three times a power of two, which only chips of 24 Gbit make (SR630 V3 guide). */
    static boolean isOfThirds(ModuleKind kind) {
        return kind.capacity().kibibytes() % 3 == 0;
    }
}
