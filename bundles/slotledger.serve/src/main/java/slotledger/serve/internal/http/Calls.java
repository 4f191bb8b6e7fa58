package slotledger.serve.internal.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import slotledger.app.DeskException;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;
import slotledger.serve.internal.pass.PassBook;
import slotledger.serve.internal.pass.Session;
import slotledger.serve.internal.round.EventReader;
import slotledger.serve.internal.round.RoundDesk;
import slotledger.serve.internal.round.RoundWriter;

/** What a page can ask for. */
final class Calls {

    private static final int HASHES_AT_ONCE = 2;
    private static final long PATIENCE_SECONDS = 5;
    private static final int LONGEST_ROUND = 40;

    private final RoundDesk desk;
    private final PassBook passes;
    private final Limits limits;
    private final Cookies cookies;
    private final Counter wrongByAddress;
    private final Counter wrongByRound;
    private final Semaphore hashing = new Semaphore(HASHES_AT_ONCE);

    Calls(RoundDesk desk, PassBook passes, Limits limits, Cookies cookies, LongSupplier nanos) {
        this.desk = desk;
        this.passes = passes;
        this.limits = limits;
        this.cookies = cookies;
        this.wrongByAddress = new Counter(limits.wrongPerAddress(), limits.trying(), nanos);
        this.wrongByRound = new Counter(limits.wrongPerRound(), limits.trying(), nanos);
    }

    /** A browser that shows its token, and the round it may see. */
    private record Visitor(String token, Session session, Round round) {
    }

    /** Round and secret against a token in a cookie. */
    Reply enter(JsonNode body, String address) throws RefusedException, InterruptedException {
        String id = body.path("round").asText("").strip();
        String name = id.substring(0, Math.min(id.length(), LONGEST_ROUND)).toUpperCase(Locale.ROOT);
        // Counted before the secret is looked at, so that many at once are no way around.
        if (!wrongByAddress.take(address) || !wrongByRound.take(name)) {
            throw new RefusedException(429, "Too many wrong secrets. Wait a quarter of an hour, or ask the coordinator "
                    + "for a new one.");
        }
        Optional<String> token = token(id, body.path("secret").asText(""));
        if (token.isEmpty()) {
            throw new RefusedException(403, "Round and secret don't fit, or the secret has expired. Check both on the "
                    + "sheet, or ask the coordinator for a new one.");
        }
        wrongByAddress.giveBack(address);
        wrongByRound.giveBack(name);
        ObjectNode answer = JsonNodeFactory.instance.objectNode().put("page", PassBook.pageToken(token.get()));
        Instant expires = passes.session(token.get()).map(Session::expires).orElseThrow();
        return Reply.json(200, answer, Map.of("Set-Cookie",
                cookies.set(token.get(), Duration.between(Instant.now(), expires))));
    }

    private Optional<String> token(String round, String secret) throws RefusedException, InterruptedException {
        if (!hashing.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new RefusedException(503, "Too many enter at once. Try again in a moment.");
        }
        try {
            return passes.enter(round, secret);
        } finally {
            hashing.release();
        }
    }

    /** The round with all its machines. */
    Reply round(Optional<String> token) throws RefusedException, DeskException {
        Visitor visitor = visitor(token);
        ObjectNode node = RoundWriter.round(visitor.round(), desk.cards(visitor.round()), desk.jobs(visitor.round()),
                visitor.session().expires());
        return Reply.json(node.put("page", PassBook.pageToken(visitor.token())));
    }

    /** What happened. */
    Reply events(Optional<String> token, String pageToken, JsonNode body) throws RefusedException, DeskException {
        Visitor visitor = visitor(token);
        checkPage(visitor, pageToken);
        JsonNode sent = body.path("events");
        if (!sent.isArray() || sent.size() > limits.events()) {
            throw new RefusedException(400, "At most " + limits.events() + " entries are read at once.");
        }
        Map<AssetTag, JobCard> cards = desk.cards(visitor.round());
        EventReader reader = new EventReader(visitor.round(), cards);
        sent.forEach(reader::read);
        List<JobEvent> events = reader.events();
        Map<AssetTag, Job> jobs = new LinkedHashMap<>();
        if (!events.isEmpty()) {
            desk.record(visitor.round(), events).stream()
                    .filter(job -> visitor.round().machines().contains(job.machine()))
                    .forEach(job -> jobs.put(job.machine(), job));
        }
        return Reply.json(RoundWriter.receipt(events.stream().map(JobEvent::id).toList(), reader.refusals(),
                List.copyOf(jobs.values())));
    }

    /** Ends the session of a browser. */
    Reply leave(Optional<String> token, String pageToken) throws RefusedException, DeskException {
        Visitor visitor = visitor(token);
        checkPage(visitor, pageToken);
        passes.leave(visitor.session());
        return Reply.json(200, JsonNodeFactory.instance.objectNode(), Map.of("Set-Cookie",
                cookies.set("", Duration.ZERO)));
    }

    private Visitor visitor(Optional<String> token) throws RefusedException, DeskException {
        Optional<Session> session = token.flatMap(passes::session);
        if (session.isEmpty()) {
            throw new RefusedException(401, "Enter round and secret first.");
        }
        for (Round round : desk.rounds()) {
            if (session.get().maySee(round)) {
                return new Visitor(token.get(), session.get(), round);
            }
        }
        throw new RefusedException(401, "This round has changed or is gone. Ask the coordinator for a new secret; what "
                + "is not yet sent stays on this phone.");
    }

    private static void checkPage(Visitor visitor, String pageToken) throws RefusedException {
        if (!PassBook.isPageToken(visitor.token(), pageToken)) {
            throw new RefusedException(403, "This came from a page of another session. Load the page again.");
        }
    }
}
