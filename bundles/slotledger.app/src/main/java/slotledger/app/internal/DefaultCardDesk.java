package slotledger.app.internal;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.app.CardDesk;
import slotledger.app.DeskException;
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
    public List<JobCard> cards(Survey survey, Plan plan, int number) {
        return cards.of(PlanFolder.book(survey, plan), number);
    }

    @Override
    public List<JobCard> cards(Path project, int plan, Progress progress) throws DeskException {
        Survey survey = desk.survey(desk.open(project), progress);
        return cards(survey, desk.projects().keptPlan(survey, plan), plan);
    }
}
