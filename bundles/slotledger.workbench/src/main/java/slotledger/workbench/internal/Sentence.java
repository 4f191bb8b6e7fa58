package slotledger.workbench.internal;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;

/** A few lines below a table that show in full what its selected line cuts off; can be copied. */
public final class Sentence {

    private static final int LINES = 3;

    private final Composite above;
    private final StyledText text;

    /** Divides the parent. */
    public Sentence(Composite parent, String name) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        above = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(above);
        text = new StyledText(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP);
        text.setMargins(6, 2, 6, 2);
        text.setData(Ids.WIDGET, name);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, LINES * text.getLineHeight()).applyTo(text);
    }

    /** Where the table goes. */
    public Composite above() {
        return above;
    }

    public void show(String sentence) {
        text.setText(sentence);
    }
}
