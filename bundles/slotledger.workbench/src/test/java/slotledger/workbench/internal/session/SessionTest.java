package slotledger.workbench.internal.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.app.FleetDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.workbench.internal.SmallFleet;
import slotledger.workbench.internal.session.Session.Change;

class SessionTest {

    private final Session session = new Session(unusedDesk());
    private final List<Change> changes = new ArrayList<>();

    @Test
    void anotherProjectDropsThePlanAndTheMachine() {
        Opened first = SmallFleet.opened();
        session.open(first);
        session.take(first, SmallFleet.plan(first));
        session.look(new AssetTag("PC-1"));
        session.open(SmallFleet.opened());
        assertEquals(Optional.empty(), session.plan());
        assertEquals(Optional.empty(), session.machine());
    }

    @Test
    void aPlanOfAProjectThatIsNoLongerOpenIsDropped() {
        Opened first = SmallFleet.opened();
        Plan plan = SmallFleet.plan(first);
        session.open(first);
        session.open(SmallFleet.opened());
        session.listen(changes::add);
        session.take(first, plan);
        assertEquals(Optional.empty(), session.plan());
        assertEquals(List.of(), changes);
    }

    @Test
    void listenersHearOfEachChangeOnceUntilTheyLeave() {
        Runnable leave = session.listen(changes::add);
        session.open(SmallFleet.opened());
        session.look(new AssetTag("PC-1"));
        session.look(new AssetTag("PC-1"));
        leave.run();
        session.look(new AssetTag("PC-2"));
        assertEquals(List.of(Change.PROJECT, Change.MACHINE), changes);
    }

    private static FleetDesk unusedDesk() {
        return (FleetDesk) Proxy.newProxyInstance(SessionTest.class.getClassLoader(), new Class<?>[] {FleetDesk.class},
                (proxy, method, arguments) -> {
                    throw new AssertionError("The session itself does nothing at the desk.");
                });
    }
}
