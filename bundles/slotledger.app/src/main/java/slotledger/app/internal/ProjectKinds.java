package slotledger.app.internal;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slotledger.app.Survey;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.machine.Machine;
import slotledger.model.matrix.KnownFrom;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;

/** The module kinds a project knows, and from where. */
final class ProjectKinds {

    /** What is not known comes last. */
    private static final Comparator<ModuleKind> ORDER =
            Comparator.comparing((ModuleKind kind) -> kind.generation().map(Enum::ordinal).orElse(Integer.MAX_VALUE))
                    .thenComparing(kind -> kind.form().map(Enum::ordinal).orElse(Integer.MAX_VALUE))
                    .thenComparing(ModuleKind::capacity)
                    .thenComparing(kind -> kind.rate().map(rate -> rate.megatransfers()).orElse(Integer.MAX_VALUE))
                    .thenComparing(ModuleKind::toString);

    private final Map<ModuleKind, Set<KnownFrom>> kinds = new TreeMap<>(ORDER);

    private ProjectKinds() {
    }

    /** Every kind on offer, on the shelf, or in a socket of a machine. */
    static Map<ModuleKind, Set<KnownFrom>> of(Survey survey) {
        ProjectKinds found = new ProjectKinds();
        survey.market().offers().forEach(offer -> found.add(offer.piece(), KnownFrom.OFFER));
        survey.shelf().pieces().keySet().forEach(piece -> found.add(piece, KnownFrom.SHELF));
        for (Machine machine : survey.fleet().machines()) {
            Board board = survey.fleet().boardOf(machine);
            for (Slot socket : board.sockets()) {
                machine.population().in(socket.label()).module().ifPresent(kind -> found.add(kind, KnownFrom.FLEET));
            }
        }
        return new LinkedHashMap<>(found.kinds);
    }

    /** The kinds asked for, and where the project knows each from. */
    static Map<ModuleKind, Set<KnownFrom>> asked(Survey survey, List<ModuleKind> asked) {
        Map<ModuleKind, Set<KnownFrom>> known = of(survey);
        ProjectKinds found = new ProjectKinds();
        for (ModuleKind kind : asked) {
            found.add(kind, KnownFrom.ASKED);
            Optional.ofNullable(known.get(kind)).ifPresent(from -> found.kinds.get(kind).addAll(from));
        }
        return new LinkedHashMap<>(found.kinds);
    }

    private void add(Piece piece, KnownFrom from) {
        if (piece instanceof ModuleKind kind) {
            kinds.computeIfAbsent(kind, unknown -> EnumSet.noneOf(KnownFrom.class)).add(from);
        }
    }
}
