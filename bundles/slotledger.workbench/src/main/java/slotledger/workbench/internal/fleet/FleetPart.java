package slotledger.workbench.internal.fleet;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.lines.Filtered;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** All machines of the fleet in a grid, with a filter above. */
public final class FleetPart {

    private final FleetTable table = new FleetTable();
    private final Session session;
    private Runnable unlisten = () -> { };
    private Filtered part;
    private FleetGrid grid;

    @Inject
    public FleetPart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        part = new Filtered(parent, Ids.FLEET_FILTER, Texts.filter_hint, Ids.FLEET_SUMMARY, words -> {
            table.filter(words);
            refresh();
        });
        part.below().setLayout(new FillLayout());
        grid = new FleetGrid(part.below(), table, row -> session.look(row.tag()));
        unlisten = session.listen(this::changed);
        changed(Change.PROJECT);
    }

    @Focus
    void focus() {
        grid.control().setFocus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    private void changed(Change change) {
        if (change != Change.MACHINE) {
            session.opened().ifPresent(opened -> table.show(FleetRow.of(opened, session.plan())));
            refresh();
        }
        session.machine().ifPresent(grid::reveal);
    }

    private void refresh() {
        grid.refresh();
        String line = FleetSummary.of(session.opened(), session.plan());
        boolean all = table.visible().size() == table.size();
        part.say(all ? line : Texts.with(Texts.summary_filtered, table.visible().size()) + " · " + line);
    }
}
