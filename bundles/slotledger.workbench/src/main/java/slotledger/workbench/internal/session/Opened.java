package slotledger.workbench.internal.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Project;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;
import slotledger.model.verdict.Operation;

/**
 * A project that was read.
 *
 * @param survey  everything its files say
 * @param runsNow how each machine of a known board runs as it is
 * @param lacks   what each of them lacks of its target, for those that are below it
 */
public record Opened(Survey survey, Map<AssetTag, Operation> runsNow, Map<AssetTag, List<String>> lacks) {

    public Opened {
        Objects.requireNonNull(survey, "survey");
        runsNow = Map.copyOf(runsNow);
        lacks = Map.copyOf(lacks);
    }

    /** Reads a project; long work. */
    public static Opened read(FleetDesk desk, Project project, Progress progress) throws DeskException {
        Survey survey = desk.survey(project, progress);
        Map<AssetTag, Operation> runsNow = new HashMap<>();
        Map<AssetTag, List<String>> lacks = new HashMap<>();
        for (Machine machine : survey.fleet().machines()) {
            progress.check();
            runsNow.put(machine.tag(), desk.operate(survey, machine));
            List<String> missing = desk.shortfalls(survey, machine);
            if (!missing.isEmpty()) {
                lacks.put(machine.tag(), missing);
            }
        }
        return new Opened(survey, runsNow, lacks);
    }

    /** The survey with another budget in all; as it is where none is given, or it has no policy. */
    public Survey with(Optional<Money> budget) {
        return budget.isEmpty() ? survey
                : survey.policy().map(policy -> survey.with(policy.withBudget(budget))).orElse(survey);
    }

    /** What a machine lacks of its target; empty where it meets it, or has none. */
    public List<String> lacks(AssetTag tag) {
        return lacks.getOrDefault(tag, List.of());
    }

    public Optional<Machine> machine(AssetTag tag) {
        return survey.fleet().find(tag);
    }

    public Optional<ObservedMachine> unresolved(AssetTag tag) {
        return survey.unresolved().stream().filter(machine -> machine.tag().equals(tag)).findFirst();
    }
}
