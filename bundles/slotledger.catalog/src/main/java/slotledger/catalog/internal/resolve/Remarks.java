package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.source.Place;

/** Gathers the findings about one machine. An error means the machine can't be resolved. */
final class Remarks {

    private final ObservedMachine machine;
    private final List<Finding> findings = new ArrayList<>();

    Remarks(ObservedMachine machine) {
        this.machine = machine;
    }

    void error(String code, String seen, String message, String expected, String remedy) {
        add(Severity.ERROR, code, machine.place(), seen, message, expected, remedy);
    }

    void errorAt(Place place, String code, String seen, String message, String expected, String remedy) {
        add(Severity.ERROR, code, place, seen, message, expected, remedy);
    }

    void warning(String code, String seen, String message, String expected, String remedy) {
        add(Severity.WARNING, code, machine.place(), seen, message, expected, remedy);
    }

    void note(String code, String seen, String message, String expected, String remedy) {
        add(Severity.NOTE, code, machine.place(), seen, message, expected, remedy);
    }

    private void add(
            Severity severity, String code, Place place, String seen, String message, String expected, String remedy) {
        Place known = place.equals(Place.NOWHERE) ? machine.place() : place;
        findings.add(new Finding(
                severity, code, known, Optional.of(machine.tag()), seen, message, expected, remedy));
    }

    boolean hasErrors() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }
}
