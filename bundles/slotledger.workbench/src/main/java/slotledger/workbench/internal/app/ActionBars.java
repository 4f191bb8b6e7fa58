package slotledger.workbench.internal.app;

import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/** Puts the workbench's own actions behind their commands; the menus themselves are in plugin.xml. */
final class ActionBars extends ActionBarAdvisor {

    ActionBars(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow window) {
        register(ActionFactory.QUIT.create(window));
        register(ActionFactory.PREFERENCES.create(window));
        register(ActionFactory.ABOUT.create(window));
        register(ActionFactory.RESET_PERSPECTIVE.create(window));
    }
}
