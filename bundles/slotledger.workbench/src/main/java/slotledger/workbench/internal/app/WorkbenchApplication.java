package slotledger.workbench.internal.app;

import java.util.Optional;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Session;

/** The framework's door to the workbench. */
public final class WorkbenchApplication implements IApplication {

    /** As sysexits.h has them: wrong usage (EX_USAGE), an internal error (EX_SOFTWARE). */
    private static final int EXIT_USAGE = 64;
    private static final int EXIT_BROKEN = 70;

    /** Components are ready when the application starts; the time is for a machine that swaps. */
    private static final long PATIENCE_MS = 10_000;

    @Override
    public Object start(IApplicationContext context) throws InterruptedException {
        Arguments arguments = Arguments.of((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS));
        Display display = PlatformUI.createDisplay();
        BundleContext bundles = FrameworkUtil.getBundle(getClass()).getBundleContext();
        ServiceTracker<Session, Session> tracker = new ServiceTracker<>(bundles, Session.class, null);
        tracker.open();
        try {
            Session session = tracker.waitForService(PATIENCE_MS);
            Optional<String> unknown = arguments.unknown();
            if (session == null || unknown.isPresent()) {
                context.applicationRunning();
                return refuse(unknown);
            }
            int code = PlatformUI.createAndRunWorkbench(display, new Advisor(session, arguments.project()));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            tracker.close();
            display.dispose();
        }
    }

    private static int refuse(Optional<String> unknown) {
        unknown.ifPresentOrElse(
                argument -> MessageDialog.openError(null, Texts.usage_title, Texts.with(Texts.usage_message, argument)),
                () -> MessageDialog.openError(null, Texts.incomplete_title, Texts.incomplete_message));
        return unknown.isPresent() ? EXIT_USAGE : EXIT_BROKEN;
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            Display display = PlatformUI.getWorkbench().getDisplay();
            display.syncExec(() -> PlatformUI.getWorkbench().close());
        }
    }
}
