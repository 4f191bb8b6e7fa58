package slotledger.app.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Rate;

/**
 * Whether what an inventory found can be what was planned. Inventories know less than a plan, so every fact that both
 * know must agree, and the capacity always. The rate is the exception: many inventories list the rate a module runs at,
 * not the one it is rated for, so the planned running rate is as good.
 */
final class KindMatch {

    private final Optional<Rate> runsAt;

    KindMatch(Optional<Rate> runsAt) {
        this.runsAt = runsAt;
    }

    boolean matches(SlotContent planned, SlotContent found) {
        if (planned instanceof SlotContent.Holds want && found instanceof SlotContent.Holds have) {
            return matches(want.kind(), have.kind());
        }
        // Firmware can't see fillers: whether one is there or nothing, an inventory lists the slot as empty.
        return planned.equals(found)
                || planned instanceof SlotContent.Filled && found.isEmpty()
                || planned.isEmpty() && found instanceof SlotContent.Filled;
    }

    /** Whether the modules can be paired off, whatever slots they are in. */
    boolean sameModules(Population wanted, Population found) {
        List<SlotContent> left = new ArrayList<>(found.contents().values());
        left.removeIf(content -> content.isEmpty() || content instanceof SlotContent.Filled);
        for (SlotContent want : wanted.contents().values()) {
            if (want instanceof SlotContent.Empty || want instanceof SlotContent.Filled) {
                continue;
            }
            Optional<SlotContent> pair = left.stream().filter(have -> matches(want, have)).findFirst();
            if (pair.isEmpty()) {
                return false;
            }
            left.remove(pair.get());
        }
        return left.isEmpty();
    }

    private boolean matches(ModuleKind planned, ModuleKind found) {
        return planned.capacity().equals(found.capacity())
                && agree(planned.generation(), found.generation())
                && agree(planned.form(), found.form())
                && agree(planned.ranks(), found.ranks())
                && agree(planned.chipWidth(), found.chipWidth())
                && agree(planned.errorCheck(), found.errorCheck())
                && agree(planned.buffering(), found.buffering())
                && (agree(planned.rate(), found.rate()) || agree(runsAt, found.rate()));
    }

    private static <T> boolean agree(Optional<T> planned, Optional<T> found) {
        return planned.isEmpty() || found.isEmpty() || planned.equals(found);
    }

    private static boolean agree(OptionalInt planned, OptionalInt found) {
        return planned.isEmpty() || found.isEmpty() || planned.equals(found);
    }
}
