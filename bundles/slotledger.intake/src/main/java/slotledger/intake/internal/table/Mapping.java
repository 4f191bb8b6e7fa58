package slotledger.intake.internal.table;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Nearest;
import slotledger.model.finding.Finding;
import slotledger.model.observed.TableUse;
import slotledger.model.observed.Trust;
import slotledger.model.source.Place;

/**
 * A mapping file: one "heading = field" a line, "#" begins a comment line.
 *
 * <pre>
 * Inv.-Nr. alt = asset-tag
 * Bank links   = slot DIMM1
 * Bank links GB = slot-size DIMM1
 * Bemerkung    = ignore
 * trust memory = spreadsheet, firmware
 * </pre>
 *
 * @param file     its name
 * @param meanings what each heading means, by {@link Headings#mappingKey}
 * @param lines    the line each heading stands in
 * @param trust    who is believed where an inventory and firmware differ
 * @param findings what could not be used
 */
public record Mapping(String file, Map<String, Meaning> meanings, Map<String, Integer> lines, Trust trust,
        List<Finding> findings) {

    /** No mapping file. */
    public static final Mapping NONE = new Mapping("", Map.of(), Map.of(), Trust.USUAL, List.of());

    public Mapping {
        meanings = Map.copyOf(meanings);
        lines = Map.copyOf(lines);
        findings = List.copyOf(findings);
    }

    public static Mapping read(Path file) throws IntakeException {
        try {
            return parse(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IntakeException(Doubt.error("mapping-not-readable", "The mapping file can't be read.",
                    "a text file in UTF-8", "Check its name and save it as UTF-8 text.")
                    .at(Place.ofFile(file.toString()), ""), e);
        }
    }

    static Mapping parse(String file, String text) {
        Map<String, Meaning> meanings = new LinkedHashMap<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        Trust trust = Trust.USUAL;
        int number = 0;
        for (String line : text.replace("\uFEFF", "").split("\\R")) {
            number++;
            if (line.isBlank() || line.strip().startsWith("#")) {
                continue;
            }
            Place place = Place.ofRow(file, "", number);
            int equals = line.lastIndexOf('=');
            if (equals < 1 || line.substring(0, equals).isBlank()) {
                findings.add(Doubt.error("mapping-line", "This line is not a mapping.", "heading = field",
                        "Correct the line, or begin it with # if it is a comment.").at(place, line.strip()));
                continue;
            }
            if (TrustLine.isOne(line)) {
                trust = TrustLine.read(line, trust, doubt -> findings.add(doubt.at(place, line.strip())));
                continue;
            }
            Optional<Meaning> meaning = meaning(line.substring(equals + 1).strip());
            String key = Headings.mappingKey(unquoted(line.substring(0, equals).strip()));
            if (meaning.isEmpty()) {
                findings.add(unknown(line.substring(equals + 1).strip()).at(place, line.strip()));
            } else if (meanings.putIfAbsent(key, meaning.get()) != null) {
                findings.add(Doubt.error("mapping-line", "This heading was already mapped in line %d."
                        .formatted(lines.get(key)), "one line a heading", "Delete one of the lines.")
                                .at(place, line.strip()));
            } else {
                lines.put(key, number);
            }
        }
        return new Mapping(file, meanings, lines, trust, findings);
    }

    private static String unquoted(String heading) {
        boolean quoted = heading.length() > 1 && heading.startsWith("\"") && heading.endsWith("\"");
        return quoted ? heading.substring(1, heading.length() - 1) : heading;
    }

    private static Optional<Meaning> meaning(String text) {
        int blank = text.indexOf(' ');
        Optional<Field> whole = Field.ofId(text).filter(field -> !field.repeats() || field == Field.IGNORED
                || field == Field.REMARK);
        if (whole.isPresent() || blank < 0) {
            return whole.map(field -> new Meaning(field, ""));
        }
        return Field.ofId(text.substring(0, blank)).filter(Field::repeats)
                .map(field -> new Meaning(field, text.substring(blank + 1).strip()));
    }

    private static Doubt unknown(String field) {
        List<String> ids = new ArrayList<>();
        for (Field known : Field.values()) {
            ids.add(known.id());
        }
        String advice = Nearest.to(field.split(" ")[0], ids).map("Maybe %s is meant."::formatted)
                .orElse("See the list in the template of the mapping file.");
        return Doubt.error("mapping-field", "There is no field %s, or it needs the name of a slot behind it."
                .formatted(field), "a field, or a slot such as: slot DIMM1", advice);
    }

    /** Headings of the mapping that no table has. */
    public List<Finding> unused(List<TableUse> uses) {
        List<Finding> unused = new ArrayList<>();
        lines.forEach((key, line) -> {
            boolean used = uses.stream().flatMap(use -> use.columns().stream())
                    .anyMatch(column -> List.of(column.heading().split(" / ")).stream().map(Headings::mappingKey)
                            .anyMatch(key::equals) || Headings.mappingKey(column.heading().replace(" / ", " "))
                                    .equals(key));
            if (!used) {
                unused.add(Doubt.warning("mapping-unused", "No table has this heading.",
                        "a heading as the sheet writes it",
                        "Correct the heading, or delete the line.").at(Place.ofRow(file, "", line), key));
            }
        });
        unused.sort(Comparator.comparingInt(finding -> finding.place().row().orElse(0)));
        return unused;
    }
}
