package slotledger.serve.internal;

import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import slotledger.app.CardDesk;
import slotledger.app.DeskException;
import slotledger.app.WorkDesk;
import slotledger.model.work.Round;
import slotledger.serve.Pass;
import slotledger.serve.PhoneServer;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;
import slotledger.serve.internal.http.Limits;
import slotledger.serve.internal.http.PhoneHttp;
import slotledger.serve.internal.pass.PassBook;
import slotledger.serve.internal.round.RoundDesk;

/** Rounds, passes and the server that shows them. */
final class RunningServer implements PhoneServer {

    private final PhoneHttp http;
    private final List<Pass> passes;
    private final List<Round> rounds;

    private RunningServer(PhoneHttp http, List<Pass> passes, List<Round> rounds) {
        this.http = http;
        this.rounds = List.copyOf(rounds);
        this.passes = List.copyOf(passes);
    }

    static PhoneServer start(ServeRequest request, WorkDesk work, CardDesk cards, Path passFile, Limits limits,
            Clock clock) throws ServeException {
        RoundDesk desk = new RoundDesk(request.project(), work, cards, System::nanoTime);
        List<Round> rounds = rounds(desk, request);
        PassBook book = new PassBook(passFile, clock);
        PhoneHttp http = PhoneHttp.start(request, desk, book, limits);
        try {
            List<Pass> passes = new ArrayList<>();
            for (Round round : rounds) {
                passes.add(pass(round, book, request, http.address()));
            }
            return new RunningServer(http, passes, rounds);
        } catch (UncheckedIOException problem) {
            http.close();
            throw new ServeException(problem.getMessage() + ". Is the folder " + passFile.getParent() + " writable?",
                    problem);
        }
    }

    @Override
    public URI address() {
        return http.address();
    }

    @Override
    public List<Pass> passes() {
        return passes;
    }

    @Override
    public void writePasses(Path file) throws ServeException {
        PassPage.write(passes, rounds, address(), file);
    }

    @Override
    public void close() {
        http.close();
    }

    private static List<Round> rounds(RoundDesk desk, ServeRequest request) throws ServeException {
        try {
            List<Round> rounds = desk.rounds();
            if (rounds.isEmpty()) {
                throw new ServeException("The project " + request.project()
                        + " has no rounds yet. Make some of its plan first.");
            }
            Set<String> unknown = new TreeSet<>(request.renew());
            rounds.forEach(round -> unknown.remove(round.id()));
            if (!unknown.isEmpty()) {
                throw new ServeException("There is no round " + String.join(", ", unknown) + ". There are: "
                        + rounds.stream().map(Round::id).collect(Collectors.joining(", ")) + ".");
            }
            desk.cards(rounds.get(0));
            return rounds;
        } catch (DeskException problem) {
            throw new ServeException(problem.getMessage(), problem);
        }
    }

    private static Pass pass(Round round, PassBook book, ServeRequest request, URI address) {
        Optional<Instant> holds = request.renew().contains(round.id()) ? Optional.empty() : book.holds(round);
        Optional<Pass.Entry> entry = Optional.empty();
        if (holds.isEmpty()) {
            String secret = book.issue(round, request.validity());
            URI link = address.resolve("#r=" + encoded(round.id()) + "&s=" + encoded(secret));
            entry = Optional.of(new Pass.Entry(secret, link, PassCode.of(link).orElseThrow()));
        }
        return new Pass(round.id(), round.technician(), round.machines().size(),
                holds.or(() -> book.holds(round)).orElseThrow(), entry);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
