package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.planner.GoalText;
import slotledger.planner.internal.milp.Lexicographic.Goal;
import slotledger.planner.internal.model.PlanModel;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;
import slotledger.solver.text.ProgrammeForm;

/** Writes the programme before each goal is solved, so that the goals before it are rows. */
final class GoalTexts {

    private GoalTexts() {
    }

    /** Solves goal by goal; adds a row for each to the programme of the model. */
    static List<GoalText> of(PlanModel model, MilpSolver solver, ProgrammeForm form, Progress progress)
            throws SolverException {
        List<GoalText> texts = new ArrayList<>();
        long[] best = model.nothingDone();
        for (Goal goal : model.goals()) {
            progress.check();
            progress.step(goal.name(), -1);
            String text = form.text(model.programme(), goal.sum(), "Goal: " + goal.name());
            MilpSolution found = solver
                    .minimise(model.programme(), goal.sum(), goal.mostNodes(), Optional.of(best), progress)
                    .orElseThrow(() -> new IllegalStateException("The programme must allow to do nothing."));
            texts.add(new GoalText(goal.name(), found.value(), found.bound(), text));
            best = found.values();
            model.programme().atMost(goal.name(), goal.sum(), found.value());
        }
        return texts;
    }
}
