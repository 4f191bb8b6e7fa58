package slotledger.app.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import slotledger.app.CoordinatorDesk;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.RoundWish;
import slotledger.model.plan.MachinePlan;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.PlanVersion;
import slotledger.model.project.ProjectState;
import slotledger.model.work.Round;
import slotledger.model.work.RoundSheet;

/** Strings together the journal and what is made of a plan on its way to the proof. */
final class DefaultCoordinatorDesk implements CoordinatorDesk {

    private final WorkSessions sessions;

    DefaultCoordinatorDesk(WorkSessions sessions) {
        this.sessions = sessions;
    }

    @Override
    public List<RoundSheet> makeRounds(Path project, RoundWish wish, Author author) throws DeskException {
        return sessions.with(project, session -> {
            PlanVersion version = wanted(session, wish.plan());
            List<MachinePlan> work = session.plan(version).work().stream().filter(machine -> !session.running()
                    .job(version.number(), machine.machine().tag()).state().isEnded()).toList();
            if (work.isEmpty()) {
                throw new DeskException(Trouble.INPUT, "All jobs of plan " + version.number() + " have ended, or it opens "
                        + "no machine; there is nothing to make rounds of.");
            }
            List<Round> rounds = new RoundMaker(wish, version.number()).rounds(work);
            session.append(new Change.Rounds(version.number(), rounds), author);
            return RoundSheet.of(session.plan(version), rounds);
        });
    }

    @Override
    public List<RoundSheet> roundSheets(Path project) throws DeskException {
        return sessions.with(project, session -> {
            ProjectState state = session.state();
            List<Round> rounds = state.rounds();
            return rounds.isEmpty() ? List.of() : RoundSheet.of(session.plan(state.carriedOut().orElseThrow()), rounds);
        });
    }

    private static PlanVersion wanted(WorkSession session, OptionalInt number) throws DeskException {
        return number.isPresent() ? session.version(number.getAsInt()) : session.toBeCarriedOut();
    }
}
