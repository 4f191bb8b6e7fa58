package slotledger.export.internal.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Font;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import java.util.List;
import slotledger.export.internal.job.SlotGrid;
import slotledger.export.internal.job.SlotState;
import slotledger.export.internal.text.Words;

/**
 * Draws the slots of a board as boxes by row and column. Border, symbol and word tell what happens to a slot, a band
 * with a pattern and a word which channel it is on, so that a grey print shows all of it.
 */
final class SlotPainter {

    private static final float GAP = 4;
    private static final float WIDE_HEIGHT = 62;
    private static final float NARROW_HEIGHT = 122;
    private static final float NARROW_BELOW = 58;
    private static final float BAND = 6;

    private final Fonts fonts;
    private final SlotGrid grid;
    private final List<SlotState> states;
    private final List<String> channels;
    private final float width;
    private final float slotWidth;
    private final boolean narrow;

    SlotPainter(Fonts fonts, List<SlotState> states, List<String> channels, float width) {
        this.fonts = fonts;
        this.states = states;
        this.channels = channels;
        this.width = width;
        this.grid = new SlotGrid(states.stream().map(SlotState::slot).toList());
        this.slotWidth = (width - GAP * (grid.columns() - 1)) / grid.columns();
        this.narrow = slotWidth < NARROW_BELOW;
    }

    PdfTemplate paint(PdfContentByte canvas) {
        float slotHeight = narrow ? NARROW_HEIGHT : WIDE_HEIGHT;
        float height = grid.rows() * (slotHeight + GAP);
        PdfTemplate picture = canvas.createTemplate(width, height);
        for (SlotState state : states) {
            float x = grid.columnOf(state.slot()) * (slotWidth + GAP);
            float y = height - GAP / 2 - (grid.rowOf(state.slot()) + 1) * slotHeight - grid.rowOf(state.slot()) * GAP;
            border(picture, state, x, y, slotHeight);
            Band.paint(picture, channels.indexOf(state.slot().channel()), x + 4, y + 4, slotWidth - 8, BAND);
            if (narrow) {
                sideways(picture, state, x, y);
            } else {
                upright(picture, state, x, y, slotHeight);
            }
        }
        return picture;
    }

    private void border(PdfTemplate picture, SlotState state, float x, float y, float height) {
        picture.saveState();
        switch (state.mark()) {
            case PUT_IN -> frame(picture, 2.4f, x, y, height, 1.2f);
            case TAKE_OUT -> {
                picture.setLineDash(5, 3, 0);
                frame(picture, 1.8f, x, y, height, 0.9f);
            }
            case MOVES, MOVED -> {
                frame(picture, 0.8f, x, y, height, 0.4f);
                frame(picture, 0.8f, x, y, height, 2.6f);
            }
            case STAYS -> frame(picture, 0.8f, x, y, height, 0.4f);
            case EMPTY -> {
                picture.setLineDash(1, 2, 0);
                frame(picture, 0.9f, x, y, height, 0.4f);
            }
            case SOLDERED, DEAD -> {
                picture.setGrayFill(0.92f);
                picture.rectangle(x, y, slotWidth, height);
                picture.fill();
                frame(picture, 0.8f, x, y, height, 0.4f);
            }
        }
        picture.restoreState();
    }

    private void frame(PdfTemplate picture, float line, float x, float y, float height, float inset) {
        picture.setLineWidth(line);
        picture.rectangle(x + inset, y + inset, slotWidth - 2 * inset, height - 2 * inset);
        picture.stroke();
    }

    private void upright(PdfTemplate picture, SlotState state, float x, float y, float height) {
        Phrase phrase = new Phrase();
        phrase.add(new Phrase(label(state) + "\n", fonts.bold(8.5f)));
        phrase.add(new Phrase(state.mark().text() + "\n", fonts.bold(8)));
        String content = state.content().isEmpty() ? "" : Words.inSlot(state.content());
        phrase.add(new Phrase(fonts.printable(content), fonts.regular(7.5f)));
        ColumnText text = new ColumnText(picture);
        text.setSimpleColumn(phrase, x + 5, y + BAND + 12, x + slotWidth - 4, y + height - 3, 9.3f, Element.ALIGN_LEFT);
        text.go();
        line(picture, channel(state), fonts.regular(6.5f), x + 5, y + BAND + 6.5f, 0);
    }

    private void sideways(PdfTemplate picture, SlotState state, float x, float y) {
        float middle = x + slotWidth / 2;
        float from = y + BAND + 8;
        line(picture, label(state) + "  " + state.mark().text(), fonts.bold(7.5f), middle - 4.6f, from, 90);
        String content = state.content().isEmpty() ? "" : Words.inSlot(state.content());
        line(picture, content, fonts.regular(7.5f), middle + 3.4f, from, 90);
        line(picture, channel(state), fonts.regular(6), middle + 10.2f, from, 90);
    }

    private void line(PdfTemplate picture, String text, Font font, float x, float y, float angle) {
        ColumnText.showTextAligned(picture, Element.ALIGN_LEFT, new Phrase(fonts.printable(text), font), x, y, angle);
    }

    private String label(SlotState state) {
        return fonts.printable(state.slot().label());
    }

    private static String channel(SlotState state) {
        return "channel " + state.slot().channel();
    }
}
