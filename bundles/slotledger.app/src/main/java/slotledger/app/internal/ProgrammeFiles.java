package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.WrittenGoal;
import slotledger.model.task.Progress;
import slotledger.planner.FleetPlanner;
import slotledger.planner.GoalText;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.solver.text.ProgrammeForm;

/** Writes the integer programme of a plan, one file a goal. */
final class ProgrammeFiles {

    private ProgrammeFiles() {
    }

    static List<WrittenGoal> write(
            FleetPlanner planner, PlanRequest request, String form, Path folder, boolean force, Progress progress)
            throws DeskException, PlannerException {
        ProgrammeForm chosen = ProgrammeForm.of("." + form).orElseThrow(() -> new DeskException(Trouble.INPUT,
                "The form \"" + form + "\" is not known. Say lp or mps."));
        try (OutputFolder output = OutputFolder.prepare(folder, force)) {
            List<GoalText> texts = planner.goalTexts(request, chosen, progress);
            List<Path> made = new ArrayList<>();
            for (GoalText text : texts) {
                Path file = output.work().resolve("goal-" + (made.size() + 1) + chosen.ending());
                made.add(Files.writeString(file, text.text()));
            }
            List<Path> files = output.publish(made);
            List<WrittenGoal> written = new ArrayList<>();
            for (int i = 0; i < files.size(); i++) {
                GoalText text = texts.get(i);
                written.add(new WrittenGoal(files.get(i), text.goal(), text.value(), text.bound()));
            }
            return written;
        } catch (IOException problem) {
            throw new DeskException(Trouble.OUTPUT, "The programme can't be written to " + folder + ": "
                    + problem.getMessage() + ". Check that its disk has room and that you may write there.", problem);
        }
    }
}
