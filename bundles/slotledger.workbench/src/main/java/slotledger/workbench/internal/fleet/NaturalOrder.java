package slotledger.workbench.internal.fleet;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts in the order people expect: without regard to case, and PC-9 before PC-10. */
enum NaturalOrder implements Comparator<String> {
    INSTANCE;

    private static final Pattern RUN = Pattern.compile("\\d+|\\D+");

    @Override
    public int compare(String one, String other) {
        Matcher left = RUN.matcher(one);
        Matcher right = RUN.matcher(other);
        while (left.find()) {
            if (!right.find()) {
                return 1;
            }
            int order = compareRuns(left.group(), right.group());
            if (order != 0) {
                return order;
            }
        }
        return right.find() ? -1 : one.compareTo(other);
    }

    private static int compareRuns(String left, String right) {
        return isNumber(left) && isNumber(right)
                ? new BigInteger(left).compareTo(new BigInteger(right))
                : String.CASE_INSENSITIVE_ORDER.compare(left, right);
    }

    private static boolean isNumber(String run) {
        return Character.isDigit(run.charAt(0));
    }
}
