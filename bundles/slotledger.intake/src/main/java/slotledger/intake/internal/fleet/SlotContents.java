package slotledger.intake.internal.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.intake.internal.value.CapacityUnit;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Readings;
import slotledger.intake.internal.value.SlotReading;
import slotledger.model.finding.Finding;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;

/** Makes observed slots of readings, and checks the sizes of modules. Equal texts are read once. */
final class SlotContents {

    private static final int CACHE = 5_000;

    private final Consumer<Finding> findings;
    private final Readings readings;
    private final Map<ModuleKind, SlotContent> kinds = new HashMap<>();

    SlotContents(Readings readings, Consumer<Finding> findings) {
        this.readings = readings;
        this.findings = findings;
    }

    SlotReading one(String text, Optional<CapacityUnit> unit) {
        return readings.one(text, unit);
    }

    ObservedSlot unread(Optional<String> label, String text, Place place) {
        return new ObservedSlot(label, new SlotContent.Unread(text), "", "", place);
    }

    ObservedSlot observe(Optional<String> label, SlotReading reading, String serial, Place place) {
        List<Doubt> doubts = new ArrayList<>(reading.doubts());
        SlotContent content = switch (reading.state()) {
            case EMPTY -> SlotContent.EMPTY;
            case FILLER -> new SlotContent.Filled(reading.filler().orElseThrow());
            case UNREAD -> new SlotContent.Unread(reading.text());
            case MODULE -> module(reading, doubts);
        };
        doubts.forEach(doubt -> findings.accept(doubt.at(place, reading.text())));
        return new ObservedSlot(label, content, reading.part(), serial, place);
    }

    private SlotContent module(SlotReading reading, List<Doubt> doubts) {
        Optional<ModuleKind> kind = reading.facts().kind(doubts);
        if (kind.isEmpty()) {
            return new SlotContent.Unread(reading.text());
        }
        Optional<Doubt> size = ModuleSize.check(kind.get());
        if (size.isPresent()) {
            doubts.add(size.get());
            return new SlotContent.Unread(reading.text());
        }
        if (kinds.size() > CACHE) {
            kinds.clear();
        }
        return kinds.computeIfAbsent(kind.get(), SlotContent::of);
    }
}
