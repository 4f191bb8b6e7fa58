package slotledger.solver.text;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * A form in which general solvers read integer programmes. All numbers are written in full; a solver that computes in
 * floating point rounds those above 2^53.
 */
public enum ProgrammeForm {
    /** The LP format: sums as people write them. */
    LP(".lp") {
        @Override
        void write(IntegerProgramme programme, Linear goal, String title, Appendable out) throws IOException {
            new LpWriter(programme, out).write(goal, title);
        }
    },
    /** The MPS format with names of any length, column by column. */
    MPS(".mps") {
        @Override
        void write(IntegerProgramme programme, Linear goal, String title, Appendable out) throws IOException {
            new MpsWriter(programme, out).write(goal, title);
        }
    };

    private final String ending;

    ProgrammeForm(String ending) {
        this.ending = ending;
    }

    abstract void write(IntegerProgramme programme, Linear goal, String title, Appendable out) throws IOException;

    /** How names of such files end. */
    public String ending() {
        return ending;
    }

    /** The form of files with such a name; empty for any other ending. */
    public static Optional<ProgrammeForm> of(String fileName) {
        return Stream.of(values())
                .filter(form -> fileName.toLowerCase(Locale.ROOT).endsWith(form.ending)).findFirst();
    }

    /**
     * The programme as text, lines ended by a line feed, letters of ASCII only.
     *
     * @param goal  to be made smallest
     * @param title one line for people, said in a comment
     */
    public String text(IntegerProgramme programme, Linear goal, String title) {
        if (programme.variables().isEmpty()) {
            throw new IllegalArgumentException("A programme that is written must have a variable.");
        }
        StringBuilder text = new StringBuilder();
        try {
            write(programme, goal, title, text);
        } catch (IOException e) {
            throw new UncheckedIOException("A StringBuilder must take any text.", e);
        }
        return text.toString();
    }
}
