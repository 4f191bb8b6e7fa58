package slotledger.intake.internal.value;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import slotledger.model.module.Filler;
import slotledger.model.module.Generation;

/** Reads a text about one slot, or about all slots of a machine. */
public final class SlotText {

    /** Nobody builds more slots into one machine; a larger count is a typing mistake (from memory). */
    private static final int MOST = 128;

    /** 8GB + 8GB | 4GB; 4GB | 2x4GB DDR3, 2 empty | 4GB and 4GB | one line a slot; not the comma of 1,5 GB. */
    private static final Pattern BETWEEN =
            Pattern.compile("\\s*(?:[+;|\\n&]|,(?!\\d)|(?<!\\d),)\\s*|\\s+(?:and|und|et|y|e|en|i|oraz)\\s+",
            Pattern.CASE_INSENSITIVE);
    /** 4/4/-/- | 8GB/empty. */
    private static final Pattern SLASH = Pattern.compile("\\s*/\\s*");
    /** A1: 8GB | DIMM 2 = empty | ChannelA-DIMM0: 4GB | Slot 1 - 4GB is not read: a dash has other meanings. */
    private static final Pattern LABELLED = Pattern.compile("([\\p{L}#][\\p{L}\\d _./#-]{0,30}?)\\s*[:=]\\s*(.+)");
    /** 2 empty | 2x empty | 2 slots free. */
    private static final Pattern COUNT_FIRST = Pattern.compile("(\\d{1,3})\\s?[x*]?\\s?(\\D+)");
    /** free: 2 | empty 2. */
    private static final Pattern COUNT_LAST = Pattern.compile("(\\D+?)[\\s:=]*(\\d{1,3})");

    private SlotText() {
    }

    /** Reads a cell that speaks of one slot. */
    public static SlotReading one(String text, Optional<CapacityUnit> unit) {
        if (text.isBlank() || Words.sayEmpty(text)) {
            return SlotReading.empty(text);
        }
        Optional<Filler> filler = FillerWords.read(text);
        if (filler.isPresent()) {
            return SlotReading.filler(filler.get(), text);
        }
        ModuleReading reading = ModuleText.read(text, unit);
        List<Doubt> doubts = new ArrayList<>(reading.doubts());
        boolean readable = reading.facts().capacity().isPresent() && reading.count() == 1;
        if (reading.count() > 1) {
            doubts.add(Doubt.warning("modules-in-one-slot", "%d modules are written for one slot."
                    .formatted(reading.count()), "one module", "Give each slot its own module."));
        } else if (!readable) {
            doubts.add(unread(text, reading));
        } else if (!reading.rest().isEmpty()) {
            doubts.add(reading.restDoubt());
        }
        return readable
                ? SlotReading.module(text, reading.facts(), reading.part(), doubts)
                : SlotReading.unread(text, reading.facts(), reading.part(), doubts);
    }

    /** Reads a cell that speaks of all slots of a machine. */
    public static List<SlotReading> all(String text, Optional<CapacityUnit> unit) {
        List<SlotReading> slots = new ArrayList<>();
        Facts common = new Facts();
        for (String part : parts(text, unit)) {
            Optional<List<SlotReading>> read = slots(part, unit);
            if (read.isPresent()) {
                slots.addAll(read.get());
            } else {
                common = common.and(ModuleText.read(part, Optional.empty()).facts());
            }
        }
        if (slots.isEmpty()) {
            ModuleReading reading = ModuleText.read(text, unit);
            return List.of(SlotReading.unread(text, reading.facts(), reading.part(), List.of(unread(text, reading))));
        }
        return oneGeneration(slots, common);
    }

    private static Doubt unread(String text, ModuleReading reading) {
        String why = Words.UNKNOWN.says(text)
                ? "What is in the slot is not known."
                : reading.facts().isEmpty()
                        ? "This was not understood."
                        : "No capacity was found; understood: \"%s\".".formatted(reading.understood());
        return Doubt.warning("slot-not-understood", why, "a module such as 8GB DDR4-2666, or empty",
                "Look into the machine and write its module, or empty.");
    }

