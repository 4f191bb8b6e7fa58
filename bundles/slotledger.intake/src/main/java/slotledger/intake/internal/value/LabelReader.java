package slotledger.intake.internal.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.module.Filler;
import slotledger.model.module.Generation;
import slotledger.model.module.Piece;
import slotledger.model.observed.LabelPart;
import slotledger.model.observed.LabelReading;
import slotledger.model.source.Place;

/** Reads one label for a person who wants to know what each part of it means. */
public final class LabelReader {

    private LabelReader() {
    }

    public static LabelReading read(String text) {
        String tidy = Texts.tidy(Texts.withoutInvisible(text));
        Optional<Filler> filler = FillerWords.read(tidy);
        if (filler.isPresent()) {
            return filler(tidy, filler.get());
        }
        ModuleReading reading = ModuleText.read(tidy, Optional.empty());
        List<Doubt> doubts = new ArrayList<>(reading.doubts());
        Optional<Piece> piece = reading.facts().kind(doubts).map(kind -> kind);
        if (!reading.rest().isEmpty()) {
            doubts.add(reading.restDoubt());
        }
        Facts settled = reading.facts().settled(new ArrayList<>());
        return new LabelReading(tidy, piece, settled.generation(), settled.form(), settled.buffering(),
                asWritten(reading.parts(), tidy), settled.named(), reading.rest(),
                doubts.stream().map(doubt -> doubt.at(Place.NOWHERE, tidy)).toList());
    }

    private static LabelReading filler(String text, Filler filler) {
        boolean rdram = filler != Filler.AIR_BLANK;
        return new LabelReading(text, Optional.of(filler),
                rdram ? Optional.of(Generation.RDRAM) : Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(new LabelPart(1, text, filler.text())), Map.of(), "", List.of());
    }

    /** The patterns read capitals; where those are as long as the text, people see what they wrote. */
    private static List<LabelPart> asWritten(List<LabelPart> parts, String text) {
        if (Texts.upper(text).length() != text.length()) {
            return parts;
        }
        return parts.stream().map(part -> new LabelPart(part.from(),
                text.substring(part.from() - 1, part.from() - 1 + part.text().length()), part.meaning())).toList();
    }
}
