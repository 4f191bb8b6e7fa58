package slotledger.catalog.internal.resolve;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.model.board.Board;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Takes;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Place;

/**
 * Adds to what an inventory says of a module what its board decides: a module that works in the machine is of the only
 * generation, form, buffering and error check the slot allows. What contradicts the board is an error, since nobody
 * can say from afar which of the two is wrong.
 */
final class BoardFacts {

    private final Board board;
    private final Remarks remarks;

    BoardFacts(Board board, Remarks remarks) {
        this.board = board;
        this.remarks = remarks;
    }

    ModuleKind complete(ModuleKind kind, String label, Place place) {
        List<Takes> ways = board.takes().stream().filter(way -> way.holdsFor(label)).toList();
        if (ways.isEmpty()) {
            return kind;
        }
        Set<Generation> generations = ways.stream().map(Takes::generation).collect(Collectors.toSet());
        Set<Form> forms = union(ways, Takes::forms);
        Set<Buffering> bufferings = union(ways, Takes::bufferings);
        check(kind.generation().isEmpty() || generations.contains(kind.generation().get()), kind, label, place,
                texts(generations, Generation::text));
        check(kind.form().isEmpty() || forms.contains(kind.form().get()), kind, label, place, texts(forms, Form::text));
        check(kind.buffering().isEmpty() || bufferings.isEmpty() || bufferings.contains(kind.buffering().get()), kind,
                label, place, texts(bufferings, Buffering::text) + " modules");
        ModuleKind known = kind;
        if (kind.generation().isEmpty() && generations.size() == 1) {
            known = known.with(generations.iterator().next());
        }
        if (kind.form().isEmpty() && forms.size() == 1) {
            known = known.with(forms.iterator().next());
        }
        if (kind.buffering().isEmpty() && bufferings.size() == 1) {
            known = known.with(bufferings.iterator().next());
        }
        return withErrorCheck(known, ways, label, place);
    }

    private ModuleKind withErrorCheck(ModuleKind kind, List<Takes> ways, String label, Place place) {
        if (ways.stream().allMatch(way -> way.ecc() == EccOutcome.REFUSED)) {
            check(!kind.errorCheck().equals(Optional.of(ErrorCheck.ECC)), kind, label, place,
                    "modules without ECC");
            return kind.errorCheck().isEmpty() ? kind.with(ErrorCheck.NONE) : kind;
        }
        if (ways.stream().allMatch(way -> way.ecc() == EccOutcome.REQUIRED)) {
            check(!kind.errorCheck().equals(Optional.of(ErrorCheck.NONE)), kind, label, place,
                    "modules with ECC");
            return kind.errorCheck().isEmpty() ? kind.with(checking(kind)) : kind;
        }
        return kind;
    }

    /** Boards of the SIMM age check parity; only later ones correct errors. */
    private static ErrorCheck checking(ModuleKind kind) {
        return kind.generation().filter(each -> each == Generation.FPM || each == Generation.EDO).isPresent()
                ? ErrorCheck.PARITY
                : ErrorCheck.ECC;
    }

    private void check(boolean agrees, ModuleKind kind, String label, Place place, String expected) {
        if (!agrees) {
            remarks.errorAt(place, "module-contradicts-board", kind.toString(),
                    "The slot %s of the board %s doesn't take such a module (%s)."
                            .formatted(label, board.name(), board.source()),
                    expected,
                    "Open the machine, read the module's label and the model, and correct the inventory or the board"
                            + " file.");
        }
    }

    /** All values the ways allow; none where one of them is silent. */
    private static <T> Set<T> union(List<Takes> ways, Function<Takes, Set<T>> values) {
        if (ways.stream().anyMatch(way -> values.apply(way).isEmpty())) {
            return Set.of();
        }
        return ways.stream().flatMap(way -> values.apply(way).stream()).collect(Collectors.toSet());
    }

    private static <T> String texts(Set<T> values, Function<T, String> text) {
        return values.stream().map(text).sorted().collect(Collectors.joining(" or "));
    }
}
