package slotledger.workbench.internal.why;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.List;
import java.util.function.Function;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Sentence;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** Why the selected machine stands as it does, with the source of each statement. */
public final class WhyPart {

    private final Session session;
    private Runnable unlisten = () -> { };
    private TreeViewer viewer;
    private Sentence sentence;

    @Inject
    public WhyPart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        sentence = new Sentence(parent, Ids.WHY_SENTENCE);
        Composite frame = sentence.above();
        TreeColumnLayout layout = new TreeColumnLayout();
        frame.setLayout(layout);
        viewer = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTree().setHeaderVisible(true);
        viewer.getTree().setData(Ids.WIDGET, Ids.WHY_TREE);
        viewer.setContentProvider(new WhyContent());
        column(layout, Texts.why_statement, 70, WhyNode::text);
        column(layout, Texts.why_source, 30, WhyNode::source);
        viewer.addSelectionChangedListener(event -> {
            if (event.getStructuredSelection().getFirstElement() instanceof WhyNode node) {
                sentence.show(node.inFull());
            }
        });
        unlisten = session.listen(change -> {
            if (change.concernsPlan() || change == Change.MACHINE) {
                show();
            }
        });
        show();
    }

    @Focus
    void focus() {
        viewer.getControl().setFocus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    private void column(TreeColumnLayout layout, String heading, int weight, Function<WhyNode, String> text) {
        TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(heading);
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(node -> text.apply((WhyNode) node)));
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, weight * 4, true));
    }

    private void show() {
        sentence.show("");
        viewer.setInput(session.opened().flatMap(opened -> session.machine()
                .map(tag -> WhyTree.of(session.desk(), opened, session.plan(), tag))).orElse(List.of()));
        viewer.expandToLevel(2);
    }
}
