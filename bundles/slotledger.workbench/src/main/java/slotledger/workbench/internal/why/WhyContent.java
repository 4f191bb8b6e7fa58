package slotledger.workbench.internal.why;

import java.util.List;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** Hands the statements to the tree. */
final class WhyContent implements ITreeContentProvider {

    @Override
    public Object[] getElements(Object input) {
        return ((List<?>) input).toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        return ((WhyNode) parent).children().toArray();
    }

    @Override
    public Object getParent(Object element) {
        return null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return !((WhyNode) element).children().isEmpty();
    }
}
