package slotledger.workbench.internal.lines;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** One sentence above all else. */
public final class Summarised {

    private static final int GAP = 4;

    private final Label summary;
    private final Composite below;

    /** Divides the parent; the name is that of the sentence. */
    public Summarised(Composite parent, String name) {
        GridLayoutFactory.fillDefaults().margins(GAP, GAP).spacing(GAP, GAP).applyTo(parent);
        summary = Filtered.summary(parent, name);
        below = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(below);
    }

    public void say(String sentence) {
        summary.setText(sentence);
        summary.requestLayout();
    }

    /** Where all else goes. */
    public Composite below() {
        return below;
    }
}
