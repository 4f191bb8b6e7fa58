package slotledger.workbench.internal.session;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.app.FleetDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Plan;
import slotledger.model.unit.Money;

/** What the window is about: the open project, its plan, and the machine looked at. Only for the window's thread. */
@Component(service = Session.class)
public final class Session {

    /** What has become different. */
    public enum Change {
        PROJECT,
        PLAN,
        CURVE,
        BUDGET,
        MACHINE;

        /** Whether what is planned, or the project itself, has become different. */
        public boolean concernsPlan() {
            return this == PROJECT || this == PLAN;
        }
    }

    private final FleetDesk desk;
    private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();
    private Optional<Opened> opened = Optional.empty();
    private Optional<Plan> plan = Optional.empty();
    private Optional<BudgetCurve> curve = Optional.empty();
    private Optional<Money> budget = Optional.empty();
    private Optional<AssetTag> machine = Optional.empty();

    @Activate
    public Session(@Reference FleetDesk desk) {
        this.desk = Objects.requireNonNull(desk, "desk");
    }

    public FleetDesk desk() {
        return desk;
    }

    public Optional<Opened> opened() {
        return opened;
    }

    /** The plan of the open project, once one was made. */
    public Optional<Plan> plan() {
        return plan;
    }

    /** What each budget brings, as far as it is known. */
    public Optional<BudgetCurve> curve() {
        return curve;
    }

    /** The budget chosen on the curve, to be planned with. */
    public Optional<Money> budget() {
        return budget;
    }

    /** The machine looked at. */
    public Optional<AssetTag> machine() {
        return machine;
    }

    /** Shows another project; its plan is yet to be made. */
    public void open(Opened project) {
        opened = Optional.of(project);
        plan = Optional.empty();
        curve = Optional.empty();
        budget = Optional.empty();
        machine = Optional.empty();
        tell(Change.PROJECT);
    }

    /** Takes a plan, unless another project was opened while it was made. */
    public void take(Opened planned, Plan made) {
        if (opened.filter(project -> project == planned).isPresent()) {
            plan = Optional.of(made);
            tell(Change.PLAN);
        }
    }

    /** Takes a curve, or more of it, unless another project was opened meanwhile. */
    public void take(Opened planned, BudgetCurve found) {
        if (opened.filter(project -> project == planned).isPresent()) {
            curve = Optional.of(found);
            budget = Optional.empty();
            tell(Change.CURVE);
        }
    }

    public void choose(Optional<Money> chosen) {
        budget = chosen;
        tell(Change.BUDGET);
    }

    public void look(AssetTag tag) {
        if (!machine.equals(Optional.of(tag))) {
            machine = Optional.of(tag);
            tell(Change.MACHINE);
        }
    }

    /** Has the listener told of every change, until the returned action is run. */
    public Runnable listen(Consumer<Change> listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    private void tell(Change change) {
        listeners.forEach(listener -> listener.accept(change));
    }
}
