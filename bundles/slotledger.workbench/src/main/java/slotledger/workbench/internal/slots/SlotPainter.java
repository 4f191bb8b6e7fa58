package slotledger.workbench.internal.slots;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import slotledger.workbench.internal.slots.SlotChange.Border;

/** Paints slots in the colours of the desktop. A tint helps the eye; symbol, word and border do without it. */
final class SlotPainter {

    private static final int ROUND = 8;
    private static final double TINT = 0.16;

    private final GC gc;
    private final Font plain;
    private final Font bold;
    private final Display display;

    SlotPainter(GC gc, Font plain, Font bold) {
        this.gc = gc;
        this.plain = plain;
        this.bold = bold;
        this.display = Display.getCurrent();
    }

    void paint(List<SlotPicture> pictures, SlotLayout layout) {
        gc.setAntialias(SWT.ON);
        for (int index = 0; index < pictures.size(); index++) {
            SlotPicture picture = pictures.get(index);
            int x = layout.lefts().get(index);
            int y = layout.tops().get(index);
            gc.setForeground(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND));
            text(picture.title(), bold, x, y);
            text(picture.facts(), plain, x, y + layout.line());
            for (SlotBox box : picture.boxes()) {
                paint(box, layout, layout.left(index, box), layout.top(index, box));
            }
        }
    }

    private void paint(SlotBox box, SlotLayout layout, int x, int y) {
        int line = layout.line();
        int inner = x + SlotLayout.PAD;
        gc.setBackground(tint(box.change()));
        gc.fillRoundRectangle(x, y, layout.boxWidth(), layout.boxHeight(), ROUND, ROUND);
        border(box.change().border());
        gc.setForeground(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        gc.drawRoundRectangle(x, y, layout.boxWidth(), layout.boxHeight(), ROUND, ROUND);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(1);
        text(box.label(), bold, inner, y + SlotLayout.PAD);
        text(box.place(), plain, inner, y + SlotLayout.PAD + line);
        int at = y + SlotLayout.PAD + SlotLayout.HEAD_LINES * line;
        gc.drawLine(x, at + SlotLayout.PAD / 2, x + layout.boxWidth(), at + SlotLayout.PAD / 2);
        at += SlotLayout.PAD;
        for (int index = 0; index < box.lines().size(); index++) {
            text(box.lines().get(index), index == 0 ? bold : plain, inner, at + index * line);
        }
        int foot = y + layout.boxHeight() - SlotLayout.PAD / 2 - layout.foot() * line;
        text(box.change().symbol() + " " + box.change().word(), bold, inner, foot);
        for (String way : box.wayLines()) {
            foot += line;
            text(way, plain, inner, foot);
        }
    }

    private void text(String text, Font font, int x, int y) {
        gc.setFont(font);
        gc.drawText(text, x, y, SWT.DRAW_TRANSPARENT);
    }

    private void border(Border border) {
        switch (border) {
            case HAIR, THIN -> gc.setLineWidth(1);
            case THICK -> gc.setLineWidth(3);
            case DASHED -> line(2, new int[] {8, 5});
            case DOTTED -> line(2, new int[] {2, 4});
        }
    }

    private void line(int width, int[] dashes) {
        gc.setLineWidth(width);
        gc.setLineDash(dashes);
    }

    /** Green for what comes, blue for what changes its place, red for what goes; all else as the background is. */
    private Color tint(SlotChange change) {
        RGB background = display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
        return switch (change) {
            case NEW -> mix(background, new RGB(0, 150, 60));
            case MOVED -> mix(background, new RGB(0, 90, 200));
            case REMOVED -> mix(background, new RGB(200, 40, 20));
            case KEPT, FIXED, EMPTY, UNREAD, DEAD, PRESENT, FILLER -> new Color(background);
        };
    }

    private static Color mix(RGB background, RGB accent) {
        return new Color(part(background.red, accent.red), part(background.green, accent.green),
                part(background.blue, accent.blue));
    }

    private static int part(int background, int accent) {
        return (int) Math.round(background * (1 - TINT) + accent * TINT);
    }
}
