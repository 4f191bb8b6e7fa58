package slotledger.cli.internal;

import java.nio.file.Path;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;

/** Keeps a plan that was written, where its project has a history. */
final class PlanKeeper {

    private final FleetDesk desk;

    PlanKeeper(FleetDesk desk) {
        this.desk = desk;
    }

    void keep(Survey survey, Path folder, Answer.Builder answer) throws DeskException {
        try {
            desk.projects().keepPlan(survey, folder.resolve("plan.json"),
                    AuthorOptions.author(System.getProperty("user.name", ""), "")).ifPresent(entry -> answer
                            .item("Project", "the plan is kept as entry " + entry.number() + " of the history")
                            .fact("entry", entry.number()));
        } catch (DeskException problem) {
            if (problem.trouble() != DeskException.Trouble.DENIED) {
                throw problem;
            }
            answer.item("Project", "the plan is written, but not kept in the history: only a coordinator may do that");
        }
    }
}
