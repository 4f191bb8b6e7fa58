package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.model.machine.SlotContent;
import slotledger.model.source.Place;
import slotledger.model.trade.Pin;
import slotledger.planner.Pins;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.Choice;
import slotledger.rules.MemoryRules;

/** Refuses pins that can't be kept, with the reason. */
final class PinCheck {

    private PinCheck() {
    }

    /** By the rules, the policy and what else was decided. */
    static void check(PlanRequest request, MemoryRules rules) throws PlannerException {
        Pins pins = new Pins(rules, request.fleet(), Optional.of(request.policy()));
        for (Pin pin : request.choices().pins()) {
            Optional<String> hindrance = pins.hindrance(pin, request.choices());
            if (hindrance.isPresent()) {
                throw new PlannerException("%s Change the pin, or take it out%s.".formatted(
                        hindrance.get(), at(pin)));
            }
        }
    }

    /** By what there is at all. */
    static void check(PlanRequest request, Stock stock) throws PlannerException {
        for (Pin pin : request.choices().pins()) {
            for (SlotContent content : pin.slots().values()) {
                if (content.piece().isPresent() && !stock.numbers().containsKey(content.piece().get())) {
                    throw new PlannerException(("The pin of %s wants a %s, which no offer that can be used has, and"
                            + " which is"
                            + " neither on the shelf nor in a machine. Change the pin, or take it out%s.").formatted(
                                    pin.machine(), content, at(pin)));
                }
            }
        }
    }

    /** The pins that the best choice does not keep: stock, money or the number of machines does not reach. */
    static List<Pin> missed(PlanRequest request, Choice choice) {
        List<Pin> missed = new ArrayList<>();
        for (int group = 0; group < choice.options().size(); group++) {
            Options options = choice.options().get(group);
            if (options.isPinned() && options.candidates().size() > 1 && choice.count(group, 0) > 0) {
                request.choices().pin(options.group().machines().get(0).tag()).ifPresent(missed::add);
            }
        }
        return missed;
    }

    private static String at(Pin pin) {
        return pin.place().equals(Place.NOWHERE) ? "" : " (%s)".formatted(pin.place());
    }

    static PlannerException refusal(List<Pin> missed, String because) {
        return new PlannerException("Not all pins can be kept: %s. Not kept: %s. Change them, or take them out."
                .formatted(because, missed.stream().map(pin -> pin + at(pin)).collect(Collectors.joining("; "))));
    }
}
