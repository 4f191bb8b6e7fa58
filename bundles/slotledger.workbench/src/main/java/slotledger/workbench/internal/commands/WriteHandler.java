package slotledger.workbench.internal.commands;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;
import slotledger.app.Survey;
import slotledger.model.plan.Plan;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.DeskJob;

/** Asks for a folder and writes everything that comes out of the plan into it. */
public final class WriteHandler extends SessionHandler {

    public WriteHandler() {
        super(session -> session.plan().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        DirectoryDialog dialog = new DirectoryDialog(shell, SWT.SAVE);
        dialog.setMessage(Texts.write_choose);
        String chosen = dialog.open();
        if (chosen != null && WrittenFiles.mayWrite(shell, Path.of(chosen))) {
            write(shell, Path.of(chosen));
        }
        return null;
    }

    private void write(Shell shell, Path folder) {
        Survey survey = session().opened().orElseThrow().survey();
        Plan plan = session().plan().orElseThrow();
        new DeskJob<List<Path>>(Texts.with(Texts.job_write, folder.getFileName()),
                progress -> session().desk().export(survey, plan, folder, true, progress),
                shell.getDisplay()::asyncExec, files -> WrittenFiles.show(shell, folder, files)).schedule();
    }
}
