package slotledger.intake.internal.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds the character between the values of a text file. */
final class Delimiter {

    /** Best first where two split the text equally well: tabs and semicolons seldom stand in a text by chance. */
    private static final char[] CANDIDATES = {'\t', ';', ','};
    private static final int ENOUGH_RECORDS = 200;
    /** Share of the lines with delimiters that must be of one length; titles and notes are not. */
    private static final double REGULAR = 0.6;
    /** One line in so many must have a delimiter at all. */
    private static final int FEW = 4;

    private Delimiter() {
    }

    /**
     * Finds the delimiter: the one that cuts most lines, the heading too, into the same number of values; of two as
     * good the one that cuts into more.
     *
     * @param sample beginning of the text
     * @param whole  whether it is all of the text
     */
    static char of(String sample, boolean whole) {
        Map<Character, List<Integer>> counts = new HashMap<>();
        for (char candidate : CANDIDATES) {
            counts.put(candidate, counts(sample, candidate, whole, false));
        }
        if (Math.max(share(counts.get(';')), share(counts.get('\t'))) >= share(counts.get(','))) {
            // "8,5;12,3": commas inside numbers then are decimal points.
            counts.put(',', counts(sample, ',', whole, true));
        }
        char best = 0;
        double bestShare = 0;
        int bestValues = 0;
        for (char candidate : CANDIDATES) {
            double share = share(counts.get(candidate));
            int values = mostUsual(counts.get(candidate));
            if (share > bestShare || share > 0 && share == bestShare && values > bestValues) {
                best = candidate;
                bestShare = share;
                bestValues = values;
            }
        }
        return best != 0 ? best : mostFrequent(counts);
    }

    private static char mostFrequent(Map<Character, List<Integer>> counts) {
        char best = ',';
        int bestCount = counts.get(best).stream().mapToInt(Integer::intValue).sum();
        for (char candidate : CANDIDATES) {
            int count = counts.get(candidate).stream().mapToInt(Integer::intValue).sum();
            if (count > bestCount) {
                best = candidate;
                bestCount = count;
            }
        }
        return best;
    }

    /** Share of the lines that are alike; zero where too few are to speak of a table. */
    private static double share(List<Integer> counts) {
        long some = counts.stream().filter(count -> count > 0).count();
        int usual = mostUsual(counts);
        long alike = usual == 0 ? 0 : counts.stream().filter(count -> count == usual).count();
        boolean regular = alike > 0 && alike >= some * REGULAR && some * FEW >= counts.size();
        return regular ? (double) alike / counts.size() : 0;
    }

    /** The number of delimiters most lines have, lines without any aside; the larger of two equally usual ones. */
    private static int mostUsual(List<Integer> counts) {
        Map<Integer, Integer> lines = new HashMap<>();
        int best = 0;
        for (int count : counts) {
            if (count > 0) {
                int times = lines.merge(count, 1, Integer::sum);
                int bestTimes = lines.getOrDefault(best, 0);
                if (times > bestTimes || times == bestTimes && count > best) {
                    best = count;
                }
            }
        }
        return best;
    }

    /** Delimiters outside quotes, for each line that is not blank. */
    private static List<Integer> counts(String sample, char delimiter, boolean whole, boolean decimalCommas) {
        List<Integer> counts = new ArrayList<>();
        boolean quoted = false;
        boolean valueStart = true;
        boolean blank = true;
        int count = 0;
        for (int i = 0; i < sample.length() && counts.size() < ENOUGH_RECORDS; i++) {
            char c = sample.charAt(i);
            if (quoted) {
                quoted = c != '"';
            } else if (c == '"' && (valueStart || i > 0 && sample.charAt(i - 1) == '"')) {
                quoted = true;
                valueStart = false;
                blank = false;
            } else if (c == '\n' || c == '\r') {
                if (!blank) {
                    counts.add(count);
                }
                count = 0;
                blank = true;
                valueStart = true;
            } else if (c == delimiter) {
                count += decimalCommas && isBetweenDigits(sample, i) ? 0 : 1;
                blank = false;
                valueStart = true;
            } else {
                valueStart &= Character.isWhitespace(c);
                blank &= Character.isWhitespace(c);
            }
        }
        if (!blank && (whole || counts.isEmpty())) {
            counts.add(count);
        }
        return counts;
    }

    private static boolean isBetweenDigits(String text, int at) {
        return at > 0 && at + 1 < text.length() && Character.isDigit(text.charAt(at - 1))
                && Character.isDigit(text.charAt(at + 1));
    }
}
