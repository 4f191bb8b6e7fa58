package slotledger.app.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Project;
import slotledger.app.Stored;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.model.difference.ProjectDifference;
import slotledger.model.difference.ProjectSide;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.Plan;
import slotledger.model.project.Journal;
import slotledger.model.project.Part;
import slotledger.model.project.PlanVersion;
import slotledger.model.project.ProjectState;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStores;
import slotledger.store.StoreException;

/** Reads a project as it was after two entries, and compares them. */
final class ProjectComparison {

    private final ProjectStores stores;
    private final Intake intake;
    private final SingleFiles single;

    ProjectComparison(ProjectStores stores, Intake intake, SingleFiles single) {
        this.stores = stores;
        this.intake = intake;
        this.single = single;
    }

    /** @param last the later entry; empty means the last of the project */
    ProjectDifference compare(Path project, long first, OptionalLong last, Progress progress) throws DeskException {
        try (ProjectSource source = stores.read(project)) {
            Journal journal = source.journal();
            long later = last.orElse(journal.last().number());
            for (long entry : new long[] {first, later}) {
                StoredFiles.mustHave(journal, entry, project);
            }
            ProjectState then = journal.upTo(first).state();
            ProjectState now = journal.upTo(later).state();
            boolean samePlan = plan(then).equals(plan(now));
            return ProjectDifference.of(side(source, project, then, !samePlan, progress),
                    side(source, project, now, !samePlan, progress));
        } catch (StoreException problem) {
            throw DefaultProjectDesk.said(problem);
        } catch (IntakeException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    private static Optional<PlanVersion> plan(ProjectState state) {
        return state.plans().isEmpty() ? Optional.empty()
                : Optional.of(state.plans().get(state.plans().size() - 1));
    }

    private ProjectSide side(ProjectSource source, Path place, ProjectState state, boolean withPlan,
            Progress progress) throws StoreException, DeskException, IntakeException {
        progress.step("Reading the project as it was after entry " + state.entry(), -1);
        Path folder = RunFolder.make();
        StoredFiles.write(source, state, folder);
        Optional<Plan> plan = Optional.empty();
        if (withPlan && plan(state).isPresent()) {
            plan = Optional.of(StoredFiles.plan(source, plan(state).get(), single));
        }
        List<ObservedMachine> machines = List.of();
        Market market = Market.NONE;
        Shelf shelf = Shelf.EMPTY;
        Optional<Policy> policy = Optional.empty();
        if (state.parts().containsKey(Part.FLEET)) {
            Project files = ProjectFiles.in(folder, LocalDate.now()).of(new Stored(place, state));
            machines = new Corrections(files).applied(
                    intake.readFleet(files.inventories(), files.mapping(), progress).value(), new ArrayList<>())
                    .machines();
            market = files.offers().isEmpty() ? market : intake.readOffers(files.offers(), progress).value();
            shelf = files.shelves().isEmpty() ? shelf : intake.readShelf(files.shelves(), progress).value();
            policy = files.policy().isEmpty() ? policy
                    : Optional.of(intake.readPolicy(files.policy().get()).value());
        }
        return new ProjectSide(state.entry(), machines, market, shelf, policy, state, plan);
    }
}
