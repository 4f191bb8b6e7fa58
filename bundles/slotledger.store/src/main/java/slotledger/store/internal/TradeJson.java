package slotledger.store.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Optional;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.machine.AssetTag;

/** What happened to orders, as it is written down. The promises of {@link ChangeJson} hold here too. */
final class TradeJson {

    private TradeJson() {
    }

    static void write(TradeEvent event, ObjectNode node) {
        node.put("plan", event.plan());
        if (event instanceof TradeEvent.Approved approved) {
            node.put("what", "approved").put("by", approved.by());
        } else if (event instanceof TradeEvent.Sent sent) {
            node.put("what", "sent").put("supplier", sent.supplier()).put("day", sent.day().toString());
        } else if (event instanceof TradeEvent.Confirmed said) {
            node.put("what", "confirmed").put("supplier", said.supplier()).put("day", said.day().toString())
                    .put("number", said.number());
            said.expected().ifPresent(day -> node.put("expected", day.toString()));
        } else if (event instanceof TradeEvent.Received came) {
            node.put("what", "received").put("day", came.day().toString()).put("offer", came.offer())
                    .put("good", came.good()).put("wrong", came.wrong()).put("dead", came.dead())
                    .put("tested", came.tested()).put("note", came.note());
        } else if (event instanceof TradeEvent.Drawn taken) {
            node.put("what", "drawn").put("day", taken.day().toString()).put("offer", taken.offer())
                    .put("modules", taken.modules()).put("reason", taken.reason());
            taken.machine().ifPresent(machine -> node.put("machine", machine.value()));
        } else {
            node.put("what", "ended");
        }
    }

    static TradeEvent read(JsonNode node) {
        int plan = WorkJson.integer(node, "plan");
        String what = ChangeJson.text(node, "what");
        return switch (what) {
            case "approved" -> new TradeEvent.Approved(plan, ChangeJson.text(node, "by"));
            case "sent" -> new TradeEvent.Sent(plan, ChangeJson.text(node, "supplier"), day(node, "day"));
            case "confirmed" -> new TradeEvent.Confirmed(plan, ChangeJson.text(node, "supplier"), day(node, "day"),
                    ChangeJson.text(node, "number"),
                    node.has("expected") ? Optional.of(day(node, "expected")) : Optional.empty());
            case "received" -> new TradeEvent.Received(plan, day(node, "day"), ChangeJson.text(node, "offer"),
                    WorkJson.integer(node, "good"), WorkJson.integer(node, "wrong"), WorkJson.integer(node, "dead"),
                    ChangeJson.member(node, "tested").asBoolean(), ChangeJson.text(node, "note"));
            case "drawn" -> new TradeEvent.Drawn(plan, day(node, "day"), ChangeJson.text(node, "offer"),
                    WorkJson.integer(node, "modules"),
                    node.has("machine")
                            ? Optional.of(new AssetTag(ChangeJson.text(node, "machine"))) : Optional.empty(),
                    ChangeJson.text(node, "reason"));
            case "ended" -> new TradeEvent.Ended(plan);
            default -> throw new IllegalArgumentException("What happened to an order (%s) must be known."
                    .formatted(what));
        };
    }

    private static LocalDate day(JsonNode node, String name) {
        return LocalDate.parse(ChangeJson.text(node, name));
    }
}
