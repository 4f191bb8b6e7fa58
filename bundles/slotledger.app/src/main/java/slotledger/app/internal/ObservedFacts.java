package slotledger.app.internal;

import slotledger.model.machine.Whereabouts;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.project.Fact;

/** What an inventory says of a machine, fact by fact. */
final class ObservedFacts {

    private ObservedFacts() {
    }

    static String of(ObservedMachine machine, Fact fact) {
        return switch (fact) {
            case SERIAL -> machine.serial();
            case MAKER -> machine.maker();
            case MODEL -> machine.model();
            case SITE -> machine.where().site();
            case ROOM -> machine.where().room();
            case COST_CENTRE -> machine.costCentre();
            case ROLE -> machine.role();
            case OPERATING_SYSTEM -> machine.operatingSystem();
            case PROCESSOR -> machine.processor();
        };
    }

    /** The machine with one fact changed. */
    static ObservedMachine with(ObservedMachine machine, Fact changed, String value) {
        return new ObservedMachine(
                machine.tag(),
                changed == Fact.SERIAL ? value : machine.serial(),
                changed == Fact.MAKER ? value : machine.maker(),
                changed == Fact.MODEL ? value : machine.model(),
                new Whereabouts(
                        changed == Fact.SITE ? value : machine.where().site(),
                        changed == Fact.ROOM ? value : machine.where().room()),
                changed == Fact.COST_CENTRE ? value : machine.costCentre(),
                changed == Fact.ROLE ? value : machine.role(),
                changed == Fact.OPERATING_SYSTEM ? value : machine.operatingSystem(),
                changed == Fact.PROCESSOR ? value : machine.processor(),
                machine.processors(),
                machine.redundancy(),
                machine.slotCount(),
                machine.total(),
                machine.slots(),
                machine.place());
    }
}
