package slotledger.workbench.internal.work;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** One machine's job: what to heed, its steps to tick, the serial numbers of what went in, and how it ended. */
public final class JobPart {

    private final Session session;
    private final WorkSession work;
    private final EPartService parts;
    private Runnable unlisten = () -> { };
    private ScrolledComposite frame;
    private JobForm form;

    @Inject
    public JobPart(Session session, WorkSession work, EPartService parts) {
        this.session = session;
        this.work = work;
        this.parts = parts;
    }

    @PostConstruct
    void create(Composite parent) {
        parent.setLayout(new FillLayout());
        frame = new ScrolledComposite(parent, SWT.V_SCROLL);
        frame.setExpandHorizontal(true);
        frame.setExpandVertical(true);
        frame.setShowFocusedControl(true);
        frame.addListener(SWT.Resize, event -> fit());
        Runnable toMachine = session.listen(change -> {
            if (change == Change.MACHINE || change == Change.PROJECT) {
                show();
            }
        });
        Runnable toWork = work.listen(this::show);
        unlisten = () -> {
            toMachine.run();
            toWork.run();
        };
        work.want(parent.getDisplay()::asyncExec);
        show();
    }

    @Focus
    void focus() {
        form.focus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    /** A form that shows the machine already is only told how far the job is, so that nothing typed is lost. */
    private void show() {
        Optional<JobCard> card = session.machine().flatMap(tag -> work.work().map(now -> now.cards().get(tag)));
        if (form != null && card.equals(form.card())) {
            card.ifPresent(shown -> form.show(work.work().orElseThrow().jobs().get(shown.machine())));
            return;
        }
        if (form != null) {
            form.control().dispose();
        }
        form = new JobForm(frame, card, work.hindrance(), this::happened);
        frame.setContent(form.control());
        card.ifPresent(shown -> form.show(work.work().orElseThrow().jobs().get(shown.machine())));
        frame.setOrigin(0, 0);
        fit();
    }

    private void fit() {
        if (form != null) {
            frame.setMinHeight(form.control().computeSize(frame.getClientArea().width, SWT.DEFAULT).y);
        }
    }

    /** Once a machine is through, the next one of the round is shown, and another tag can be scanned at once. */
    private void happened(JobEvent.What what) {
        AssetTag machine = form.card().orElseThrow().machine();
        work.happened(machine, what, frame.getDisplay()::asyncExec);
        if (what instanceof JobEvent.What.Became became && became.state().isEnded()) {
            work.work().flatMap(now -> now.after(machine)).ifPresent(session::look);
            parts.showPart(Ids.ROUNDS, PartState.ACTIVATE);
        }
    }
}
