package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A sentence of which some parts stand out.
 *
 * @param parts in reading order
 */
public record Line(List<Part> parts) {

    /**
     * A part of a sentence.
     *
     * @param text   what it says
     * @param strong whether it stands out; such parts are names of users' things, kept apart in writing direction
     */
    public record Part(String text, boolean strong) {}

    public Line {
        parts = List.copyOf(parts);
    }

    /** A sentence of which every second part, from the second on, stands out. */
    public static Line of(String... texts) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < texts.length; i++) {
            if (!texts[i].isEmpty()) {
                parts.add(new Part(texts[i], i % 2 == 1));
            }
        }
        return new Line(parts);
    }

    public Line plus(Line other) {
        List<Part> all = new ArrayList<>(parts);
        all.addAll(other.parts);
        return new Line(all);
    }

    @Override
    public String toString() {
        return parts.stream().map(Part::text).collect(Collectors.joining());
    }
}
