package slotledger.cli.internal;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;

/** Where a command writes. The only place that knows the standard streams. */
final class Console {

    /** Where the texts of items begin. */
    static final int INDENT = 13;

    private final PrintStream out;
    private final PrintStream err;
    private final boolean terminal;

    Console(PrintStream out, PrintStream err, boolean terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    static Console standard() {
        return new Console(System.out, System.err, Terminal.isAttached());
    }

    PrintStream out() {
        return out;
    }

    PrintStream err() {
        return err;
    }

    /** Whether a person watches. */
    boolean isTerminal() {
        return terminal;
    }

    void line(String text) {
        out.println(text);
    }

    void complain(String text) {
        err.println("slotledger: " + text);
    }

    /** "Fleet        612 machines listed": a short word, then what there is to say of it. */
    void item(String word, String text) {
        out.println(word + " ".repeat(Math.max(1, INDENT - word.length())) + text);
    }

    void items(String word, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            item(i == 0 ? word : "", lines.get(i));
        }
    }

    /** Asks whoever sits at the terminal for a password, which is not shown; empty where nobody does. */
    Optional<char[]> password(String user, String database) {
        return terminal
                ? Optional.ofNullable(System.console().readPassword("Password of %s for %s: ", user, database))
                : Optional.empty();
    }
}
