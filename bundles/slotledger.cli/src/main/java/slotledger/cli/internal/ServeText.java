package slotledger.cli.internal;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slotledger.serve.Pass;
import slotledger.serve.PhoneServer;

/** Says where a server is reached, and shows the passes that were just made: this once. */
final class ServeText {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);
    /** Upper half, lower half, both: a character is as high as two squares of a code. */
    private static final String[] HALVES = {" ", "\u2584", "\u2580", "\u2588"};
    private static final String BLACK_ON_WHITE = "\u001b[30;107m";
    private static final String PLAIN = "\u001b[0m";

    private final Console console;

    ServeText(Console console) {
        this.console = console;
    }

    void print(PhoneServer server, Optional<String> network, boolean encrypted, Optional<Path> printed) {
        console.item("Address", server.address()
                + (network.isPresent() ? "" : " (this computer only; --network ADDRESS opens it to phones)"));
        if (network.isPresent() && !encrypted) {
            console.items("Careful", Wrapped.lines("Not encrypted: whoever can listen in this network can read secrets "
                    + "and entries. Phones can't load the page again without a connection, nor scan in it; entries are "
                    + "kept while it stays open. --certificate FILE encrypts.", Wrapped.WIDTH - Console.INDENT));
        }
        for (Pass pass : server.passes()) {
            String who = pass.technician().isEmpty() ? "nobody named yet" : pass.technician();
            String until = "until " + TIME.format(pass.expires().atZone(ZoneId.systemDefault()));
            console.item("Round", pass.round() + ", " + who + ", "
                    + (pass.machines() == 1 ? "1 machine" : pass.machines() + " machines") + ", " + until);
            if (pass.entry().isPresent()) {
                console.item("", "secret " + pass.entry().get().secret());
                console.item("", "link   " + pass.entry().get().link());
                code(pass.entry().get().code());
            } else {
                console.item("", "its secret was shown at an earlier start; --new-secret " + pass.round()
                        + " makes another");
            }
        }
        printed.ifPresent(file -> console.item("Files", file + " (who reads it can enter: print it, then delete it)"));
        console.line("");
        console.line("Secrets are shown this once; only hashes of them are kept. Stop with Ctrl-C.");
        console.out().flush();
    }

    /** Only on a terminal that knows the characters; in a file the link is of more use. */
    private void code(List<List<Boolean>> rows) {
        Charset charset = Charset.forName(System.getProperty("stdout.encoding", Charset.defaultCharset().name()));
        if (!console.isTerminal() || !charset.newEncoder().canEncode(HALVES[1] + HALVES[2] + HALVES[3])) {
            return;
        }
        for (int y = 0; y < rows.size(); y += 2) {
            StringBuilder line = new StringBuilder(BLACK_ON_WHITE);
            for (int x = 0; x < rows.get(y).size(); x++) {
                boolean lower = y + 1 < rows.size() && rows.get(y + 1).get(x);
                line.append(HALVES[(rows.get(y).get(x) ? 2 : 0) + (lower ? 1 : 0)]);
            }
            console.line(line.append(PLAIN).toString());
        }
    }
}
