package slotledger.app.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.model.board.Board;

/** Finds the board a person means. */
final class BoardSearch {

    private static final int SHOWN = 5;

    private BoardSearch() {
    }

    /**
     * By id, name, model or alias; case, blanks and punctuation don't matter.
     *
     * @throws DeskException where none or several are meant; the message names those that are near
     */
    static Board find(List<Board> boards, String wanted) throws DeskException {
        List<Board> found = boards.stream()
                .filter(board -> names(board).anyMatch(name -> key(name).equals(key(wanted))))
                .toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        if (found.size() > 1) {
            throw new DeskException(Trouble.INPUT, "Several boards are named \"" + wanted + "\": " + text(found)
                    + ". Name one by its id.");
        }
        List<Board> near = boards.stream()
                .sorted(Comparator.comparingInt((Board board) -> distance(board, wanted))
                        .thenComparing(board -> board.id().value()))
                .limit(SHOWN)
                .toList();
        throw new DeskException(Trouble.INPUT, "The project has no board \"" + wanted + "\". "
                + (near.isEmpty() ? "It has no boards at all; put board files into its folder \"boards\"."
                        : "The nearest are " + text(near) + "; the command \"boards\" lists all."));
    }

    private static Stream<String> names(Board board) {
        return Stream.concat(Stream.of(board.id().value(), board.name(), board.model()), board.aliases().stream());
    }

    private static String text(List<Board> boards) {
        return String.join(", ", boards.stream().map(board -> board.id() + " (" + board.name() + ")").toList());
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** Letters to change for the nearest name; a name that contains what was written is nearer than any other. */
    private static int distance(Board board, String wanted) {
        String key = key(wanted);
        return names(board).map(BoardSearch::key)
                .mapToInt(name -> !key.isEmpty() && name.contains(key) ? 0 : distance(key, name))
                .min().orElse(Integer.MAX_VALUE);
    }

    /** Levenshtein's distance: letters added, left out or changed. */
    private static int distance(String one, String other) {
        int[] before = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = before[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, Math.min(before[j], row[j - 1]) + 1);
            }
            before = row;
        }
        return before[other.length()];
    }
}
