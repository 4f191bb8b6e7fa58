package slotledger.workbench.internal.lines;

import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import slotledger.workbench.internal.Ids;

/** A field for words to filter by, and one sentence, above all else. */
public final class Filtered {

    private static final int GAP = 4;
    /** Lets the part, not the length of the sentence, decide how wide it is. */
    private static final int SQUEEZED = 100;

    private final Text filter;
    private final Label summary;
    private final Composite below;

    /** Divides the parent; the names are those of field and sentence. */
    public Filtered(Composite parent, String field, String hint, String sentence, Consumer<String> filtered) {
        GridLayoutFactory.fillDefaults().margins(GAP, GAP).spacing(GAP, GAP).applyTo(parent);
        filter = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(hint);
        filter.setData(Ids.WIDGET, field);
        filter.addModifyListener(event -> filtered.accept(filter.getText()));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        summary = summary(parent, sentence);
        below = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(below);
    }

    static Label summary(Composite parent, String name) {
        Label made = new Label(parent, SWT.WRAP);
        made.setData(Ids.WIDGET, name);
        GridDataFactory.fillDefaults().grab(true, false).hint(SQUEEZED, SWT.DEFAULT).applyTo(made);
        return made;
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
