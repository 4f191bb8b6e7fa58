package slotledger.store.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Change;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;

/** Rounds and what happened to jobs, as they are written down. The promises of {@link ChangeJson} hold here too. */
final class WorkJson {

    private WorkJson() {
    }

    static void write(Change.Rounds made, ObjectNode node) {
        node.put("plan", made.plan());
        ArrayNode rounds = node.putArray("rounds");
        made.rounds().forEach(round -> {
            ObjectNode each = rounds.addObject().put("id", round.id()).put("technician", round.technician())
                    .put("site", round.site()).put("room", round.room());
            round.window().ifPresent(window -> each.put("from", window.from().toString())
                    .put("until", window.until().toString()));
            ArrayNode machines = each.putArray("machines");
            round.machines().forEach(machine -> machines.add(machine.value()));
        });
    }

    static Change.Rounds rounds(JsonNode node) {
        int plan = integer(node, "plan");
        List<Round> rounds = new ArrayList<>();
        ChangeJson.member(node, "rounds").forEach(round -> {
            List<AssetTag> machines = new ArrayList<>();
            ChangeJson.member(round, "machines").forEach(machine -> machines.add(new AssetTag(machine.asText())));
            Optional<Round.Window> window = round.has("from")
                    ? Optional.of(new Round.Window(LocalDateTime.parse(ChangeJson.text(round, "from")),
                            LocalDateTime.parse(ChangeJson.text(round, "until"))))
                    : Optional.empty();
            rounds.add(new Round(ChangeJson.text(round, "id"), plan, ChangeJson.text(round, "technician"),
                    ChangeJson.text(round, "site"), ChangeJson.text(round, "room"), window, machines));
        });
        return new Change.Rounds(plan, rounds);
    }

    static void write(Change.Worked worked, ObjectNode node) {
        ArrayNode events = node.putArray("events");
        worked.events().forEach(event -> write(event.what(), events.addObject().put("id", event.id().toString())
                .put("machine", event.machine().value()).put("plan", event.plan()).put("at", event.at().toString())));
    }

    private static void write(What what, ObjectNode node) {
        if (what instanceof What.Became became) {
            node.put("what", "became").put("state", became.state().id()).put("reason", became.reason());
        } else if (what instanceof What.Ticked ticked) {
            node.put("what", "ticked").put("step", ticked.step()).put("done", ticked.done());
        } else if (what instanceof What.SerialRead read) {
            node.put("what", "serial").put("slot", read.slot()).put("serial", read.serial());
        } else if (what instanceof What.Deviated deviated) {
            node.put("what", "deviated").put("slot", deviated.slot()).put("text", deviated.text());
        }
    }

    static Change.Worked worked(JsonNode node) {
        List<JobEvent> events = new ArrayList<>();
        ChangeJson.member(node, "events").forEach(event -> events.add(new JobEvent(
                UUID.fromString(ChangeJson.text(event, "id")), new AssetTag(ChangeJson.text(event, "machine")),
                integer(event, "plan"), Instant.parse(ChangeJson.text(event, "at")), what(event))));
        return new Change.Worked(events);
    }

    private static What what(JsonNode node) {
        String what = ChangeJson.text(node, "what");
        return switch (what) {
            case "became" -> new What.Became(state(ChangeJson.text(node, "state")), ChangeJson.text(node, "reason"));
            case "ticked" -> new What.Ticked(integer(node, "step"), ChangeJson.member(node, "done").asBoolean());
            case "serial" -> new What.SerialRead(ChangeJson.text(node, "slot"), ChangeJson.text(node, "serial"));
            case "deviated" -> new What.Deviated(ChangeJson.text(node, "slot"), ChangeJson.text(node, "text"));
            default -> throw new IllegalArgumentException("What happened (%s) must be known.".formatted(what));
        };
    }

    private static JobState state(String id) {
        return JobState.of(id).orElseThrow(() -> new IllegalArgumentException(
                "The state of a job (%s) must be known.".formatted(id)));
    }

    static int integer(JsonNode node, String name) {
        return Math.toIntExact(ChangeJson.number(node, name));
    }
}
