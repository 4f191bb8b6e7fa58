package slotledger.workbench.internal.commands;

import java.util.function.Predicate;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.ui.PlatformUI;
import slotledger.workbench.internal.session.Session;

/** A command that can be given while the session is in some state. */
abstract class SessionHandler extends AbstractHandler {

    private final Session session = PlatformUI.getWorkbench().getService(Session.class);
    private final Runnable unlisten;

    SessionHandler(Predicate<Session> canBeGiven) {
        unlisten = session.listen(change -> setBaseEnabled(canBeGiven.test(session)));
        setBaseEnabled(canBeGiven.test(session));
    }

    final Session session() {
        return session;
    }

    @Override
    public final void dispose() {
        unlisten.run();
        super.dispose();
    }
}
