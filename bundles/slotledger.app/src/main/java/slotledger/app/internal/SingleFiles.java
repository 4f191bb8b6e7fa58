package slotledger.app.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.export.ExportException;
import slotledger.export.PlanFiles;
import slotledger.intake.IntakeException;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;

/** Writes and reads one file at a time; replaces none unless told so. */
final class SingleFiles {

    private static final String PLAN = "plan.json";

    /** Writes a file. */
    @FunctionalInterface
    interface Writing {
        void write(Path file) throws ExportException, IntakeException;
    }

    private final PlanFiles files;

    SingleFiles(PlanFiles files) {
        this.files = files;
    }

    void write(Path file, boolean force, Writing writing) throws DeskException {
        if (Files.isDirectory(file)) {
            throw new DeskException(Trouble.EXISTS, file + " is a folder, but a file name is needed.");
        }
        if (Files.exists(file) && !force) {
            throw new DeskException(Trouble.EXISTS,
                    "The file " + file + " exists already. Choose another name, or say --force to replace it.");
        }
        try {
            writing.write(file);
        } catch (ExportException | IntakeException problem) {
            throw new DeskException(Trouble.OUTPUT, problem.getMessage(), problem);
        }
    }

    /**
     * Reads a plan.
     *
     * @param plan plan.json, or the folder it is in
     */
    Plan plan(Path plan) throws DeskException {
        Path file = Files.isDirectory(plan) ? plan.resolve(PLAN) : plan;
        if (!Files.isRegularFile(file)) {
            throw new DeskException(Trouble.INPUT, "There is no plan in " + plan
                    + ". Name the folder that \"plan\" wrote, or its file " + PLAN + ".");
        }
        try {
            return files.readPlan(file);
        } catch (ExportException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    /**
     * Refuses a plan, named so in the message, of whose boards a survey doesn't know all: it can't be printed again.
     */
    static void mustKnowBoards(Plan plan, Object name, Survey survey) throws DeskException {
        Set<BoardId> known = survey.boards().stream().map(Board::id).collect(Collectors.toSet());
        for (MachinePlan each : plan.machines()) {
            if (!known.contains(each.machine().board())) {
                throw new DeskException(Trouble.INPUT, "The plan " + name + " needs the board "
                        + each.machine().board() + " of machine " + each.machine().tag()
                        + ", which the project's boards do not have. Add its board file.");
            }
        }
    }
}
