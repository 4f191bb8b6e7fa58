package slotledger.rules.kit;

import slotledger.model.module.ChipWidth;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;

/**
 * Dies stacked behind one load of a chip (3DS), known or bounded by what else is known of a module, and the ranks the
 * controller then sees: package ranks x dies (JEDEC JESD21-C 4.1.2.12 and JESD400-5: "logical ranks").
 */
public final class Stacks {

    /** JESD400-5 codes up to 16 dies. */
    private static final int TALLEST = 16;

    private Stacks() {
    }

    /** The fewest dies of a chip that agree with what is known; 1 means that the chips may be plain. */
    public static int least(ModuleKind kind) {
        if (kind.stack().isPresent()) {
            return kind.stack().getAsInt();
        }
        if (isPlain(kind)) {
            return 1;
        }
        if (kind.ranks().isEmpty() || kind.chipWidth().isEmpty()) {
            return 1;
        }
        int dies = dies(kind);
        if (dies > 0) {
            return dies;
        }
        long chip = mebibitsOfChip(kind);
        int stack = 1;
        while (stack < TALLEST && chip / stack > largestDie(kind)) {
            stack *= 2;
        }
        return stack;
    }

    /** The most dies of a chip that agree with what is known; 1 means that the chips are surely plain. */
    public static int most(ModuleKind kind) {
        if (kind.stack().isPresent()) {
            return kind.stack().getAsInt();
        }
        if (isPlain(kind)) {
            return 1;
        }
        if (kind.ranks().isEmpty() || kind.chipWidth().isEmpty()) {
            return TALLEST;
        }
        int dies = dies(kind);
        if (dies > 0) {
            return dies;
        }
        long chip = mebibitsOfChip(kind);
        int stack = 1;
        while (stack < TALLEST && chip / (stack * 2) >= smallestDie(kind)) {
            stack *= 2;
        }
        return Math.max(stack, least(kind));
    }

    /** The fewest ranks the controller may see in the module. */
    public static int leastLogicalRanks(ModuleKind kind) {
        return ModuleFacts.ranks(kind).orElse(1) * least(kind);
    }

    /** The most ranks the controller may see in the module. */
    public static int mostLogicalRanks(ModuleKind kind) {
        return ModuleFacts.ranks(kind).orElse(ModuleFacts.mostRanks(kind)) * most(kind);
    }

    /** Unbuffered and older modules, and all smaller than stacks are made for (64 and 128 GB, from memory). */
    private static boolean isPlain(ModuleKind kind) {
        long smallest = isDdr5(kind) ? 128 : 64;
        return !ModuleFacts.mayBeStacked(kind) || !kind.capacity().atLeast(Capacity.ofGiB(smallest));
    }

    /** What ranks, width and die size leave for the stack; 0 where they don't say. */
    private static int dies(ModuleKind kind) {
        if (kind.chipSize().isEmpty()) {
            return 0;
        }
        long one = ModuleFacts.product(kind.ranks().getAsInt(), kind.chipWidth().get(), kind.chipSize().get());
        long dies = kind.capacity().kibibytes() / one;
        return kind.capacity().kibibytes() % one == 0 && dies <= TALLEST ? (int) dies : 0;
    }

    private static long mebibitsOfChip(ModuleKind kind) {
        ChipWidth width = kind.chipWidth().get();
        long kibibytes = kind.capacity().kibibytes() / (kind.ranks().getAsInt() * ModuleFacts.chipsPerRank(width));
        return kibibytes / 128;
    }

    /** Mebibits of the largest die made (JEDEC standards; what ships is from memory). */
    private static long largestDie(ModuleKind kind) {
        return (isDdr5(kind) ? 32 : 16) * 1024L;
    }

    /** Mebibits of the smallest die that is stacked (from memory). */
    private static long smallestDie(ModuleKind kind) {
        return (isDdr5(kind) ? 16 : 4) * 1024L;
    }

    private static boolean isDdr5(ModuleKind kind) {
        return kind.generation().filter(each -> each == Generation.DDR5).isPresent();
    }
}
