package slotledger.workbench.internal.work;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import slotledger.model.machine.AssetTag;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.lines.LineTree;
import slotledger.workbench.internal.lines.LineTree.Column;
import slotledger.workbench.internal.lines.Summarised;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** The rounds and their machines; a tag that is typed or scanned leads to its machine. */
public final class RoundsPart {

    private static final int MOST_NAMED = 6;

    private final Session session;
    private final WorkSession work;
    private final EPartService parts;
    private Runnable unlisten = () -> { };
    private Text tag;
    private Summarised part;
    private LineTree tree;

    @Inject
    public RoundsPart(Session session, WorkSession work, EPartService parts) {
        this.session = session;
        this.work = work;
        this.parts = parts;
    }

    @PostConstruct
    void create(Composite parent) {
        GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(parent);
        tag = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH);
        tag.setMessage(Texts.work_tag);
        tag.setData(Ids.WIDGET, Ids.WORK_TAG);
        tag.setFont(BigType.of(tag, SWT.NONE));
        tag.addListener(SWT.DefaultSelection, event -> find());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(tag);
        Composite rest = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(rest);
        part = new Summarised(rest, Ids.WORK_SUMMARY);
        tree = new LineTree(part.below(), Ids.WORK_TREE, Ids.WORK_SENTENCE, List.of(
                new Column(Texts.work_round, 30, false), new Column(Texts.work_place, 30, false),
                new Column(Texts.work_memory, 20, false), new Column(Texts.work_state, 15, false)),
                line -> line.machine().ifPresent(session::look));
        Runnable toProject = session.listen(change -> {
            if (change == Change.PROJECT) {
                work.want(parent.getDisplay()::asyncExec);
            }
        });
        Runnable toWork = work.listen(this::show);
        unlisten = () -> {
            toProject.run();
            toWork.run();
        };
        work.want(parent.getDisplay()::asyncExec);
        show();
    }

    @Focus
    void focus() {
        tag.setFocus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    private void find() {
        List<AssetTag> meant = work.work().map(now -> now.meant(tag.getText())).orElse(List.of());
        part.say(switch (meant.size()) {
            case 0 -> Texts.with(Texts.work_not_found, tag.getText());
            case 1 -> summary();
            default -> Texts.with(Texts.work_several, tag.getText(), meant.stream().limit(MOST_NAMED)
                    .map(AssetTag::value).collect(Collectors.joining(", ")));
        });
        tag.selectAll();
        if (meant.size() == 1) {
            session.look(meant.get(0));
            parts.showPart(Ids.JOB, PartState.ACTIVATE);
        }
    }

    private String summary() {
        return work.work().map(RoundLines::summary).or(work::hindrance).orElse(Texts.work_reading);
    }

    private void show() {
        part.say(summary());
        tree.show(work.work().map(RoundLines::of).orElse(List.of()));
    }
}