    private static List<String> parts(String text, Optional<CapacityUnit> unit) {
        String lines = text.replace("\r\n", "\n").replace('\r', '\n').strip();
        List<String> bySlash = List.of(SLASH.split(lines));
        if (bySlash.size() > 1 && bySlash.stream().allMatch(part -> isPlain(part, unit))) {
            return bySlash;
        }
        List<String> parts = new ArrayList<>();
        for (String part : BETWEEN.split(lines)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return inParentheses(parts);
    }

    /** A separator inside parentheses belongs to the part: 16GB (2x8GB, dual rank). */
    private static List<String> inParentheses(List<String> parts) {
        List<String> joined = new ArrayList<>();
        int open = 0;
        for (String part : parts) {
            if (open > 0) {
                joined.set(joined.size() - 1, joined.get(joined.size() - 1) + ", " + part);
            } else {
                joined.add(part);
            }
            open = Math.max(0, open + count(part, '(') - count(part, ')'));
        }
        return joined;
    }

    private static int count(String text, char wanted) {
        return (int) text.chars().filter(character -> character == wanted).count();
    }

    private static boolean isPlain(String part, Optional<CapacityUnit> unit) {
        if (Words.sayEmpty(part)) {
            return true;
        }
        ModuleReading reading = ModuleText.read(part, unit);
        return reading.facts().capacity().isPresent() && reading.rest().isEmpty() && reading.part().isEmpty();
    }

    /** The slots a part speaks of; empty where it only adds facts about the modules of the other parts. */
    private static Optional<List<SlotReading>> slots(String part, Optional<CapacityUnit> unit) {
        Optional<Integer> emptySlots = emptySlots(part);
        if (emptySlots.isPresent()) {
            return Optional.of(Collections.nCopies(emptySlots.get(), SlotReading.empty(part)));
        }
        Matcher labelled = LABELLED.matcher(part);
        if (labelled.matches() && ModuleText.read(labelled.group(1), Optional.empty()).facts().generation().isEmpty()) {
            return Optional.of(List.of(one(labelled.group(2), unit).inSlot(Optional.of(labelled.group(1).strip()))));
        }
        if (FillerWords.read(part).isPresent()) {
            return Optional.of(List.of(SlotReading.filler(FillerWords.read(part).get(), part)));
        }
        ModuleReading reading = ModuleText.read(part, unit);
        if (reading.facts().capacity().isEmpty()) {
            boolean onlyFacts = !reading.facts().isEmpty() && reading.rest().isEmpty();
            return onlyFacts ? Optional.empty()
                    : Optional.of(List.of(SlotReading.unread(part, reading.facts(), reading.part(),
                            List.of(unread(part, reading)))));
        }
        List<Doubt> doubts = new ArrayList<>(reading.doubts());
        if (!reading.rest().isEmpty()) {
            doubts.add(reading.restDoubt());
        }
        if (reading.count() > MOST) {
            return Optional.of(List.of(SlotReading.unread(part, reading.facts(), reading.part(), doubts)));
        }
        SlotReading first = SlotReading.module(part, reading.facts(), reading.part(), doubts);
        List<SlotReading> same = new ArrayList<>(List.of(first));
        SlotReading next = SlotReading.module(part, reading.facts(), reading.part(), List.of());
        same.addAll(Collections.nCopies(reading.count() - 1, next));
        return Optional.of(same);
    }

    private static Optional<Integer> emptySlots(String part) {
        if (Words.sayEmpty(part)) {
            return Optional.of(1);
        }
        Matcher first = COUNT_FIRST.matcher(part);
        if (first.matches() && Words.EMPTY.says(withoutSlotWords(first.group(2)))) {
            return Optional.of(Math.min(MOST, Integer.parseInt(first.group(1))));
        }
        Matcher last = COUNT_LAST.matcher(part);
        if (last.matches() && Words.EMPTY.says(withoutSlotWords(last.group(1)))) {
            return Optional.of(Math.min(MOST, Integer.parseInt(last.group(2))));
        }
        return Words.EMPTY.says(withoutSlotWords(part)) ? Optional.of(1) : Optional.empty();
    }

    private static String withoutSlotWords(String text) {
        return List.of(Texts.tidy(text).toLowerCase(Locale.ROOT).split(" ")).stream()
                .filter(word -> !Words.SLOT.says(word)).collect(Collectors.joining(" "));
    }

    /** Modules of two generations never work in one machine, so one that is named holds for all. */
    private static List<SlotReading> oneGeneration(List<SlotReading> slots, Facts common) {
        List<Generation> named = slots.stream().flatMap(slot -> slot.facts().generation().stream()).distinct().toList();
        List<SlotReading> all = new ArrayList<>();
        for (SlotReading slot : slots) {
            Facts facts = slot.facts().or(common);
            boolean takes = named.size() == 1 && slot.state() == SlotReading.State.MODULE;
            all.add(slot.withFacts(takes ? facts.ofGeneration(named.get(0)) : facts));
        }
        return all;
    }
}
