package slotledger.workbench.internal.fleet;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** All machines of the fleet in a grid, with a filter above. */
public final class FleetPart {

    /** Lets the grid's part, not the length of the summary, decide how wide the summary is. */
    private static final int SQUEEZED = 100;

    private final FleetTable table = new FleetTable();
    private final Session session;
    private Runnable unlisten = () -> { };
    private Text filter;
    private Label summary;
    private FleetGrid grid;

    @Inject
    public FleetPart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        GridLayoutFactory.fillDefaults().margins(4, 4).spacing(4, 4).applyTo(parent);
        filter = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Texts.filter_hint);
        filter.setData(Ids.WIDGET, Ids.FLEET_FILTER);
        filter.addModifyListener(event -> filter());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        summary = new Label(parent, SWT.WRAP);
        summary.setData(Ids.WIDGET, Ids.FLEET_SUMMARY);
        GridDataFactory.fillDefaults().grab(true, false).hint(SQUEEZED, SWT.DEFAULT).applyTo(summary);
        grid = new FleetGrid(parent, table, row -> session.look(row.tag()));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(grid.control());
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

    private void filter() {
        table.filter(filter.getText());
        refresh();
    }

    private void refresh() {
        grid.refresh();
        String line = FleetSummary.of(session.opened(), session.plan());
        boolean all = table.visible().size() == table.size();
        summary.setText(all ? line : Texts.with(Texts.summary_filtered, table.visible().size()) + " · " + line);
        summary.requestLayout();
    }
}
