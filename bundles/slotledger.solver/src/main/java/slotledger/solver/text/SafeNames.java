package slotledger.solver.text;

/**
 * Names that every reader takes: a letter and a number, which make it unique, then what people call the thing in
 * letters, digits and underscores. The LP format takes a leading e with digits for a number, and some readers stop at
 * 255 letters.
 */
final class SafeNames {

    private static final int LONGEST = 60;

    private SafeNames() {
    }

    static String variable(int number, String name) {
        return name("x", number, name);
    }

    static String row(int number, String name) {
        return name("r", number, name);
    }

    private static String name(String letter, int number, String name) {
        String safe = letter + number + "_" + name.replaceAll("[^A-Za-z0-9]+", "_");
        return safe.length() <= LONGEST ? safe : safe.substring(0, LONGEST);
    }

    /** One line of plain letters, for comments. */
    static String comment(String text) {
        return text.replaceAll("[^ -~]+", "?");
    }
}
