package slotledger.workbench.internal.plan;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.List;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.widgets.Composite;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.lines.LineTree;
import slotledger.workbench.internal.lines.LineTree.Column;
import slotledger.workbench.internal.lines.Summarised;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** The policy beside what the plan makes of it, and what binds. */
public final class PlanPart {

    private final Session session;
    private Runnable unlisten = () -> { };
    private Summarised part;
    private LineTree tree;

    @Inject
    public PlanPart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        part = new Summarised(parent, Ids.PLAN_SUMMARY);
        tree = new LineTree(part.below(), Ids.PLAN_TREE, Ids.PLAN_SENTENCE, List.of(
                new Column(Texts.plan_what, 34, false), new Column(Texts.plan_wanted, 40, false),
                new Column(Texts.plan_result, 40, false)), line -> line.machine().ifPresent(session::look));
        unlisten = session.listen(this::changed);
        changed(Change.PLAN);
    }

    @Focus
    void focus() {
        tree.control().setFocus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    private void changed(Change change) {
        if (change != Change.MACHINE) {
            part.say(session.plan().map(plan -> Texts.with(Texts.plan_of, plan.title(), plan.date()))
                    .orElse(session.opened().isPresent() ? Texts.plan_none : Texts.summary_nothing_open));
            tree.show(session.plan().map(PlanLines::of).orElse(List.of()));
        }
    }
}
