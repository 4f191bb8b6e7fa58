package slotledger.export.internal.card;

import java.util.ArrayList;
import java.util.List;
import slotledger.export.internal.job.Mark;
import slotledger.export.internal.job.SlotGrid;
import slotledger.export.internal.job.SlotState;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.Words;

/**
 * The slots of a machine as a drawing for a phone held upright. It is drawn in the colour of the text around it; what
 * happens to a slot is told by a word, a symbol and a border, never by colour.
 */
final class SlotDrawing {

    private static final int WIDTH = 336;
    private static final int GAP = 6;
    private static final int PADDING = 7;
    private static final int LINE = 16;
    private static final int LABEL_LINE = 19;
    /** Widths of a letter of sans serif at 13 and 15 units, on the safe side; measured with Liberation Sans. */
    private static final double LETTER = 6.9;
    private static final double BOLD_LETTER = 9.2;
    /** More slots side by side than this leave no room for words, so that the board is turned by a quarter. */
    private static final int UPRIGHT_COLUMNS = 3;

    private final List<SlotState> states;
    private final SlotGrid grid;
    private final boolean turned;
    private final int columns;
    private final int width;

    SlotDrawing(List<SlotState> states) {
        this.states = List.copyOf(states);
        this.grid = new SlotGrid(states.stream().map(SlotState::slot).toList());
        this.turned = grid.columns() > UPRIGHT_COLUMNS;
        this.columns = turned ? grid.rows() : grid.columns();
        this.width = (WIDTH - GAP * (columns - 1)) / columns;
    }

    String svg() {
        List<List<String>> texts = states.stream().map(this::lines).toList();
        int rows = turned ? grid.columns() : grid.rows();
        int[] heights = new int[rows];
        for (int i = 0; i < states.size(); i++) {
            int height = PADDING * 2 + LABEL_LINE + LINE * texts.get(i).size();
            heights[row(states.get(i))] = Math.max(heights[row(states.get(i))], height);
        }
        int[] tops = new int[rows + 1];
        for (int i = 0; i < rows; i++) {
            tops[i + 1] = tops[i] + heights[i] + GAP;
        }
        StringBuilder svg = new StringBuilder();
        int note = note().isEmpty() ? 0 : LABEL_LINE;
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\">"
                .formatted(WIDTH, tops[rows] + note));
        if (note > 0) {
            text(svg, 0, 13, "note", note());
        }
        for (int i = 0; i < states.size(); i++) {
            slot(svg, states.get(i), texts.get(i), note + tops[row(states.get(i))], heights[row(states.get(i))]);
        }
        return svg.append("</svg>").toString();
    }

    private String note() {
        if (!grid.isKnown()) {
            return "Where slots are isn't known: read their labels.";
        }
        return turned ? "Turned by a quarter: the board's left is at the top." : "";
    }

    private void slot(StringBuilder svg, SlotState state, List<String> lines, int top, int height) {
        int left = column(state) * (width + GAP);
        Mark mark = state.mark();
        svg.append("<g class=\"slot %s\">".formatted(mark.key()));
        svg.append(rect(left + 2, top + 2, width - 4, height - 4, mark));
        text(svg, left + PADDING, top + PADDING + 13, "label", Texts.shortened(label(state),
                Math.max(2, (int) ((width - 2 * PADDING) / BOLD_LETTER))));
        int y = top + PADDING + LABEL_LINE + 12;
        for (String line : lines) {
            text(svg, left + PADDING, y, line.equals(mark.text()) ? "mark" : "content", line);
            y += LINE;
        }
        svg.append("</g>");
    }

    private static String rect(int x, int y, int width, int height, Mark mark) {
        String stroke = switch (mark) {
            case PUT_IN, MOVED -> "stroke-width=\"4\"";
            case TAKE_OUT, MOVES -> "stroke-width=\"3\" stroke-dasharray=\"9 5\"";
            case STAYS, SOLDERED, DEAD -> "stroke-width=\"1\"";
            case EMPTY -> "stroke-width=\"1\" stroke-dasharray=\"2 3\"";
        };
        return "<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" rx=\"4\" fill=\"none\" stroke=\"currentColor\" %s/>"
                .formatted(x, y, width, height, stroke);
    }

    private static void text(StringBuilder svg, int x, int y, String kind, String text) {
        String look = switch (kind) {
            case "label" -> "font-size=\"15\" font-weight=\"bold\"";
            case "mark" -> "font-size=\"13\" font-weight=\"bold\"";
            default -> "font-size=\"13\"";
        };
        svg.append("<text x=\"%d\" y=\"%d\" fill=\"currentColor\" font-family=\"sans-serif\" %s>%s</text>"
                .formatted(x, y, look, escaped(text)));
    }

    private List<String> lines(SlotState state) {
        List<String> lines = new ArrayList<>();
        int most = Math.max(4, (int) ((width - 2 * PADDING) / LETTER));
        if (!state.mark().text().isEmpty()) {
            lines.add(state.mark().text());
        }
        if (!state.content().isEmpty()) {
            lines.addAll(broken(Texts.line(Words.inSlot(state.content())), most));
        }
        lines.addAll(broken("channel " + Texts.line(state.slot().channel()), most));
        return lines;
    }

    private static String label(SlotState state) {
        return Texts.line(state.slot().label());
    }

    /** Breaks a text at blanks; a word that is longer than a line is cut. */
    static List<String> broken(String text, int most) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(Texts.shortened(word, most));
        }
        lines.add(line.toString());
        return lines;
    }

    private int row(SlotState state) {
        return turned ? grid.columnOf(state.slot()) : grid.rowOf(state.slot());
    }

    private int column(SlotState state) {
        return turned ? grid.rowOf(state.slot()) : grid.columnOf(state.slot());
    }

    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        Texts.xml(text).codePoints().forEach(point -> {
            switch (point) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.appendCodePoint(point);
            }
        });
        return escaped.toString();
    }
}
