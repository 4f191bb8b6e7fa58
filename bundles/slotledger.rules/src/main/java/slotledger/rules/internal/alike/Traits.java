package slotledger.rules.internal.alike;

import java.util.Optional;
import java.util.Set;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Takes;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.unit.Voltage;
import slotledger.rules.kit.ModuleFacts;

/**
 * What makes a piece one of the things that are taken for each other. An empty set says nothing of that fact.
 *
 * @param generations memory technologies
 * @param forms       mechanical forms
 * @param bufferings  bufferings
 * @param checks      parity or ECC
 * @param lowest      the lowest voltage it works at
 * @param widths      chip widths
 * @param chips       chips without those for check bits
 * @param stacks      dies a chip
 * @param fillers     which filler; a thing with fillers is no module
 */
record Traits(
        Set<Generation> generations,
        Set<Form> forms,
        Set<Buffering> bufferings,
        Set<ErrorCheck> checks,
        Set<Voltage> lowest,
        Set<ChipWidth> widths,
        Set<Integer> chips,
        Set<Integer> stacks,
        Set<Filler> fillers) {

    Traits {
        generations = Set.copyOf(generations);
        forms = Set.copyOf(forms);
        bufferings = Set.copyOf(bufferings);
        checks = Set.copyOf(checks);
        lowest = Set.copyOf(lowest);
        widths = Set.copyOf(widths);
        chips = Set.copyOf(chips);
        stacks = Set.copyOf(stacks);
        fillers = Set.copyOf(fillers);
    }

    /** Whether a piece is such a thing. */
    enum Match {
        NO,
        MAYBE,
        YES;

        private Match and(Match other) {
            return compareTo(other) <= 0 ? this : other;
        }
    }

    Match match(Piece piece) {
        if (piece instanceof Filler filler) {
            return fillers.contains(filler) ? Match.YES : Match.NO;
        }
        ModuleKind kind = (ModuleKind) piece;
        if (!fillers.isEmpty()) {
            return Match.NO;
        }
        return match(generations, kind.generation())
                .and(match(forms, kind.form()))
                .and(match(bufferings, ModuleFacts.buffering(kind)))
                .and(match(checks, check(kind)))
                .and(match(lowest, lowest(kind)))
                .and(match(widths, ModuleFacts.chipWidth(kind)))
                .and(match(chips, chips(kind)))
                .and(match(stacks, stack(kind)));
    }

    /** Whether a slot may take such a thing, as far as what the board says of it goes. */
    boolean mayGoInto(Takes takes) {
        return (generations.isEmpty() || generations.contains(takes.generation()))
                && meet(forms, takes.forms())
                && meet(bufferings, takes.bufferings())
                && meet(widths, takes.chipWidths())
                && (checks.isEmpty() || checks.stream().anyMatch(check -> suits(check, takes.ecc())))
                && (lowest.isEmpty() || takes.voltages().isEmpty() || ModuleFacts.anySame(lowest, takes.voltages()))
                && (stacks.isEmpty() || takes.tallestStack().isEmpty()
                        || stacks.stream().anyMatch(dies -> dies <= takes.tallestStack().getAsInt()));
    }

    private static <T> Match match(Set<T> wanted, Optional<T> known) {
        if (wanted.isEmpty()) {
            return Match.YES;
        }
        return known.isEmpty() ? Match.MAYBE : wanted.contains(known.get()) ? Match.YES : Match.NO;
    }

    /** A document that says nothing excludes nothing. */
    private static <T> boolean meet(Set<T> wanted, Set<T> taken) {
        return wanted.isEmpty() || taken.isEmpty() || wanted.stream().anyMatch(taken::contains);
    }

    private static boolean suits(ErrorCheck check, EccOutcome ecc) {
        return switch (ecc) {
            case USED, IGNORED, UNKNOWN -> true;
            case REFUSED -> check == ErrorCheck.NONE;
            case REQUIRED -> check != ErrorCheck.NONE;
        };
    }

    private static Optional<ErrorCheck> check(ModuleKind kind) {
        return kind.errorCheck().isPresent() ? kind.errorCheck()
                : ModuleFacts.checkBits(kind).map(has -> has ? ErrorCheck.ECC : ErrorCheck.NONE);
    }

    private static Optional<Voltage> lowest(ModuleKind kind) {
        return ModuleFacts.mayWorkAtMore(kind) ? Optional.empty()
                : ModuleFacts.voltages(kind).stream().min(Voltage::compareTo);
    }

    private static Optional<Integer> chips(ModuleKind kind) {
        Optional<ChipWidth> width = ModuleFacts.chipWidth(kind);
        return width.isEmpty() || ModuleFacts.ranks(kind).isEmpty() ? Optional.empty()
                : Optional.of(ModuleFacts.ranks(kind).getAsInt() * ModuleFacts.chipsPerRank(width.get()));
    }

    private static Optional<Integer> stack(ModuleKind kind) {
        return kind.stack().isPresent() ? Optional.of(kind.stack().getAsInt()) : Optional.empty();
    }
}
