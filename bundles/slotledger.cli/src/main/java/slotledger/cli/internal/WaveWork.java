package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Wave;

/** Plans one wave after the other, then writes a folder for each; says what waits until which wave, and why. */
final class WaveWork {

    /** How a survey is planned. */
    @FunctionalInterface
    interface Planner {
        Plan plan(Survey survey, Progress progress) throws DeskException;
    }

    private final FleetDesk desk;
    private final Planner planner;

    WaveWork(FleetDesk desk, Planner planner) {
        this.desk = desk;
        this.planner = planner;
    }

    Answer work(Survey survey, List<Wave> waves, Path out, boolean force, Progress progress) throws DeskException {
        List<Survey> surveys = new ArrayList<>();
        List<Plan> plans = new ArrayList<>();
        for (Wave wave : waves) {
            boolean isFirst = plans.isEmpty();
            Survey before = isFirst ? survey : surveys.get(surveys.size() - 1);
            Survey then = desk.wave(before, wave,
                    isFirst ? Optional.empty() : Optional.of(plans.get(plans.size() - 1)));
            surveys.add(then);
            plans.add(planner.plan(then, progress));
        }
        Answer.Builder answer = new Answer.Builder();
        new SurveyText(survey).summary(answer);
        for (int i = 0; i < plans.size(); i++) {
            Path folder = out.resolve((i + 1) + "-" + waves.get(i).name().toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", ""));
            List<Path> files = desk.export(surveys.get(i), plans.get(i), folder, force, progress);
            answer.line("").line("Wave %d, %s (%s)".formatted(i + 1, waves.get(i).name(), waves.get(i).date()));
            new PlanText(plans.get(i)).report(answer, files);
            new PlanKeeper(desk).keep(surveys.get(i), folder, answer);
        }
        waiting(answer, waves, plans);
        return answer.end(ExitCode.OK);
    }

    /** What is not on target after the first wave: the wave that helps it, or none, and what bound before. */
    private static void waiting(Answer.Builder answer, List<Wave> waves, List<Plan> plans) {
        List<String> waits = new ArrayList<>();
        for (MachinePlan machine : plans.get(0).machines()) {
            if (machine.obstacle().isPresent()) {
                String until = "is not helped in any wave";
                for (int i = plans.size() - 1; i > 0; i--) {
                    if (plans.get(i).find(machine.machine().tag())
                            .filter(then -> then.outcome() == Outcome.REACHES_TARGET).isPresent()) {
                        until = "waits until " + waves.get(i).name();
                    }
                }
                Obstacle why = machine.obstacle().get();
                waits.add("%s %s: %s".formatted(machine.machine().tag(), until, why.message()));
            }
        }
        answer.line("").line("What waits, and why");
        waits.forEach(answer::line);
        answer.fact("waits", waits);
    }
}
