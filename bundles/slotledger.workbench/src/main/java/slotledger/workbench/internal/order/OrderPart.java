package slotledger.workbench.internal.order;

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

/** What to order, by supplier. */
public final class OrderPart {

    private final Session session;
    private Runnable unlisten = () -> { };
    private Summarised part;
    private LineTree tree;

    @Inject
    public OrderPart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        part = new Summarised(parent, Ids.ORDER_SUMMARY);
        tree = new LineTree(part.below(), Ids.ORDER_TREE, Ids.ORDER_SENTENCE, List.of(
                new Column(Texts.order_part, 26, false), new Column(Texts.order_module, 34, false),
                new Column(Texts.order_packs, 8, true), new Column(Texts.order_modules, 9, true),
                new Column(Texts.order_per_pack, 13, true), new Column(Texts.order_total, 14, true),
                new Column(Texts.order_machines, 10, true), new Column(Texts.order_lead, 10, true),
                new Column(Texts.order_valid, 12, false)), line -> line.machine().ifPresent(session::look));
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
            part.say(OrderLines.summary(session.plan()));
            tree.show(session.plan().map(OrderLines::of).orElse(List.of()));
        }
    }
}
