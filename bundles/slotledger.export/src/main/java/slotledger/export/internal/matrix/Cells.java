package slotledger.export.internal.matrix;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slotledger.export.internal.sheet.Look;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;

/** The words of a matrix. */
final class Cells {

    private static final String[] MODES = {"no memory", "single", "dual", "triple", "quad"};
    /** Sockets that are named one by one; more are counted. */
    private static final int NAMED = 2;

    private Cells() {
    }

    /** "✓ passes", the sockets filled, how it runs; or why not. */
    static String text(Cell cell, String column, boolean wide) {
        List<String> lines = new ArrayList<>();
        lines.add(word(cell.weight()));
        if (cell.weight() != Weight.BLOCKS) {
            lines.add(filled(cell.filled(), column, wide));
            lines.add(runs(cell.runs(), wide));
        }
        cell.why().ifPresent(reason -> lines.add(why(reason)));
        return String.join("\n", lines);
    }

    static String word(Weight weight) {
        String symbol = switch (weight) {
            case PASSES -> "✓";
            case CAUTION -> "!";
            case LOWERS -> "▼";
            case UNKNOWN -> "?";
            case BLOCKS -> "✗";
        };
        return symbol + " " + weight.text();
    }

    static String meaning(Weight weight) {
        return switch (weight) {
            case PASSES -> "goes in and runs as it should";
            case CAUTION -> "goes in; something to watch";
            case LOWERS -> "goes in; slower, or less of it used";
            case UNKNOWN -> "a fact is missing, so nobody can say; don't order before it is found";
            case BLOCKS -> "not allowed, or doesn't work";
        };
    }

    static Look look(Weight weight) {
        return switch (weight) {
            case PASSES -> Look.CELL_PASSES;
            case CAUTION -> Look.CELL_CAUTION;
            case LOWERS -> Look.CELL_LOWERS;
            case UNKNOWN -> Look.CELL_UNKNOWN;
            case BLOCKS -> Look.CELL_BLOCKS;
        };
    }

    private static String filled(List<String> filled, String column, boolean wide) {
        if (filled.size() == 1) {
            return "alone";
        }
        List<String> others = filled.stream().filter(label -> !label.equals(column)).toList();
        return wide && others.size() < filled.size() && others.size() <= NAMED
                ? "with " + String.join(", ", others) : filled.size() + " modules";
    }

    private static String runs(Operation runs, boolean wide) {
        int channels = runs.mode().channels();
        String mode = channels < MODES.length ? MODES[channels] : channels + (wide ? " channels" : " ch.");
        return mode + ", " + runs.rate().map(rate -> Integer.toString(rate.megatransfers())).orElse("rate ?");
    }

    private static String why(Reason reason) {
        return reason.missing().map(fact -> "missing: " + fact(fact)).orElse(reason.rule());
    }

    /** "chip width": enough to find it on the sheet of reasons. */
    static String fact(MissingFact fact) {
        return fact.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What to do about a reason; for a missing fact which one it is, and how to find it. */
    static String remedy(Reason reason) {
        Optional<String> wanted = reason.missing().map(fact -> "Find out " + fact.text() + ". ");
        return wanted.orElse("") + reason.remedy();
    }
}
