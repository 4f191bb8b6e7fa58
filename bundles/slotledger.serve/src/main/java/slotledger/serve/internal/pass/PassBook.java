package slotledger.serve.internal.pass;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.work.Round;
import slotledger.serve.ServeException;

/** Knows who may see which round. */
public final class PassBook {

    /** A technician has a phone, perhaps a tablet, and a colleague who helps. */
    private static final int MOST_SESSIONS = 8;
    /** Hashed where no pass is known, so that the answer takes as long. */
    private static final String NO_SALT = "AAAAAAAAAAAAAAAAAAAAAA";

    private final Secrets secrets = new Secrets();
    private final PassFile file;
    private final Clock clock;
    private final List<PassRecord> passes = new ArrayList<>();
    private final List<Session> sessions = new ArrayList<>();

    public PassBook(Path file, Clock clock) throws ServeException {
        this.file = new PassFile(file);
        this.clock = clock;
        PassFile.Content kept = this.file.read();
        passes.addAll(kept.passes());
        sessions.addAll(kept.sessions());
    }

    /** When the pass of a round stops to hold; empty where it has none that holds and fits the round as it is. */
    public synchronized Optional<Instant> holds(Round round) {
        return passes.stream().filter(pass -> isOf(pass, round) && pass.holdsAt(clock.instant()))
                .map(PassRecord::expires).findFirst();
    }

    /** Makes a pass for a round in place of those it has, whose sessions end; returns the secret. */
    public synchronized String issue(Round round, Duration validity) {
        String secret = secrets.secret();
        String salt = secrets.salt();
        passes.removeIf(pass -> pass.round().equals(round.id()));
        sessions.removeIf(session -> session.round().equals(round.id()));
        passes.add(new PassRecord(round.id(), round.plan(), round.technician(), salt, Secrets.hash(secret, salt),
                clock.instant().plus(validity)));
        save();
        return secret;
    }

    /** Lets a browser in; returns its token, or nothing where round and secret don't fit or the pass has expired. */
    public Optional<String> enter(String round, String secret) {
        Optional<PassRecord> pass = find(round);
        String hash = Secrets.hash(secret, pass.map(PassRecord::salt).orElse(NO_SALT));
        if (pass.isEmpty() || !Secrets.same(hash, pass.get().hash()) || !pass.get().holdsAt(clock.instant())) {
            return Optional.empty();
        }
        return open(pass.get());
    }

    /** The session of a token, if it holds. */
    public synchronized Optional<Session> session(String token) {
        String hash = Secrets.hash(token);
        Instant now = clock.instant();
        return sessions.stream().filter(each -> Secrets.same(each.hash(), hash) && now.isBefore(each.expires()))
                .findFirst();
    }

    /** Ends a session. */
    public synchronized void leave(Session session) {
        if (sessions.remove(session)) {
            save();
        }
    }

    /** What a page of that session shows in a header with whatever it changes; nobody else can work it out. */
    public static String pageToken(String token) {
        return Secrets.hash("page " + token);
    }

    public static boolean isPageToken(String token, String shown) {
        return Secrets.same(pageToken(token), shown);
    }

    private synchronized Optional<PassRecord> find(String round) {
        return passes.stream().filter(pass -> pass.round().equalsIgnoreCase(round.strip())).findFirst();
    }

    /** Nothing where the pass was replaced while the secret was looked at. */
    private synchronized Optional<String> open(PassRecord pass) {
        if (!passes.contains(pass)) {
            return Optional.empty();
        }
        String token = secrets.token();
        Instant now = clock.instant();
        sessions.removeIf(session -> !now.isBefore(session.expires()));
        List<Session> same = sessions.stream().filter(session -> session.round().equals(pass.round())).toList();
        sessions.removeAll(same.subList(0, Math.max(0, same.size() - MOST_SESSIONS + 1)));
        sessions.add(new Session(Secrets.hash(token), pass.round(), pass.plan(), pass.technician(),
                pass.expires()));
        save();
        return Optional.of(token);
    }

    private static boolean isOf(PassRecord pass, Round round) {
        return pass.round().equals(round.id()) && pass.plan() == round.plan()
                && pass.technician().equals(round.technician());
    }

    private void save() {
        try {
            file.write(new PassFile.Content(passes, sessions));
        } catch (IOException problem) {
            throw new UncheckedIOException("The passes can't be written: " + problem.getMessage(), problem);
        }
    }
}
