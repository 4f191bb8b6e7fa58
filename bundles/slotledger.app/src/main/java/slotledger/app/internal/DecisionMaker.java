package slotledger.app.internal;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.project.Decision;
import slotledger.model.project.Decision.Correction;
import slotledger.model.project.Decision.Mute;
import slotledger.model.project.Decision.Pinned;
import slotledger.model.project.Fact;
import slotledger.model.task.Progress;

/** Makes decisions of what people say, with what the data said when they did. */
final class DecisionMaker {

    private final Intake intake;

    DecisionMaker(Intake intake) {
        this.intake = intake;
    }

    Decision correction(Survey survey, AssetTag tag, Fact fact, String value) throws DeskException {
        try {
            List<ObservedMachine> machines = intake.readFleet(survey.project().inventories(),
                    survey.project().mapping(), Progress.NONE).value().machines();
            ObservedMachine machine = machines.stream().filter(each -> each.tag().equals(tag)).findFirst()
                    .orElseThrow(() -> new DeskException(Trouble.INPUT, "The inventory lists no machine " + tag
                            + ", so nothing of it can be corrected. The tag must be written as it is there."));
            return new Correction(tag, fact, ObservedFacts.of(machine, fact), value);
        } catch (IntakeException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    Decision pin(Survey survey, AssetTag tag, Map<String, String> slots) throws DeskException {
        Machine machine = survey.fleet().machines().stream().filter(each -> each.tag().equals(tag)).findFirst()
                .orElseThrow(() -> new DeskException(Trouble.INPUT, "There is no machine " + tag
                        + " with a known board, so it can't be pinned. \"check\" says what is known of it."));
        for (String slot : slots.keySet()) {
            if (!machine.population().contents().containsKey(slot)) {
                throw new DeskException(Trouble.INPUT, "The machine " + tag + " has no slot " + slot + "; it has "
                        + machine.population().contents().keySet() + ".");
            }
        }
        return new Pinned(tag, slots, ProjectPins.text(machine.population()));
    }

    /** A mute for each text that was seen. */
    Set<Mute> mutes(Survey survey, String code, Optional<AssetTag> machine) throws DeskException {
        List<Finding> meant = survey.findings().stream()
                .filter(finding -> finding.code().equals(code) && finding.machine().equals(machine)).toList();
        if (meant.stream().anyMatch(finding -> finding.severity() == Severity.ERROR)) {
            throw new DeskException(Trouble.INPUT, "An error can't be muted, because something is left out for it: "
                    + meant.get(0));
        }
        Set<Mute> mutes = new LinkedHashSet<>();
        meant.stream().filter(finding -> finding.severity() == Severity.WARNING)
                .forEach(finding -> mutes.add(Mutes.of(finding)));
        if (mutes.isEmpty()) {
            throw new DeskException(Trouble.INPUT, "There is no warning " + code
                    + machine.map(tag -> " about machine " + tag).orElse(" that is about no machine")
                    + ". \"check --json\" shows the code and the machine of each finding.");
        }
        return mutes;
    }
}
