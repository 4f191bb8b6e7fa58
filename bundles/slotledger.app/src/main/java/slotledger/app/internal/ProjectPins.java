package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Project;
import slotledger.app.internal.Decisions.Made;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.intake.Known;
import slotledger.intake.Reading;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.project.Decision.Pinned;
import slotledger.model.source.Place;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;

/** Adds the pins a project keeps to those of its choices file, and says where the machine holds something else now. */
final class ProjectPins {

    private final Intake intake;
    private final List<Made<Pinned>> pins;

    ProjectPins(Intake intake, Project project) {
        this.intake = intake;
        this.pins = Decisions.of(project, Pinned.class);
    }

    Choices addedTo(Choices choices, Known known, List<Finding> findings) throws DeskException, IntakeException {
        if (pins.isEmpty()) {
            return choices;
        }
        Map<AssetTag, Machine> machines = known.fleet().machines().stream()
                .collect(Collectors.toMap(Machine::tag, machine -> machine));
        List<Pinned> usable = new ArrayList<>();
        for (Made<Pinned> pin : pins) {
            Machine machine = machines.get(pin.decision().machine());
            if (machine == null) {
                findings.add(missing(pin));
            } else {
                compare(pin, machine, findings);
                usable.add(pin.decision());
            }
        }
        Reading<Choices> kept = intake.readChoices(write(usable), known);
        findings.addAll(kept.findings());
        return joined(choices, kept.value(), findings);
    }

    /** What the slots of a machine hold, as it is kept with a pin. */
    static String text(Population population) {
        return population.contents().entrySet().stream().map(slot -> slot.getKey() + " " + slot.getValue())
                .collect(Collectors.joining(", "));
    }

    private static void compare(Made<Pinned> pin, Machine machine, List<Finding> findings) {
        String now = text(machine.population());
        if (!now.equals(pin.decision().seen())) {
            findings.add(new Finding(Severity.WARNING, "pin-conflict", machine.place(), Optional.of(machine.tag()), now,
                    "The machine %s held %s when %s what it is to end with; it holds something else now.".formatted(
                            machine.tag(), pin.decision().seen(), pin.by()),
                    "", "The pin still holds. If it is not meant any more, " + pin.takeBack()
                            + "; if it is, pin it again."));
        }
    }

    private static Finding missing(Made<Pinned> pin) {
        return new Finding(Severity.WARNING, "pin-without-machine", Place.NOWHERE,
                Optional.of(pin.decision().machine()), "",
                "%s what %s is to end with, but no such machine can be planned now.".formatted(pin.by(),
                        pin.decision().machine()),
                "", "See the other findings of the machine; if it is gone, " + pin.takeBack() + ".");
    }

    /** The pins as a choices file, because its words are those of the pins, and one piece of code reads them. */
    private static Path write(List<Pinned> pins) throws DeskException {
        StringBuilder text = new StringBuilder(pins.isEmpty() ? "" : "pins:\n");
        for (Pinned pin : pins) {
            text.append("  - machine: ").append(quoted(pin.machine().value())).append('\n');
            if (pin.slots().isEmpty()) {
                text.append("    slots: as now\n");
            } else {
                text.append("    slots:\n");
                pin.slots().forEach((slot, content) -> text.append("      ").append(quoted(slot)).append(": ")
                        .append(quoted(content)).append('\n'));
            }
        }
        try {
            return Files.writeString(RunFolder.make().resolve("pins-of-the-project.yaml"), text);
        } catch (IOException problem) {
            throw new DeskException(Trouble.OUTPUT, "The folder for temporary files can't be written: "
                    + problem.getMessage() + ".", problem);
        }
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\s+", " ") + "\"";
    }

    private static Choices joined(Choices file, Choices kept, List<Finding> findings) {
        List<Pin> all = new ArrayList<>(kept.pins());
        for (Pin pin : file.pins()) {
            if (kept.pin(pin.machine()).isEmpty()) {
                all.add(pin);
            } else {
                findings.add(new Finding(Severity.WARNING, "pinned-twice", pin.place(), Optional.of(pin.machine()), "",
                        "The choices file pins this machine, and so does an entry of the project; the entry counts.",
                        "", "Take one of them out."));
            }
        }
        return new Choices(all, file.tastes(), file.uniform(), file.mostOpened());
    }
}
