package slotledger.app.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.app.Project;
import slotledger.app.internal.Decisions.Made;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.project.Decision.Correction;
import slotledger.model.source.Place;

/** Puts what people corrected over what an inventory says, and says where the inventory has changed since. */
final class Corrections {

    private final List<Made<Correction>> corrections;

    Corrections(Project project) {
        corrections = Decisions.of(project, Correction.class);
    }

    ObservedFleet applied(ObservedFleet fleet, List<Finding> findings) {
        if (corrections.isEmpty()) {
            return fleet;
        }
        List<ObservedMachine> machines = new ArrayList<>(fleet.machines());
        Map<AssetTag, Integer> places = new HashMap<>();
        for (int i = 0; i < machines.size(); i++) {
            places.put(machines.get(i).tag(), i);
        }
        for (Made<Correction> each : corrections) {
            Correction correction = each.decision();
            Integer place = places.get(correction.machine());
            if (place == null) {
                findings.add(missing(each));
            } else {
                ObservedMachine machine = machines.get(place);
                compare(each, machine, findings);
                machines.set(place, ObservedFacts.with(machine, correction.fact(), correction.value()));
            }
        }
        return new ObservedFleet(machines, fleet.findings());
    }

    private static void compare(Made<Correction> made, ObservedMachine machine, List<Finding> findings) {
        Correction correction = made.decision();
        String now = ObservedFacts.of(machine, correction.fact());
        if (now.equals(correction.value())) {
            findings.add(new Finding(Severity.NOTE, "correction-no-longer-needed", machine.place(),
                    Optional.of(machine.tag()), now, "The inventory now agrees with what " + made.by() + ".", "",
                    "Nothing; or " + made.takeBack() + "."));
        } else if (!now.equals(correction.seen())) {
            findings.add(new Finding(Severity.WARNING, "correction-conflict", machine.place(),
                    Optional.of(machine.tag()), now,
                    "The %s of %s was \"%s\" when %s that it is \"%s\"; the inventory says otherwise now.".formatted(
                            correction.fact().text(), machine.tag(), correction.seen(), made.by(), correction.value()),
                    "", "The correction still holds. If the inventory is right, " + made.takeBack()
                            + "; if not, correct it again."));
        }
    }

    private static Finding missing(Made<Correction> made) {
        Correction correction = made.decision();
        return new Finding(Severity.WARNING, "correction-without-machine", Place.NOWHERE,
                Optional.of(correction.machine()), "",
                "%s that the %s of %s is \"%s\", but the inventory no longer lists that machine.".formatted(
                        made.by(), correction.fact().text(), correction.machine(), correction.value()),
                "", "If it is gone, " + made.takeBack() + "; if its tag has changed, correct it under the new one.");
    }
}
