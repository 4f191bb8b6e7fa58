package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.DraftedBoards;
import slotledger.app.DraftedBoards.Drafted;
import slotledger.catalog.BoardDraft;
import slotledger.catalog.BoardDrafts;

/** Writes drafts of boards into a folder of their own; never over a file that a person has worked on. */
final class DraftFiles {

    private static final String ENDING = ".draft.yaml";
    /** A person who checked a draft has written another source. */
    private static final String UNCHECKED = "source: {ground: firmware table";

    private DraftFiles() {
    }

    static DraftedBoards write(BoardDrafts drafts, Path folder, boolean force) throws DeskException {
        refuseChecked(folder);
        try (OutputFolder output = OutputFolder.prepare(folder, force)) {
            List<Path> made = new ArrayList<>();
            for (BoardDraft draft : drafts.drafts()) {
                made.add(Files.writeString(output.work().resolve(draft.fileName()), draft.yaml()));
            }
            List<Path> files = output.publish(made);
            List<Drafted> boards = new ArrayList<>();
            for (int i = 0; i < files.size(); i++) {
                BoardDraft draft = drafts.drafts().get(i);
                boards.add(new Drafted(draft.id(), draft.name(), draft.machines(), draft.open(), files.get(i)));
            }
            return new DraftedBoards(boards, drafts.findings());
        } catch (IOException problem) {
            throw new DeskException(Trouble.OUTPUT, "The folder " + folder + " can't be written: "
                    + problem.getMessage() + ".", problem);
        }
    }

    private static void refuseChecked(Path folder) throws DeskException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(each -> each.toString().endsWith(ENDING)).sorted().toList()) {
                if (!Files.readString(file).contains(UNCHECKED)) {
                    throw new DeskException(Trouble.EXISTS, "The draft " + file + " has been checked by somebody, and"
                            + " would be lost. Move it out of the folder of drafts first.");
                }
            }
        } catch (IOException problem) {
            throw new DeskException(Trouble.INPUT, "The folder " + folder + " can't be read: " + problem.getMessage()
                    + ".", problem);
        }
    }
}
