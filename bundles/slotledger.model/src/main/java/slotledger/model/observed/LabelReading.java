package slotledger.model.observed;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import slotledger.model.finding.Finding;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.Piece;

/**
 * What is printed on a module, read.
 *
 * @param text       as given
 * @param piece      the module kind or filler; empty where the text tells no capacity
 * @param generation where it is told
 * @param form       where it is told
 * @param buffering  where it is told
 * @param parts      what each part was taken for, from left to right
 * @param facts      what is told, as text
 * @param rest       what was not understood; may be empty
 * @param findings   contradictions, assumptions, unknown letters
 */
public record LabelReading(
        String text,
        Optional<Piece> piece,
        Optional<Generation> generation,
        Optional<Form> form,
        Optional<Buffering> buffering,
        List<LabelPart> parts,
        Map<ModuleFact, String> facts,
        String rest,
        List<Finding> findings) {

    public LabelReading {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(generation, "generation");
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(buffering, "buffering");
        parts = List.copyOf(parts);
        facts = Collections.unmodifiableMap(new TreeMap<>(facts));
        Objects.requireNonNull(rest, "rest");
        findings = List.copyOf(findings);
    }

    /** Whether anything at all was understood. */
    public boolean isUnderstood() {
        return piece.isPresent() || !facts.isEmpty();
    }
}
