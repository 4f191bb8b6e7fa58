package slotledger.workbench.internal.commands;

import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Session;

/** Asks for a folder and opens the project in it. */
public final class OpenProjectHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        DirectoryDialog dialog = new DirectoryDialog(HandlerUtil.getActiveShellChecked(event), SWT.OPEN);
        dialog.setMessage(Texts.open_choose);
        String folder = dialog.open();
        if (folder != null) {
            new ProjectOpener(PlatformUI.getWorkbench().getService(Session.class)).open(Path.of(folder));
        }
        return null;
    }
}
