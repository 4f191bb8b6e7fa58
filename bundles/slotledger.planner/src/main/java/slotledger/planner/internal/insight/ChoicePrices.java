package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.plan.WithoutChoice;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Taste;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Planning;

/**
 * What each decision of people costs: the fleet is listed and planned once more without it. Decisions change what may
 * be done with machines, so that nothing listed can be used again.
 */
final class ChoicePrices {

    private record Decision(String text, Choices others) {
    }

    private final Planning planning;
    private final WhatIf whatIf;
    private final PlanRequest request;

    ChoicePrices(Planning planning, PlanRequest request) {
        this.planning = planning;
        this.whatIf = new WhatIf(planning);
        this.request = request;
    }

    /** Pins, then what is forbidden or preferred, then uniform rooms by name, then the most machines to open. */
    List<WithoutChoice> all(Progress progress) throws PlannerException {
        List<WithoutChoice> prices = new ArrayList<>();
        List<Decision> decisions = decisions();
        for (Decision each : decisions) {
            progress.step("planning without a decision", prices.size() / (double) decisions.size());
            Optional<WhatIf.Answer> answer =
                    whatIf.ask(planning.list(request.with(each.others()), progress), progress);
            answer.ifPresent(found -> prices.add(new WithoutChoice(each.text(), found.figures())));
        }
        return prices;
    }

    private List<Decision> decisions() {
        Choices all = request.choices();
        List<Decision> decisions = new ArrayList<>();
        for (Pin pin : all.pins()) {
            decisions.add(new Decision(WithoutChoice.of(pin), new Choices(
                    without(all.pins(), pin), all.tastes(), all.uniform(), all.mostOpened())));
        }
        for (Taste taste : all.tastes()) {
            decisions.add(new Decision(WithoutChoice.of(taste), new Choices(
                    all.pins(), without(all.tastes(), taste), all.uniform(), all.mostOpened())));
        }
        for (String room : all.uniform().stream().sorted().toList()) {
            Set<String> others = new HashSet<>(all.uniform());
            others.remove(room);
            decisions.add(new Decision(WithoutChoice.ofUniform(room), new Choices(
                    all.pins(), all.tastes(), others, all.mostOpened())));
        }
        all.mostOpened().ifPresent(most -> decisions.add(new Decision(
                WithoutChoice.ofMostOpened(most),
                new Choices(all.pins(), all.tastes(), all.uniform(), OptionalInt.empty()))));
        return decisions;
    }

    private static <T> List<T> without(List<T> all, T one) {
        List<T> others = new ArrayList<>(all);
        others.remove(one);
        return others;
    }
}
