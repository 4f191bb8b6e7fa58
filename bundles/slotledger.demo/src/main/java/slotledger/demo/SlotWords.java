package slotledger.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The slots of a population in a plan file, in words as an inventory lists them. */
final class SlotWords {

    static final String EMPTY = "empty";
    private static final long KIB_PER_MIB = 1024;
    private static final long MIB_PER_GIB = 1024;

    private SlotWords() {}

    /** By printed label, in the order of the plan. */
    static Map<String, String> of(JsonNode population) {
        Map<String, String> words = new LinkedHashMap<>();
        population.path("contents").properties().forEach(slot -> words.put(slot.getKey(), word(slot.getValue())));
        return words;
    }

    private static String word(JsonNode content) {
        return switch (content.path("type").asText()) {
            case "holds" -> module(content.path("kind"));
            case "unread" -> "unknown";
            default -> EMPTY;
        };
    }

    /** "8GB DDR4-2666", "512MB DDR-333": what an inventory program reads of a module. */
    private static String module(JsonNode kind) {
        String generation = kind.path("generation").asText().toUpperCase(Locale.ROOT);
        String rate = kind.path("rate").path("megatransfers").asText();
        String type = generation.isEmpty() || rate.isEmpty() ? generation : generation + "-" + rate;
        return (capacity(kind) + " " + type).strip();
    }

    private static String capacity(JsonNode kind) {
        long mib = kind.path("capacity").path("kibibytes").asLong() / KIB_PER_MIB;
        return mib % MIB_PER_GIB == 0 ? mib / MIB_PER_GIB + "GB" : mib + "MB";
    }
}
