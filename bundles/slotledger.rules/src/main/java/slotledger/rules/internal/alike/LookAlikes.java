package slotledger.rules.internal.alike;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slotledger.model.board.Takes;
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

    /** Each pair in both directions; a direction that does no harm is in the first list only. */
    private static final List<AlikePair> DIRECTED =
            PAIRS.stream().flatMap(pair -> Stream.of(pair, pair.turned())).toList();
    private static final List<AlikePair> HARMFUL =
            DIRECTED.stream().filter(pair -> pair.alike().oneForOther().isPresent()).toList();
    private static final Map<String, List<AlikePair>> BY_RULE = byRule();

    private LookAlikes() {
    }

    private static Map<String, List<AlikePair>> byRule() {
        Map<String, List<AlikePair>> found = new HashMap<>();
        for (AlikePair pair : HARMFUL) {
            pair.alike().rules().forEach(rule -> found.computeIfAbsent(rule, key -> new ArrayList<>()).add(pair));
        }
        return found;
    }

    public static List<LookAlike> all() {
        return PAIRS.stream().map(AlikePair::alike).toList();
    }

    /** Those that are surely the first piece and the second, in this order. */
    public static List<LookAlike> between(Piece first, Piece second) {
        return DIRECTED.stream().filter(pair -> pair.joins(first, second)).map(AlikePair::alike).toList();
    }

    /** Those of which the piece surely is the one, and not the other as well. */
    public static List<LookAlike> of(Piece piece) {
        List<LookAlike> found = new ArrayList<>();
        for (AlikePair pair : PAIRS) {
            for (AlikePair each : List.of(pair, pair.turned())) {
                if (each.one().match(piece) == Match.YES && each.other().match(piece) != Match.YES) {
                    found.add(each.alike());
                }
            }
        }
        return found;
    }

    /** Those of which the piece surely is the one and wrong, and the slot may take the other. */
    public static List<LookAlike> wrongFor(Piece piece, Takes takes) {
        return HARMFUL.stream()
                .filter(pair -> pair.one().match(piece) == Match.YES && pair.mayMislead(piece, takes))
                .map(AlikePair::alike)
                .toList();
    }

    /** The finer reasons of a rule's objection: what the modules concerned may have been taken for. */
    public static List<Reason> below(String rule, Weight weight, Statement words, Situation situation) {
        List<AlikePair> pairs = BY_RULE.getOrDefault(rule, List.of());
        if (weight == Weight.PASSES || pairs.isEmpty()) {
            return List.of();
        }
        Map<String, Reason> reasons = new LinkedHashMap<>();
        for (int i = 0; i < situation.board().slots().size(); i++) {
            String label = situation.board().slots().get(i).label();
            Optional<Takes> takes = situation.takes(i);
            Optional<Piece> piece = situation.setup().population().in(label).piece();
            if (words.slots().contains(label) && takes.isPresent() && piece.isPresent()) {
                for (AlikePair pair : pairs) {
                    if (pair.mayMislead(piece.get(), takes.get())) {
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
