package slotledger.workbench.internal.findings;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.List;
import java.util.function.Function;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import slotledger.model.machine.AssetTag;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Sentence;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.lines.Filtered;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** What is doubtful in the project's files, worst first; a line leads to its machine. */
public final class FindingsPart {

    private final FindingsFilter findings = new FindingsFilter();
    private final Session session;
    private Runnable unlisten = () -> { };
    private TableViewer viewer;
    private Sentence sentence;
    private Filtered part;

    @Inject
    public FindingsPart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        part = new Filtered(parent, Ids.FINDINGS_FILTER, Texts.finding_filter, Ids.FINDINGS_SUMMARY, words -> {
            findings.filter(words);
            refresh();
        });
        sentence = new Sentence(part.below(), Ids.FINDINGS_SENTENCE);
        Composite frame = sentence.above();
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().setData(Ids.WIDGET, Ids.FINDINGS_TABLE);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        column(layout, Texts.finding_severity, 15, line -> line.severity().text());
        column(layout, Texts.finding_machine, 12, line -> line.machine().map(AssetTag::value).orElse(""));
        column(layout, Texts.finding_message, 45, FindingLine::message);
        column(layout, Texts.finding_remedy, 35, FindingLine::remedy);
        column(layout, Texts.finding_place, 25, FindingLine::place);
        viewer.addSelectionChangedListener(event -> {
            if (event.getStructuredSelection().getFirstElement() instanceof FindingLine line) {
                sentence.show(line.inFull());
                line.machine().ifPresent(session::look);
            }
        });
        unlisten = session.listen(this::changed);
        changed(Change.PROJECT);
    }

    @Focus
    void focus() {
        viewer.getControl().setFocus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    private void column(TableColumnLayout layout, String heading, int weight, Function<FindingLine, String> text) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(heading);
        column.setLabelProvider(new FindingLabel(text, heading.equals(Texts.finding_severity)));
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, weight * 4, true));
    }

    private void changed(Change change) {
        if (change != Change.MACHINE) {
            sentence.show("");
            findings.show(session.opened()
                    .map(opened -> FindingLine.of(opened.survey(), session.plan())).orElse(List.of()));
            refresh();
        }
    }

    private void refresh() {
        viewer.setInput(findings.visible());
        part.say(session.opened().isPresent() ? findings.summary() : Texts.summary_nothing_open);
    }
}
