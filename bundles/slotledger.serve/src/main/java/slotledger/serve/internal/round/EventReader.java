package slotledger.serve.internal.round;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;

/** Reads what a phone says; what can't be right is refused one by one, so that it doesn't hold up the rest. */
public final class EventReader {

    private static final Instant EARLIEST = Instant.EPOCH;
    private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    private final Round round;
    private final Map<AssetTag, JobCard> cards;
    private final List<JobEvent> events = new ArrayList<>();
    private final List<Refusal> refusals = new ArrayList<>();

    public EventReader(Round round, Map<AssetTag, JobCard> cards) {
        this.round = round;
        this.cards = Map.copyOf(cards);
    }

    /**
     * An entry that is not taken.
     *
     * @param id  as the phone said it
     * @param why a sentence for the technician
     */
    public record Refusal(String id, String why) {
    }

    public List<JobEvent> events() {
        return List.copyOf(events);
    }

    public List<Refusal> refusals() {
        return List.copyOf(refusals);
    }

    /** Reads one entry. */
    public void read(JsonNode node) {
        String id = node.path("id").asText();
        try {
            events.add(event(id, node));
        } catch (DateTimeException problem) {
            refusals.add(new Refusal(id, "The time of this entry can't be read. Check the phone's clock."));
        } catch (IllegalArgumentException problem) {
            refusals.add(new Refusal(id, problem.getMessage()));
        }
    }

    private JobEvent event(String id, JsonNode node) {
        if (!node.isObject() || id.length() != 36) {
            throw new IllegalArgumentException("An entry must have an id of 36 characters.");
        }
        String tag = text(node, "machine");
        if (tag.isBlank() || !round.machines().contains(new AssetTag(tag))) {
            throw new IllegalArgumentException("This machine is not on round " + round.id() + ".");
        }
        if (node.path("plan").asInt() != round.plan()) {
            throw new IllegalArgumentException("This was entered for plan %d; plan %d is carried out now. Read the job "
                    .formatted(node.path("plan").asInt(), round.plan()) + "sheet again, then enter it again.");
        }
        Instant at = Instant.parse(text(node, "at"));
        if (at.isBefore(EARLIEST) || !at.isBefore(LATEST)) {
            throw new DateTimeException("outside of what a clock shows");
        }
        AssetTag machine = new AssetTag(tag);
        return new JobEvent(UUID.fromString(id), machine, round.plan(), at, what(node, cards.get(machine)));
    }

    private static What what(JsonNode node, JobCard card) {
        return switch (text(node, "kind")) {
            case "became" -> new What.Became(JobState.of(text(node, "state")).orElseThrow(
                    () -> new IllegalArgumentException("This state of a job is not known here.")),
                    text(node, "reason"));
            case "ticked" -> ticked(node, card);
            case "serial" -> serial(node, card);
            case "deviated" -> deviated(node, card);
            default -> throw new IllegalArgumentException("This kind of entry is not known here.");
        };
    }

    private static What ticked(JsonNode node, JobCard card) {
        int step = node.path("step").asInt();
        if (card == null || step > card.steps().size()) {
            throw new IllegalArgumentException("The job sheet has no step " + step + ".");
        }
        return new What.Ticked(step, node.path("done").asBoolean());
    }

    private static What serial(JsonNode node, JobCard card) {
        String slot = text(node, "slot");
        if (card == null || !card.slots().contains(slot)) {
            throw new IllegalArgumentException("This machine has no slot of that name.");
        }
        return new What.SerialRead(slot, text(node, "serial"));
    }

    private static What deviated(JsonNode node, JobCard card) {
        String slot = text(node, "slot");
        if (!slot.isEmpty() && (card == null || !card.slots().contains(slot))) {
            throw new IllegalArgumentException("This machine has no slot of that name.");
        }
        return new What.Deviated(slot, text(node, "text"));
    }

    /** One printable text: control characters become blanks. */
    private static String text(JsonNode node, String field) {
        StringBuilder clean = new StringBuilder();
        node.path(field).asText("").codePoints().forEach(point ->
                clean.appendCodePoint(Character.isISOControl(point) || point == 0x2028 || point == 0x2029 ? ' '
                        : point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE ? 0xFFFD : point));
        return clean.toString();
    }
}
