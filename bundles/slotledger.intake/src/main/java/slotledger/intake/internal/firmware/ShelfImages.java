package slotledger.intake.internal.firmware;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdModule;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.model.finding.Finding;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;

/**
 * Reads a folder or archive with the SPD image of each module on the shelf; each image is one module. What is printed
 * on a module's label may stand in a file beside its image: "17.label.txt" beside "17.bin".
 */
public final class ShelfImages {

    private final Map<Piece, Integer> pieces = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Place> serials = new HashMap<>();
    private final List<Module> modules = new ArrayList<>();

    /** Adds what a folder, archive or file holds. */
    public void read(Path path, Progress progress) throws IntakeException {
        FirmwareFiles.each(path, "Reading the shelf", (reading, place) -> {
            if (reading instanceof FirmwareReading.OfModule found) {
                module(found.module(), place, LabelFile.of(reading.place()));
            } else if (!LabelFile.isOne(reading.place())) {
                findings.add(Doubt.error("shelf-not-a-module", "This is no SPD image of a module; it was left out.",
                        "the SPD of one module, as bytes or as hex", "Read the module again, or move the file away.")
                        .at(place, reading.problems().stream().findFirst().map(problem -> problem.seen()).orElse("")));
            }
        }, progress);
    }

    private void module(SpdModule module, Place place, Optional<LabelFile> label) {
        Optional<ModuleKind> kind = SpdKind.of(module);
        String seen = module.get(SpdFacts.PART).orElse("");
        if (kind.isEmpty()) {
            findings.add(Doubt.error("shelf-capacity-unknown",
                    "The image doesn't tell the module's capacity; it was left out.", "a whole SPD image",
                    "Read the module again, or list it by its label in a shelf file.").at(place, seen));
            return;
        }
        if (!module.problems().isEmpty()) {
            findings.add(Doubt.warning("shelf-image-doubtful", "The image is damaged or contradicts itself: %s"
                    .formatted(module.problems().get(0)), "a whole image with right checksums",
                    "Compare it with the label before the module is used.").at(place, seen));
        }
        Optional<String> serial = serial(module);
        Place other = serial.map(number -> serials.putIfAbsent(number, place)).orElse(null);
        if (other != null) {
            findings.add(Doubt.error("shelf-twice", "This module's image is there already: %s. It was counted once."
                    .formatted(other), "one image a module", "Delete one of the files.").at(place, serial.get()));
            return;
        }
        if (label.isPresent() && !label.get().agrees(kind.get())) {
            findings.add(Doubt.error("shelf-label-differs",
                    "The module's image says %s, its label (%s) says %s; it was not counted.".formatted(kind.get(),
                            label.get().name(), label.get().kind().map(ModuleKind::toString).orElse("nothing clear")),
                    "an image and a label that agree",
                    "Look at the module: images can be rewritten and labels changed. List it by what is right in a"
                            + " shelf file, and move the image away.").at(place, label.get().text()));
            return;
        }
        modules.add(new Module(seen, module.get(SpdFacts.SERIAL).orElse(""), place));
        pieces.merge(kind.get(), 1, Integer::sum);
    }

    /** Modules of the shelf that firmware also finds in a machine. */
    public List<Finding> alsoIn(ObservedFleet fleet) {
        Map<String, ObservedMachine> installed = new HashMap<>();
        for (ObservedMachine machine : fleet.machines()) {
            for (ObservedSlot slot : machine.slots()) {
                if (!slot.part().isBlank() && !slot.serial().isBlank()) {
                    installed.putIfAbsent(key(slot.part(), slot.serial()), machine);
                }
            }
        }
        List<Finding> found = new ArrayList<>();
        for (Module module : modules) {
            ObservedMachine machine = installed.get(key(module.part(), module.serial()));
            if (machine != null && !module.serial().isBlank()) {
                found.add(Doubt.warning("shelf-module-in-machine",
                        "This module is on the shelf by its image, and in machine %s by what is said there (%s)."
                                .formatted(machine.tag(), machine.place()), "a module in one place",
                        "Look which is right; collect the machine's firmware again, or delete the image.")
                        .at(module.place(), module.part() + " " + module.serial()).about(machine.tag()));
            }
        }
        return found;
    }

    private static String key(String part, String serial) {
        return Texts.key(part) + " " + Texts.key(serial).replaceFirst("^(0x)?0*", "");
    }

    /** A module and its numbers. */
    private record Module(String part, String serial, Place place) {
    }

    /** Maker, part and number of the module; empty where the image has none, which many cheap modules lack. */
    private static Optional<String> serial(SpdModule module) {
        return module.get(SpdFacts.SERIAL).filter(number -> !number.replaceAll("[0F]", "").isEmpty())
                .map(number -> "%s %s %s".formatted(module.get(SpdFacts.MAKER).orElse(""),
                        module.get(SpdFacts.PART).orElse(""), number));
    }

    public Map<Piece, Integer> pieces() {
        return Collections.unmodifiableMap(pieces);
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }
}
