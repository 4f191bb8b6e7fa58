package slotledger.workbench.internal.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Shell;
import slotledger.workbench.internal.Texts;

/** What is said before and after files are written into a folder. */
final class WrittenFiles {

    private WrittenFiles() {
    }

    /** Asks where the folder holds something already. */
    static boolean mayWrite(Shell shell, Path folder) {
        return isEmpty(folder) || MessageDialog.openConfirm(shell, Texts.write_replace_title,
                Texts.with(Texts.write_replace, folder));
    }

    static void show(Shell shell, Path folder, List<Path> files) {
        if (shell.isDisposed()) {
            return;
        }
        String names = files.stream().map(file -> folder.relativize(file).toString())
                .collect(Collectors.joining("\n"));
        MessageDialog dialog = new MessageDialog(shell, Texts.write_done_title, null,
                Texts.with(Texts.write_done, files.size(), folder, names), MessageDialog.INFORMATION, 1,
                Texts.write_open, Texts.write_close);
        if (dialog.open() == 0) {
            Program.launch(folder.toString());
        }
    }

    /** A folder that can't be listed is left to the step that writes, which says what is the matter. */
    private static boolean isEmpty(Path folder) {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        } catch (IOException e) {
            return true;
        }
    }
}
