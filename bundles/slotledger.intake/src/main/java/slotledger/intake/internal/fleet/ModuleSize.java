package slotledger.intake.internal.fleet;

import java.util.Optional;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;

/** Which capacities modules are made in. */
public final class ModuleSize {

    /** No module of the families here is larger (largest sold: 256 GB with stacked chips; from memory). */
    private static final Capacity LARGEST = Capacity.ofGiB(256);
    private static final Capacity SMALLEST_OF_24_GBIT_CHIPS = Capacity.ofGiB(24);

    private ModuleSize() {
    }

    /** What is wrong with the capacity; nothing is to be built on such a module. */
    public static Optional<Doubt> check(ModuleKind kind) {
        if (kind.capacity().compareTo(LARGEST) > 0) {
            return Optional.of(Doubt.error("impossible-size", "No module holds %s.".formatted(kind.capacity()),
                    "at most " + LARGEST, "Correct the size; perhaps the unit is wrong."));
        }
        long size = kind.capacity().kibibytes();
        if (isPowerOfTwo(size) || size % 3 == 0 && isPowerOfTwo(size / 3) && isMadeByThrees(kind)) {
            return Optional.empty();
        }
        return Optional.of(Doubt.warning("odd-size", "Modules are not made in this size: %s."
                .formatted(kind.capacity()), "1, 2, 4, 8, 16 ... GB",
                "Look into the machine; perhaps this is the sum of two modules."));
    }

    private static boolean isPowerOfTwo(long number) {
        return number > 0 && Long.bitCount(number) == 1;
    }

    /**
     * RDRAM comes in 96, 192 and 384 MB; DDR5 with 24 Gbit chips in 24, 48 and 96 GB; soldered LPDDR in 6 and 12 GB.
     */
    private static boolean isMadeByThrees(ModuleKind kind) {
        if (kind.form().filter(Form.SOLDERED::equals).isPresent()) {
            return true;
        }
        boolean large = kind.capacity().atLeast(SMALLEST_OF_24_GBIT_CHIPS);
        return kind.generation().map(generation -> generation == Generation.RDRAM
                || large && generation.compareTo(Generation.DDR5) >= 0).orElse(large);
    }
}
