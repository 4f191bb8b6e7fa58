package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.app.CardDesk;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.export.JobCards;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.work.JobCard;

/** Makes cards of a plan as it was kept. */
@Component
public final class DefaultCardDesk implements CardDesk {

    private final FleetDesk desk;
    private final JobCards cards;

    @Activate
    public DefaultCardDesk(@Reference FleetDesk desk, @Reference JobCards cards) {
        this.desk = desk;
        this.cards = cards;
    }

    @Override
    public List<JobCard> cards(Path project, int plan, Progress progress) throws DeskException {
        Path folder = RunFolder.make();
        Path file = folder.resolve("plan.json");
        desk.projects().writePlan(project, plan, file, false);
        Survey survey = desk.survey(desk.open(project), progress);
        Plan kept = desk.reopen(file, survey);
        try {
            Files.delete(file);
        } catch (IOException problem) {
            throw new DeskException(Trouble.OUTPUT, "The temporary file " + file + " can't be deleted: "
                    + problem.getMessage(), problem);
        }
        return cards.of(PlanFolder.book(survey, kept), plan);
    }
}
