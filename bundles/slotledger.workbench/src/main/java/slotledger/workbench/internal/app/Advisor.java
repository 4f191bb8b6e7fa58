package slotledger.workbench.internal.app;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.commands.ProjectOpener;
import slotledger.workbench.internal.session.Session;

/** Tells the workbench how this product's windows begin. */
final class Advisor extends WorkbenchAdvisor {

    private final Session session;
    private final Optional<Path> project;

    Advisor(Session session, Optional<Path> project) {
        this.session = session;
        this.project = project;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new WindowAdvisor(configurer, session);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return Ids.PERSPECTIVE;
    }

    @Override
    public void postStartup() {
        project.ifPresent(folder -> new ProjectOpener(session).open(folder));
    }
}
