package slotledger.workbench.internal.app;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Opened;
import slotledger.workbench.internal.session.Session;
import slotledger.workbench.internal.session.Session.Change;

/** Sets up the window: which bars it has, how large it is at first, and its title. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {

    private static final Point WISHED = new Point(1680, 1020);

    private final Session session;
    private Runnable unlisten = () -> { };

    WindowAdvisor(IWorkbenchWindowConfigurer configurer, Session session) {
        super(configurer);
        this.session = session;
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new ActionBars(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
        configurer.setInitialSize(new Point(Math.min(WISHED.x, screen.width), Math.min(WISHED.y, screen.height)));
        configurer.setShowCoolBar(true);
        configurer.setShowStatusLine(true);
        configurer.setShowProgressIndicator(true);
        configurer.setShowPerspectiveBar(true);
        unlisten = session.listen(this::changed);
    }

    @Override
    public void dispose() {
        unlisten.run();
    }

    private void changed(Change change) {
        // Tool bars ask on their own only when the focus moves.
        PlatformUI.getWorkbench().getService(IEventBroker.class)
                .post(UIEvents.REQUEST_ENABLEMENT_UPDATE_TOPIC, UIEvents.ALL_ELEMENT_ID);
        if (change == Change.PROJECT) {
            session.opened().map(Opened::survey).ifPresent(survey ->
                    getWindowConfigurer().setTitle(Texts.with(Texts.window_title, survey.project().title())));
        }
    }
}
