package slotledger.workbench.internal.lines;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Sentence;

/** Lines under headings, in columns; the line chosen is shown in full below. */
public final class LineTree {

    /** Columns may shrink to a part of their share before the tree scrolls. */
    private static final int LEAST = 5;

    /**
     * A column.
     *
     * @param heading what stands above it
     * @param weight  its share of the width
     * @param amount  whether it holds amounts, which stand at the right
     */
    public record Column(String heading, int weight, boolean amount) {}

    private final TreeViewer viewer;
    private final Sentence sentence;

    /** Divides the parent; the names are those of tree and sentence. */
    public LineTree(Composite parent, String tree, String below, List<Column> columns, Consumer<Line> chosen) {
        sentence = new Sentence(parent, below);
        Composite frame = sentence.above();
        TreeColumnLayout layout = new TreeColumnLayout();
        frame.setLayout(layout);
        viewer = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTree().setHeaderVisible(true);
        viewer.getTree().setData(Ids.WIDGET, tree);
        viewer.setContentProvider(new Content());
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            TreeViewerColumn made = new TreeViewerColumn(viewer, column.amount() ? SWT.RIGHT : SWT.NONE);
            made.getColumn().setText(column.heading());
            made.setLabelProvider(new Cell(i));
            layout.setColumnData(made.getColumn(),
                    new ColumnWeightData(column.weight(), column.weight() * LEAST, true));
        }
        viewer.addSelectionChangedListener(event -> {
            if (event.getStructuredSelection().getFirstElement() instanceof Line line) {
                sentence.show(line.inFull());
                chosen.accept(line);
            }
        });
    }

    /** Shows other lines, headings opened. */
    public void show(List<Line> lines) {
        sentence.show("");
        viewer.setInput(lines);
        viewer.expandToLevel(2);
    }

    public Control control() {
        return viewer.getControl();
    }

    private static final class Content implements ITreeContentProvider {

        @Override
        public Object[] getElements(Object input) {
            return ((List<?>) input).toArray();
        }

        @Override
        public Object[] getChildren(Object parent) {
            return ((Line) parent).children().toArray();
        }

        @Override
        public Object getParent(Object element) {
            return null;
        }

        @Override
        public boolean hasChildren(Object element) {
            return !((Line) element).children().isEmpty();
        }
    }

    private static final class Cell extends StyledCellLabelProvider {

        private final int column;

        Cell(int column) {
            this.column = column;
        }

        @Override
        public void update(ViewerCell cell) {
            Line line = (Line) cell.getElement();
            cell.setText(line.cell(column));
            cell.setFont(line.children().isEmpty() ? null
                    : JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
    }
}
