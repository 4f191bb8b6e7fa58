package slotledger.cli.internal;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.difference.Difference;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Wave;
import slotledger.model.unit.Money;

/** Plans one wave after the other, then writes a folder for each; says what waits until which wave, and why. */
final class WaveWork {

    /** How a survey is planned. */
    @FunctionalInterface
    interface Planner {
        Plan plan(Survey survey, Progress progress) throws DeskException;
    }

    private final FleetDesk desk;
    private final Planner planner;
    private final Optional<Path> before;

    /**
     * Work.
     *
     * @param before folder of an earlier plan in waves
     */
    WaveWork(FleetDesk desk, Planner planner, Optional<Path> before) {
        this.desk = desk;
        this.planner = planner;
        this.before = before;
    }

    Answer work(Survey survey, List<Wave> waves, Path out, boolean force, Progress progress) throws DeskException {
        List<Survey> surveys = new ArrayList<>();
        List<Plan> plans = new ArrayList<>();
        for (Wave wave : waves) {
            boolean isFirst = plans.isEmpty();
            Survey start = isFirst ? survey : surveys.get(surveys.size() - 1);
            Survey then = earlier(wave, plans.size() + 1, desk.wave(start, wave,
                    isFirst ? Optional.empty() : Optional.of(plans.get(plans.size() - 1))));
            surveys.add(then);
            plans.add(planner.plan(then, progress));
        }
        Answer.Builder answer = new Answer.Builder();
        new SurveyText(survey).summary(answer);
        List<Map<String, Object>> facts = new ArrayList<>();
        for (int i = 0; i < plans.size(); i++) {
            List<Path> files = desk.export(
                    surveys.get(i), plans.get(i), folder(out, waves.get(i), i + 1), force, progress);
            answer.line("").line("Wave %d, %s (%s)".formatted(i + 1, waves.get(i).name(), waves.get(i).date()));
            Answer.Builder part = new Answer.Builder().fact("name", waves.get(i).name());
            new PlanText(plans.get(i)).report(part, files);
            Answer made = part.end(ExitCode.OK);
            answer.lines(made);
            facts.add(made.facts());
            new PlanKeeper(desk).keep(surveys.get(i), folder(out, waves.get(i), i + 1), answer);
        }
        answer.fact("waves", facts);
        all(answer, plans);
        waiting(answer, waves, plans);
        return answer.end(ExitCode.OK);
    }

    private static Path folder(Path out, Wave wave, int number) {
        return out.resolve(number + "-" + wave.name().toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", ""));
    }

    /** With the plan of the same wave in the earlier folder, where it is there. */
    private Survey earlier(Wave wave, int number, Survey survey) throws DeskException {
        if (before.isEmpty()) {
            return survey;
        }
        Path folder = folder(before.get(), wave, number);
        if (!Files.isDirectory(folder)) {
            throw new DeskException(Trouble.INPUT, ("There is no earlier plan of wave %d, %s: the folder %s is"
                    + " missing. Name the folder of an earlier plan in the same waves, or plan without --before.")
                            .formatted(number, wave.name(), folder));
        }
        return BeforeOption.in(survey, folder, desk);
    }

    /** What all waves come to together. */
    private static void all(Answer.Builder answer, List<Plan> plans) {
        Plan last = plans.get(plans.size() - 1);
        Money none = Money.zero(last.policy().currency());
        Money payable = plans.stream().map(plan -> plan.spending().payable()).reduce(none, Money::plus);
        Money labour = plans.stream().map(plan -> plan.spending().labour()).reduce(none, Money::plus);
        long onTarget = Difference.onTarget(last);
        long opened = plans.stream().mapToLong(plan -> plan.work().size()).sum();
        answer.line("").line("All waves together")
                .item("Plan", onTarget + " machines are on target after the last; machines are opened " + opened
                        + " times")
                .item("Money", payable + " to suppliers, " + labour + " labour, " + payable.plus(labour) + " in all")
                .fact("onTargetAfter", onTarget).fact("opened", opened)
                .fact("payable", payable.amount().toPlainString()).fact("labour", labour.amount().toPlainString())
                .fact("total", payable.plus(labour).amount().toPlainString())
                .fact("currency", none.currency().getCurrencyCode());
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
