package slotledger.workbench.internal.slots;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Texts;

/** Shows pictures of slots, and scrolls where they are larger than the part. */
final class SlotsCanvas {

    private final ScrolledComposite frame;
    private final Canvas canvas;
    private List<SlotPicture> pictures = List.of();
    private SlotLayout layout;

    SlotsCanvas(Composite parent) {
        frame = new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL);
        frame.setExpandHorizontal(true);
        frame.setExpandVertical(true);
        canvas = new Canvas(frame, SWT.DOUBLE_BUFFERED);
        canvas.setData(Ids.WIDGET, Ids.SLOTS_CANVAS);
        canvas.setBackground(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = inWords();
            }
        });
        frame.setContent(canvas);
        frame.addListener(SWT.Resize, event -> arrange());
    }

    void show(List<SlotPicture> shown) {
        pictures = List.copyOf(shown);
        canvas.setData(Ids.WORDS, inWords());
        arrange();
        canvas.redraw();
    }

    Control control() {
        return frame;
    }

    void focus() {
        canvas.setFocus();
    }

    private void arrange() {
        GC gc = new GC(canvas);
        gc.setFont(bold());
        int line = gc.getFontMetrics().getHeight() + 2;
        layout = SlotLayout.of(pictures, frame.getClientArea().width, line, (text, bold) -> {
            gc.setFont(bold ? bold() : canvas.getFont());
            return gc.textExtent(text).x;
        });
        gc.dispose();
        frame.setMinSize(layout.width(), layout.height());
    }

    private void paint(GC gc) {
        if (pictures.isEmpty()) {
            gc.setForeground(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
            gc.drawText(inWords(), SlotLayout.GAP, SlotLayout.GAP, SWT.DRAW_TRANSPARENT);
        } else {
            new SlotPainter(gc, canvas.getFont(), bold()).paint(pictures, layout);
        }
    }

    private String inWords() {
        return pictures.isEmpty() ? Texts.picture_none
                : pictures.stream().map(SlotPicture::inWords).collect(Collectors.joining(" "));
    }

    private static Font bold() {
        return JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
    }
}
