package slotledger.intake.internal.join;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;

/** Adds to what one source says of a module what another one says beyond it. */
public final class KindMerge {

    private KindMerge() {
    }

    /** What both say together; empty where they contradict each other. */
    public static Optional<SlotContent> merge(SlotContent believed, SlotContent other) {
        if (believed.equals(other)) {
            return Optional.of(believed);
        }
        if (believed.module().isEmpty() || other.module().isEmpty()) {
            // A filler is invisible to firmware, and what could not be read contradicts nothing.
            return believed.isEmpty() && other instanceof SlotContent.Filled ? Optional.of(other)
                    : believed instanceof SlotContent.Unread && other.module().isPresent() ? Optional.of(other)
                            : other instanceof SlotContent.Unread && believed.module().isPresent()
                                    ? Optional.of(believed) : Optional.empty();
        }
        return merge(believed.module().get(), other.module().get()).map(SlotContent::of);
    }

    private static Optional<ModuleKind> merge(ModuleKind a, ModuleKind b) {
        if (!a.capacity().equals(b.capacity()) || !goTogether(a, b)) {
            return Optional.empty();
        }
        return Optional.of(new ModuleKind(a.generation().or(b::generation), a.form().or(b::form), a.capacity(),
                or(a.ranks(), b.ranks()), a.chipWidth().or(b::chipWidth), a.chipSize().or(b::chipSize),
                or(a.stack(), b.stack()), a.errorCheck().or(b::errorCheck), or(a.checkBits(), b.checkBits()),
                a.buffering().or(b::buffering), a.rate().or(b::rate), or(a.casLatency(), b.casLatency()),
                a.voltages().isEmpty() ? b.voltages() : a.voltages(), a.accessTime().or(b::accessTime),
                a.contacts().or(b::contacts)));
    }

    private static boolean goTogether(ModuleKind a, ModuleKind b) {
        return agree(a.generation(), b.generation()) && agree(a.form(), b.form()) && agree(a.ranks(), b.ranks())
                && agree(a.chipWidth(), b.chipWidth()) && agree(a.chipSize(), b.chipSize())
                && agree(a.stack(), b.stack()) && agree(a.errorCheck(), b.errorCheck())
                && agree(a.checkBits(), b.checkBits()) && agree(a.buffering(), b.buffering())
                && agree(a.rate(), b.rate()) && agree(a.casLatency(), b.casLatency())
                && agree(a.accessTime(), b.accessTime()) && agree(a.contacts(), b.contacts())
                && agree(a.voltages(), b.voltages());
    }

    private static boolean agree(Optional<?> a, Optional<?> b) {
        return a.isEmpty() || b.isEmpty() || a.equals(b);
    }

    private static boolean agree(OptionalInt a, OptionalInt b) {
        return a.isEmpty() || b.isEmpty() || a.equals(b);
    }

    /** A voltage that both name is enough: one source names what it runs at, the other all that it can. */
    private static boolean agree(Set<?> a, Set<?> b) {
        return a.isEmpty() || b.isEmpty() || a.stream().anyMatch(b::contains);
    }

    private static OptionalInt or(OptionalInt a, OptionalInt b) {
        return a.isPresent() ? a : b;
    }
}
