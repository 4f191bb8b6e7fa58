package slotledger.workbench.internal.slots;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import slotledger.model.machine.AssetTag;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.session.Opened;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** One machine's slots, before and after. */
public final class SlotsPart {

    private final Session session;
    private Runnable unlisten = () -> { };
    private Label heading;
    private SlotsCanvas canvas;

    @Inject
    public SlotsPart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        GridLayoutFactory.fillDefaults().margins(0, 0).spacing(0, 4).applyTo(parent);
        heading = new Label(parent, SWT.NONE);
        heading.setData(Ids.WIDGET, Ids.SLOTS_HEADING);
        GridDataFactory.fillDefaults().grab(true, false).indent(SlotLayout.GAP, 6).applyTo(heading);
        canvas = new SlotsCanvas(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas.control());
        unlisten = session.listen(change -> {
            if (change.concernsPlan() || change == Change.MACHINE) {
                show();
            }
        });
        show();
    }

    @Focus
    void focus() {
        canvas.focus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    private void show() {
        Optional<Opened> opened = session.opened();
        Optional<AssetTag> machine = session.machine();
        boolean something = opened.isPresent() && machine.isPresent();
        heading.setText(something ? MachineHeading.of(opened.get(), machine.get()) : "");
        canvas.show(something ? SlotPictures.of(opened.get(), session.plan(), machine.get()) : List.of());
    }
}
