package slotledger.intake.internal.choices;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import slotledger.intake.Known;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.FillerWords;
import slotledger.intake.internal.value.Nearest;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;
import slotledger.intake.internal.value.Written;
import slotledger.model.board.Slot;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.trade.Pin;

/** Makes pins of what is written: looks up machines, slots and modules. */
final class PinReader {

    private final Known known;
    private final KindSearch kinds;
    private final BiConsumer<Doubt, Written> findings;
    private final Map<String, Machine> machines;

    PinReader(Known known, KindSearch kinds, BiConsumer<Doubt, Written> findings) {
        this.known = known;
        this.kinds = kinds;
        this.findings = findings;
        machines = known.fleet().machines().stream()
                .collect(Collectors.toMap(machine -> key(machine.tag()), machine -> machine, (one, other) -> one));
    }

    private static String key(AssetTag tag) {
        return tag.value().strip().toLowerCase(Locale.ROOT);
    }

    /**
     * The pin; empty, with a finding, where the machine is not known or one of its slots was not understood.
     *
     * @param slots label to content; none where the machine is to stay as it is
     */
    Optional<Pin> read(Written tag, List<Map.Entry<Written, Written>> slots) {
        Machine machine = machines.get(tag.text().strip().toLowerCase(Locale.ROOT));
        if (machine == null) {
            unknownMachine(tag);
            return Optional.empty();
        }
        Map<String, SlotContent> contents = new LinkedHashMap<>();
        boolean complete = true;
        for (Map.Entry<Written, Written> each : slots) {
            Optional<Slot> slot = slot(machine, each.getKey());
            Optional<SlotContent> content = slot.isEmpty() ? Optional.empty() : content(each.getValue());
            complete &= content.isPresent();
            if (content.isPresent() && contents.putIfAbsent(slot.get().label(), content.get()) != null) {
                findings.accept(Doubt.error("slot-twice", "The slot %s stands here twice.".formatted(
                        slot.get().label()), "every slot once", "Delete one of them."), each.getKey());
                complete = false;
            }
        }
        return complete ? Optional.of(new Pin(machine.tag(), contents, tag.place())) : Optional.empty();
    }

    private void unknownMachine(Written tag) {
        boolean isUnresolved = known.unresolved().stream()
                .anyMatch(machine -> key(machine.tag()).equals(tag.text().strip().toLowerCase(Locale.ROOT)));
        if (isUnresolved) {
            findings.accept(Doubt.error("pinned-machine-not-planned",
                    "The machine %s can't be planned yet: its board or its modules are not known.".formatted(
                            tag.text()), "a machine whose board is known",
                    "See its other findings, or take the pin out."), tag);
            return;
        }
        List<String> tags = known.fleet().machines().stream().map(machine -> machine.tag().value()).toList();
        findings.accept(Doubt.error("pinned-machine-unknown",
                "No machine of the inventory has this asset tag.", "an asset tag of the inventory",
                Nearest.to(tag.text(), tags).map("Maybe \"%s\" is meant."::formatted)
                        .orElse("Write it as the inventory does.")), tag);
    }

    private Optional<Slot> slot(Machine machine, Written label) {
        List<Slot> slots = known.fleet().boardOf(machine).slots();
        Optional<Slot> slot = slots.stream()
                .filter(each -> each.label().equals(label.text().strip()))
                .findFirst()
                .or(() -> slots.stream().filter(each -> Texts.key(each.label()).equals(Texts.key(label.text())))
                        .findFirst());
        List<String> labels = slots.stream().filter(Slot::isSocket).map(Slot::label).toList();
        if (slot.isEmpty()) {
            findings.accept(Doubt.error("pinned-slot-unknown",
                    "The board of %s (%s) has no slot of this name; its slots are %s.".formatted(
                            machine.tag(), machine.board(), String.join(", ", labels)), "a slot of the board",
                    Nearest.to(label.text(), labels).map("Maybe \"%s\" is meant."::formatted)
                            .orElse("Write it as it is printed on the board.")), label);
        } else if (!slot.get().isSocket()) {
            findings.accept(Doubt.error("pinned-slot-fixed",
                    "What is in the slot %s of %s can't be changed; slots that can are %s.".formatted(
                            slot.get().label(), machine.tag(), String.join(", ", labels)), "a socket",
                    "Take the slot out of the pin."), label);
            return Optional.empty();
        }
        return slot;
    }

    private Optional<SlotContent> content(Written written) {
        if (!written.text().isBlank() && Words.sayEmpty(written.text())) {
            return Optional.of(SlotContent.EMPTY);
        }
        Optional<Filler> filler = FillerWords.read(written.text());
        return filler.isPresent() ? filler.map(SlotContent::of) : kinds.one(written).map(SlotContent::of);
    }
}
