package slotledger.serve.internal.round;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.Round;

/** Writes what a phone is told, as JSON. */
public final class RoundWriter {

    private static final ObjectMapper JSON = new ObjectMapper();

    private RoundWriter() {
    }

    /** The whole round: who, until when, and each machine's card and job. */
    public static ObjectNode round(Round round, Map<AssetTag, JobCard> cards, List<Job> jobs, Instant expires) {
        ObjectNode node = JSON.createObjectNode();
        node.put("id", round.id()).put("plan", round.plan()).put("technician", round.technician())
                .put("site", round.site()).put("room", round.room()).put("expires", expires.toString());
        round.window().ifPresent(window ->
                node.put("from", window.from().toString()).put("until", window.until().toString()));
        ArrayNode machines = node.putArray("machines");
        for (Job job : jobs) {
            ObjectNode machine = machines.addObject();
            JobCard card = cards.get(job.machine());
            if (card != null) {
                machine.set("card", card(card));
            }
            machine.set("job", job(job));
        }
        return node;
    }

    /** What became of the entries a phone sent. */
    public static ObjectNode receipt(List<UUID> kept, List<EventReader.Refusal> refused, List<Job> jobs) {
        ObjectNode node = JSON.createObjectNode();
        ArrayNode ids = node.putArray("kept");
        kept.forEach(id -> ids.add(id.toString()));
        ArrayNode refusals = node.putArray("refused");
        refused.forEach(each -> refusals.addObject().put("id", each.id()).put("why", each.why()));
        ArrayNode all = node.putArray("jobs");
        jobs.forEach(job -> all.add(job(job)));
        return node;
    }

    private static ObjectNode card(JobCard card) {
        ObjectNode node = JSON.createObjectNode();
        node.put("number", card.number()).put("place", card.place()).put("board", card.board())
                .put("serial", card.serial()).put("summary", card.summary());
        texts(node.putArray("heed"), card.heed());
        texts(node.putArray("cautions"), card.cautions());
        texts(node.putArray("steps"), card.steps());
        node.put("stepBack", card.stepBack());
        picture(node.putObject("before"), card.before());
        picture(node.putObject("after"), card.after());
        texts(node.putArray("slots"), card.slots());
        ArrayNode receiving = node.putArray("receiving");
        card.receiving().forEach(each -> receiving.addObject().put("slot", each.slot()).put("module", each.module()));
        texts(node.putArray("expected"), card.expected());
        return node;
    }

    private static void picture(ObjectNode node, JobCard.Picture picture) {
        node.put("svg", picture.svg());
        texts(node.putArray("words"), picture.words());
    }

    private static ObjectNode job(Job job) {
        ObjectNode node = JSON.createObjectNode();
        node.put("machine", job.machine().value()).put("plan", job.plan()).put("state", job.state().id())
                .put("reason", job.reason());
        ArrayNode ticked = node.putArray("ticked");
        job.ticked().forEach(ticked::add);
        ObjectNode serials = node.putObject("serials");
        job.serials().forEach(serials::put);
        ArrayNode deviations = node.putArray("deviations");
        job.deviations().forEach(each -> deviations.addObject().put("slot", each.slot()).put("text", each.text()));
        return node;
    }

    private static void texts(ArrayNode node, List<String> texts) {
        texts.forEach(node::add);
    }
}
