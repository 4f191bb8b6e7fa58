package slotledger.workbench.internal.commands;

import java.nio.file.Path;
import org.eclipse.swt.widgets.Display;
import slotledger.app.FleetDesk;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.DeskJob;
import slotledger.workbench.internal.session.Opened;
import slotledger.workbench.internal.session.Session;

/** Reads the project in a folder and shows it. */
public final class ProjectOpener {

    private final Session session;

    public ProjectOpener(Session session) {
        this.session = session;
    }

    public void open(Path folder) {
        FleetDesk desk = session.desk();
        Path name = folder.getFileName();
        new DeskJob<Opened>(Texts.with(Texts.job_open, name == null ? folder : name),
                progress -> Opened.read(desk, desk.open(folder), progress),
                Display.getCurrent()::asyncExec, session::open).schedule();
    }
}
