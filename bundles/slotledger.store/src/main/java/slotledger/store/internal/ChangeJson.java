package slotledger.store.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Change;
import slotledger.model.project.Decision;
import slotledger.model.project.Fact;
import slotledger.model.project.Original;
import slotledger.model.project.Part;

/**
 * Changes as they are written down. Written member by member, because what was once released must be read for ever: a
 * name in here never changes, and a new member has a meaning where it is missing.
 */
final class ChangeJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** A change of which only the kind stands outside its text. */
    record Written(String kind, String text) {
    }

    private ChangeJson() {
    }

    static Written write(Change change) {
        ObjectNode node = MAPPER.createObjectNode();
        String kind;
        if (change instanceof Change.Created created) {
            kind = "created";
            node.put("title", created.title());
        } else if (change instanceof Change.Imported imported) {
            kind = "imported";
            ObjectNode parts = node.putObject("parts");
            imported.parts().forEach((part, files) -> {
                ArrayNode list = parts.putArray(part.id());
                files.forEach(file -> write(file, list.addObject()));
            });
        } else if (change instanceof Change.Planned planned) {
            kind = "planned";
            node.put("title", planned.title()).put("date", planned.date().toString()).put("basis", planned.basis());
            write(planned.file(), node.putObject("file"));
        } else if (change instanceof Change.Decided decided) {
            kind = write(decided.decision(), node);
        } else if (change instanceof Change.TakenBack back) {
            kind = "taken back";
            node.put("entry", back.entry());
        } else if (change instanceof Change.Rounds rounds) {
            kind = "rounds";
            WorkJson.write(rounds, node);
        } else if (change instanceof Change.Worked worked) {
            kind = "worked";
            WorkJson.write(worked, node);
        } else if (change instanceof Change.Traded traded) {
            kind = "traded";
            TradeJson.write(traded.event(), node);
        } else {
            kind = "restored";
            node.put("entry", ((Change.Restored) change).entry());
        }
        return new Written(kind, text(node));
    }

    private static String write(Decision decision, ObjectNode node) {
        if (decision instanceof Decision.Correction correction) {
            node.put("machine", correction.machine().value()).put("fact", correction.fact().id())
                    .put("seen", correction.seen()).put("value", correction.value());
            return "corrected";
        }
        if (decision instanceof Decision.Mute mute) {
            node.put("code", mute.code()).put("machine", mute.machine()).put("seen", mute.seen());
            return "muted";
        }
        Decision.Pinned pin = (Decision.Pinned) decision;
        node.put("machine", pin.machine().value()).put("seen", pin.seen());
        ArrayNode slots = node.putArray("slots");
        pin.slots().forEach((slot, content) -> slots.addObject().put("slot", slot).put("content", content));
        return "pinned";
    }

    private static void write(Original file, ObjectNode node) {
        node.put("name", file.name()).put("sha256", file.sha256()).put("size", file.size());
    }

    /** @throws IllegalArgumentException where the kind is not known or something is missing */
    static Change read(Written written) {
        JsonNode node = parse(written.text());
        return switch (written.kind()) {
            case "created" -> new Change.Created(text(node, "title"));
            case "imported" -> {
                Map<Part, List<Original>> parts = new EnumMap<>(Part.class);
                member(node, "parts").properties().forEach(part -> {
                    List<Original> files = new ArrayList<>();
                    part.getValue().forEach(file -> files.add(original(file)));
                    parts.put(Part.of(part.getKey()), files);
                });
                yield new Change.Imported(parts);
            }
            case "planned" -> new Change.Planned(original(member(node, "file")), text(node, "title"),
                    LocalDate.parse(text(node, "date")), number(node, "basis"));
            case "corrected" -> new Change.Decided(new Decision.Correction(new AssetTag(text(node, "machine")),
                    fact(text(node, "fact")), text(node, "seen"), text(node, "value")));
            case "muted" -> new Change.Decided(
                    new Decision.Mute(text(node, "code"), text(node, "machine"), text(node, "seen")));
            case "pinned" -> {
                Map<String, String> slots = new LinkedHashMap<>();
                member(node, "slots").forEach(slot -> slots.put(text(slot, "slot"), text(slot, "content")));
                yield new Change.Decided(
                        new Decision.Pinned(new AssetTag(text(node, "machine")), slots, text(node, "seen")));
            }
            case "taken back" -> new Change.TakenBack(number(node, "entry"));
            case "restored" -> new Change.Restored(number(node, "entry"));
            case "rounds" -> WorkJson.rounds(node);
            case "worked" -> WorkJson.worked(node);
            case "traded" -> new Change.Traded(TradeJson.read(node));
            default -> throw new IllegalArgumentException(
                    "The kind of change (%s) must be known. Maybe a newer Slotledger wrote it.".formatted(
                            written.kind()));
        };
    }

    static JsonNode parse(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JsonProcessingException problem) {
            throw new IllegalArgumentException("The text of an entry must be JSON.", problem);
        }
    }

    static String text(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("An entry (%s) must be writable.".formatted(node), impossible);
        }
    }

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static String text(JsonNode node, String name) {
        return member(node, name).asText();
    }

    static long number(JsonNode node, String name) {
        JsonNode member = member(node, name);
        if (!member.canConvertToLong()) {
            throw new IllegalArgumentException("The member %s (%s) must be a number.".formatted(name, member));
        }
        return member.asLong();
    }

    private static Fact fact(String id) {
        return Fact.of(id).orElseThrow(() -> new IllegalArgumentException(
                "The corrected fact (%s) must be known.".formatted(id)));
    }

    private static Original original(JsonNode node) {
        return new Original(text(node, "name"), text(node, "sha256"), number(node, "size"));
    }

    static JsonNode member(JsonNode node, String name) {
        JsonNode member = node.get(name);
        if (member == null) {
            throw new IllegalArgumentException("An entry lacks its member %s.".formatted(name));
        }
        return member;
    }
}
