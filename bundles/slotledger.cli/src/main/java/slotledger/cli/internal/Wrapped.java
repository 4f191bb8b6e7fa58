package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.List;

/** Texts broken into lines that fit a terminal. */
final class Wrapped {

    /** What fits most windows; beyond it lines are hard to follow. */
    static final int WIDTH = 100;

    private Wrapped() {
    }

    /** Breaks a text at its blanks; a word longer than a line stands alone. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The text behind a beginning, its later lines under its first. */
    static List<String> behind(String beginning, String text) {
        return behind(beginning, text, WIDTH);
    }

    static List<String> behind(String beginning, String text, int width) {
        String indent = " ".repeat(beginning.length());
        List<String> lines = new ArrayList<>();
        for (String line : lines(text, width - beginning.length())) {
            lines.add((lines.isEmpty() ? beginning : indent) + line);
        }
        return lines;
    }

    /** The text in exactly so many characters. */
    static String cell(String text, int width) {
        String shown = text.length() <= width ? text : text.substring(0, width - 3) + "...";
        return shown + " ".repeat(width - shown.length());
    }
}
