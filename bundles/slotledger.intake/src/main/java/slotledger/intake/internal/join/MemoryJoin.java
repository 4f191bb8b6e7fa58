package slotledger.intake.internal.join;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import slotledger.intake.internal.value.Texts;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.observed.Comparison;
import slotledger.model.observed.Comparison.Outcome;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.observed.Subject;
import slotledger.model.observed.Testimony;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;

/**
 * Joins what two sources say of a machine's memory: slot by slot where their names are the same, else as a whole.
 *
 * @param slots       those that are believed, with what the other source says beyond
 * @param slotCount   of the believed source, else of the other
 * @param total       likewise
 * @param comparisons what was compared
 */
record MemoryJoin(List<ObservedSlot> slots, OptionalInt slotCount, Optional<Capacity> total,
        List<Comparison> comparisons) {

    /** A total may leave out what firmware and graphics hold back: at most an eighth. */
    private static final int HELD_BACK = 8;

    /** @param believed listed first */
    static MemoryJoin of(AssetTag tag, Side believed, Side other) {
        ObservedMachine first = believed.machine();
        ObservedMachine second = other.machine();
        if (first.slots().isEmpty() && first.total().isEmpty() && !second.slots().isEmpty()) {
            return of(tag, other, believed);
        }
        List<Comparison> comparisons = new ArrayList<>();
        List<ObservedSlot> slots = first.slots();
        if (first.slots().isEmpty() || second.slots().isEmpty()) {
            slots = first.slots().isEmpty() ? second.slots() : first.slots();
            totals(tag, believed, other, comparisons);
        } else if (labels(first).isPresent() && labels(first).map(Map::keySet)
                .equals(labels(second).map(Map::keySet))) {
            slots = bySlot(tag, believed, other, comparisons);
        } else {
            Outcome outcome = sizes(first.slots()).equals(sizes(second.slots())) ? Outcome.AGREE : Outcome.DIFFER;
            comparisons.add(new Comparison(tag, Subject.MEMORY, "modules", List.of(
                    said(believed, text(first.slots()), first.place()),
                    said(other, text(second.slots()), second.place())), outcome));
        }
        return new MemoryJoin(slots, first.slotCount().isPresent() ? first.slotCount() : second.slotCount(),
                first.total().or(second::total), comparisons);
    }

    /**
     * One source and its word on the machine.
     *
     * @param ground of the source
     */
    record Side(Ground ground, ObservedMachine machine) {
    }

    private static void totals(AssetTag tag, Side believed, Side other, List<Comparison> comparisons) {
        Optional<Capacity> one = total(believed.machine());
        Optional<Capacity> two = total(other.machine());
        if (one.isEmpty() && two.isEmpty()) {
            return;
        }
        Outcome outcome = one.isEmpty() || two.isEmpty() ? Outcome.ONLY_ONE
                : near(one.get(), two.get()) ? Outcome.AGREE : Outcome.DIFFER;
        comparisons.add(new Comparison(tag, Subject.MEMORY, "total memory", List.of(
                said(believed, one.map(Capacity::toString).orElse(""), believed.machine().place()),
                said(other, two.map(Capacity::toString).orElse(""), other.machine().place())), outcome));
    }

    private static boolean near(Capacity one, Capacity two) {
        Capacity less = one.min(two);
        Capacity more = one.equals(less) ? two : one;
        return more.minus(less).times(HELD_BACK).compareTo(more) <= 0;
    }

    private static Optional<Capacity> total(ObservedMachine machine) {
        return machine.total().or(() -> Optional.of(machine.slots().stream().map(slot -> slot.content().capacity())
                .reduce(Capacity.NONE, Capacity::plus)).filter(sum -> !sum.isNone()));
    }

    private static List<ObservedSlot> bySlot(AssetTag tag, Side believed, Side other, List<Comparison> comparisons) {
        Map<String, ObservedSlot> others = labels(other.machine()).orElseThrow();
        List<ObservedSlot> slots = new ArrayList<>();
        for (ObservedSlot slot : believed.machine().slots()) {
            ObservedSlot second = others.get(key(slot));
            Optional<SlotContent> merged = KindMerge.merge(slot.content(), second.content());
            Outcome outcome = merged.isEmpty() ? Outcome.DIFFER
                    : slot.content().equals(second.content()) ? Outcome.AGREE : Outcome.COMPLETED;
            comparisons.add(new Comparison(tag, Subject.MEMORY, "slot " + slot.label().orElseThrow(), List.of(
                    said(believed, slot.content().toString(), slot.place()),
                    said(other, second.content().toString(), second.place())), outcome));
            slots.add(new ObservedSlot(slot.label(), merged.orElse(slot.content()),
                    slot.part().isEmpty() && merged.isPresent() ? second.part() : slot.part(),
                    slot.serial().isEmpty() && merged.isPresent() ? second.serial() : slot.serial(), slot.place()));
        }
        return slots;
    }

    /** By name without punctuation; empty where a slot has none, or two have the same. */
    private static Optional<Map<String, ObservedSlot>> labels(ObservedMachine machine) {
        Map<String, ObservedSlot> labels = new HashMap<>();
        for (ObservedSlot slot : machine.slots()) {
            if (slot.label().isEmpty() || labels.put(key(slot), slot) != null) {
                return Optional.empty();
            }
        }
        return Optional.of(labels);
    }

    private static String key(ObservedSlot slot) {
        return Texts.key(slot.label().orElse(""));
    }

    private static List<Capacity> sizes(List<ObservedSlot> slots) {
        return slots.stream().map(slot -> slot.content().capacity()).filter(size -> !size.isNone()).sorted().toList();
    }

    private static String text(List<ObservedSlot> slots) {
        return slots.stream().filter(slot -> !slot.content().isEmpty()).map(slot -> slot.content().toString())
                .collect(Collectors.joining(" + "));
    }

    private static Testimony said(Side side, String text, Place place) {
        return new Testimony(side.ground(), text, place);
    }
}
