package slotledger.catalog.internal.match;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** How alike two names are. Serves suggestions only. */
public final class Similarity {

    private static final double CLOSE = 0.6;
    /** Nobody mistypes longer names; comparing them would cost time and memory by the square of the length. */
    private static final int LONGEST = 100;

    private Similarity() {
    }

    /** The word most like the text, where one is like it at all. */
    public static Optional<String> closest(String text, Collection<String> words) {
        return words.stream()
                .filter(word -> of(text, word) >= CLOSE)
                .max(Comparator.comparingDouble(word -> of(text, word)));
    }

    /**
     * From 0 (nothing in common) to 1 (equal but for case): one less the edits (insert, delete, replace, swap two
     * neighbours: optimal string alignment distance) for each character of the longer text.
     */
    public static double of(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int longer = Math.max(a.length(), b.length());
        if (longer > LONGEST) {
            return a.equals(b) ? 1 : 0;
        }
        return longer == 0 ? 1 : 1 - edits(a, b) / (double) longer;
    }

    private static int edits(String a, String b) {
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                edits[i][j] = i == 0 ? j : j == 0 ? i : fewest(edits, a, b, i, j);
            }
        }
        return edits[a.length()][b.length()];
    }

    private static int fewest(int[][] edits, String a, String b, int i, int j) {
        int replace = edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(replace, 1 + Math.min(edits[i - 1][j], edits[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, edits[i - 2][j - 2] + 1) : best;
    }
}
