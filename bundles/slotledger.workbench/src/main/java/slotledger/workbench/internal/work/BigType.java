package slotledger.workbench.internal.work;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Control;

/** Type that is read from a step away, with both hands in a machine. */
final class BigType {

    /** Points above the size people chose for all else. */
    private static final int LARGER = 5;

    private BigType() {
    }

    /**
     * The font, disposed of with the control.
     *
     * @param style of SWT, such as bold
     */
    static Font of(Control control, int style) {
        FontDescriptor font = FontDescriptor.createFrom(JFaceResources.getDefaultFont()).increaseHeight(LARGER)
                .setStyle(style);
        return new LocalResourceManager(JFaceResources.getResources(), control).create(font);
    }
}
