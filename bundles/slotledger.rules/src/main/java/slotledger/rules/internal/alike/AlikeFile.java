package slotledger.rules.internal.alike;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Voltage;
import slotledger.rules.LookAlike;
import slotledger.rules.LookAlike.Mistake;
import slotledger.rules.LookAlike.Sight;

/** Reads the file of look-alikes: blocks of "key: value" lines; a line that ends in a backslash goes on. */
final class AlikeFile {

    private static final Set<String> KEYS = Set.of("look-alike", "rules", "one", "other", "one for other",
            "other for one", "same", "eye", "label", "source");
    private static final Set<String> TRAITS = Set.of("generation", "form", "buffering", "check", "lowest", "width",
            "chips", "stack", "filler");

    private AlikeFile() {
    }

    /** A file that can't be read is a mistake in the product. */
    static List<AlikePair> read(String name) {
        try (InputStream stream = AlikeFile.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("The file %s must stand beside %s.".formatted(name,
                        AlikeFile.class.getName()));
            }
            return read(new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)).lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<AlikePair> read(List<String> lines) {
        String whole = lines.stream().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"))
                .replaceAll("\\s*\\\\\n\\s*", " ");
        List<AlikePair> pairs = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (String block : whole.split("\n\\s*\n")) {
            if (!block.isBlank()) {
                AlikePair pair = pair(block.strip());
                if (!ids.add(pair.alike().id())) {
                    throw new IllegalStateException("The look-alikes %s must be there once.".formatted(
                            pair.alike().id()));
                }
                pairs.add(pair);
            }
        }
        return List.copyOf(pairs);
    }

    private static AlikePair pair(String block) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String line : block.split("\n")) {
            int colon = line.indexOf(':');
            if (colon < 1 || !KEYS.contains(line.substring(0, colon))
                    || values.put(line.substring(0, colon), line.substring(colon + 1).strip()) != null) {
                throw new IllegalStateException(
                        "The line \"%s\" of the look-alikes must be a known key and its value, once a block."
                                .formatted(line));
            }
        }
        String[] one = sides(values, "one");
        String[] other = sides(values, "other");
        LookAlike alike = new LookAlike(value(values, "look-alike"), words(value(values, "rules"), " +", word -> word),
                one[0], other[0], mistake(values, "one for other"), mistake(values, "other for one"),
                value(values, "eye"), value(values, "label"), source(value(values, "source")));
        boolean sameCapacity = values.containsKey("same");
        if (sameCapacity && !values.get("same").equals("capacity")) {
            throw new IllegalStateException("Look-alikes may be of the same capacity only, not of the same %s."
                    .formatted(values.get("same")));
        }
        return new AlikePair(alike, traits(one[1]), traits(other[1]), sameCapacity);
    }

    private static String value(Map<String, String> values, String key) {
        if (!values.containsKey(key)) {
            throw new IllegalStateException("The look-alikes %s must have a line \"%s\".".formatted(values, key));
        }
        return values.get(key);
    }

    private static String[] sides(Map<String, String> values, String key) {
        String[] sides = value(values, key).split(" *\\| *");
        if (sides.length != 2) {
            throw new IllegalStateException("The line \"%s\" of the look-alikes must have two parts.".formatted(key));
        }
        return sides;
    }

    private static Optional<Mistake> mistake(Map<String, String> values, String key) {
        if (!values.containsKey(key)) {
            return Optional.empty();
        }
        String[] sides = sides(values, key);
        Sight sight = Arrays.stream(Sight.values()).filter(each -> each.text().equals(sides[0])).findFirst()
                .orElseThrow(() -> new IllegalStateException("Nobody sees \"%s\".".formatted(sides[0])));
        return Optional.of(new Mistake(sight, sides[1]));
    }

    /** "memory", "practice", or "title; place". */
    private static Source source(String text) {
        return switch (text) {
            case "memory" -> Source.of(Ground.MEMORY);
            case "practice" -> Source.of(Ground.PRACTICE);
            default -> {
                String[] parts = text.split("; *", 2);
                yield Source.document(parts[0], parts[1]);
            }
        };
    }

    private static Traits traits(String text) {
        Map<String, String> facts = new HashMap<>();
        for (String part : text.split("; *")) {
            int blank = part.indexOf(' ');
            if (blank < 1 || !TRAITS.contains(part.substring(0, blank))
                    || facts.put(part.substring(0, blank), part.substring(blank + 1)) != null) {
                throw new IllegalStateException("The trait \"%s\" of look-alikes must be known.".formatted(part));
            }
        }
        return new Traits(
                set(facts, "generation", Generation::valueOf), set(facts, "form", Form::valueOf),
                set(facts, "buffering", Buffering::valueOf), set(facts, "check", ErrorCheck::valueOf),
                set(facts, "lowest", millivolts -> Voltage.ofMillivolts(Integer.parseInt(millivolts))),
                set(facts, "width", ChipWidth::valueOf), set(facts, "chips", Integer::valueOf),
                set(facts, "stack", Integer::valueOf), set(facts, "filler", Filler::valueOf));
    }

    private static <T> Set<T> set(Map<String, String> facts, String key, Function<String, T> reading) {
        return facts.containsKey(key) ? words(facts.get(key), ", *", reading) : Set.of();
    }

    private static <T> Set<T> words(String text, String between, Function<String, T> reading) {
        return Arrays.stream(text.split(between)).filter(word -> !word.isBlank()).map(reading)
                .collect(Collectors.toUnmodifiableSet());
    }
}
