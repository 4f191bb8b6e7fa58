package slotledger.app.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.Fleet;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Policy;
import slotledger.planner.Pins;
import slotledger.rules.MemoryRules;

/** Says of each pin whether it can be kept by the rules and by what else was decided. */
final class ChoicesCheck {

    private final Pins pins;

    ChoicesCheck(MemoryRules rules, Fleet fleet, Optional<Policy> policy) {
        pins = new Pins(rules, fleet, policy);
    }

    List<Finding> findings(Choices choices) {
        List<Finding> findings = new ArrayList<>();
        for (Pin pin : choices.pins()) {
            Optional<String> hindrance = pins.hindrance(pin, choices);
            hindrance.ifPresent(why -> findings.add(new Finding(Severity.ERROR, "pin-refused", pin.place(),
                    Optional.of(pin.machine()), "", why, "a population that the rules and the policy allow",
                    "Change the pin, or take it out.")));
            if (hindrance.isEmpty()) {
                pins.doubt(pin).ifPresent(doubt -> findings.add(new Finding(Severity.WARNING, "pin-in-doubt",
                        pin.place(), Optional.of(pin.machine()), "", doubt, "", "Try it on one machine first.")));
            }
        }
        return findings;
    }
}
