package slotledger.rules.internal.alike;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Takes;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.LookAlike;
import slotledger.rules.internal.alike.Traits.Match;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Things that are easily taken for each other, from one data file. */
public final class LookAlikes {

    private static final List<AlikePair> PAIRS = AlikeFile.read("look-alikes.txt");

    private LookAlikes() {
    }

    public static List<LookAlike> all() {
        return PAIRS.stream().map(AlikePair::alike).toList();
    }

    /** Those that are surely the first piece and the second, in this order. */
    public static List<LookAlike> between(Piece first, Piece second) {
        List<LookAlike> found = new ArrayList<>();
        for (AlikePair pair : PAIRS) {
            if (pair.joins(first, second)) {
                found.add(pair.alike());
            } else if (pair.turned().joins(first, second)) {
                found.add(pair.alike().turned());
            }
        }
        return found;
    }

    /** Those of which the piece may be the one and wrong, and the slot may take the other. */
    public static List<LookAlike> wrongFor(Piece piece, Takes takes) {
        return confusions(piece, takes).stream().map(AlikePair::alike).toList();
    }

    private static List<AlikePair> confusions(Piece piece, Takes takes) {
        List<AlikePair> found = new ArrayList<>();
        for (AlikePair pair : PAIRS) {
            for (AlikePair each : List.of(pair, pair.turned())) {
                if (each.alike().oneForOther().isPresent() && each.one().match(piece) != Match.NO
                        && each.other().mayGoInto(takes) && sameFamily(each, piece, takes)) {
                    found.add(each);
                }
            }
        }
        return found;
    }

    private static boolean sameFamily(AlikePair pair, Piece piece, Takes takes) {
        return !(piece instanceof ModuleKind kind) || !pair.one().generations().equals(pair.other().generations())
                || kind.generation().filter(each -> each != takes.generation()).isEmpty();
    }

    /** The finer reasons of a rule's objection: what the modules concerned may have been taken for. */
    public static List<Reason> below(String rule, Weight weight, Statement words, Situation situation) {
        if (weight == Weight.PASSES) {
            return List.of();
        }
        Map<String, Reason> reasons = new LinkedHashMap<>();
        for (int i = 0; i < situation.board().slots().size(); i++) {
            String label = situation.board().slots().get(i).label();
            Optional<Takes> takes = situation.takes(i);
            Optional<Piece> piece = situation.setup().population().in(label).piece();
            if (words.slots().contains(label) && takes.isPresent() && piece.isPresent()) {
                for (AlikePair pair : confusions(piece.get(), takes.get())) {
                    if (pair.alike().rules().contains(rule)) {
                        reasons.putIfAbsent(pair.alike().id(), reason(rule, weight, words, label, pair, piece.get()));
                    }
                }
            }
        }
        return List.copyOf(reasons.values());
    }

    private static Reason reason(
            String rule, Weight weight, Statement words, String label, AlikePair pair, Piece piece) {
        LookAlike alike = pair.alike();
        String sentence = "%s %s, which looks like %s: %s. %s".formatted(
                pair.one().match(piece) == Match.YES ? "Slot " + label + " holds" : "Slot " + label + " may hold",
                alike.one(), alike.other(), alike.oneForOther().orElseThrow().sight().text(),
                alike.oneForOther().orElseThrow().sentence());
        return new Reason(rule, weight, sentence, List.of(label), alike.source(), alike.howToTell(), List.of(),
                weight == Weight.UNKNOWN ? words.missing() : Optional.empty());
    }
}
