package slotledger.intake.internal.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import slotledger.intake.internal.value.Texts;

/**
 * Recognises headings of slot columns: "Slot 1", "DIMM A2", "RAM1", "ChannelA-DIMM0", "Slot 2 size", "Part number slot
 * 2". In the word list a # stands for the number or letters of the slot.
 */
final class SlotHeadings {

    /** 1 | A2 | P1 | 12 | A | 1B. */
    private static final String NUMBER = "(?:[a-z]{0,2}\\d{1,2}[a-z]?|[a-h])";

    private final List<Pattern> slots = new ArrayList<>();
    private final Map<String, Field> aspects = new HashMap<>();

    SlotHeadings(Map<String, List<String>> words) {
        words.forEach((section, headings) -> {
            Field field = Field.ofId(section).orElseThrow();
            if (field == Field.SLOT) {
                headings.forEach(heading -> slots.add(pattern(heading)));
            } else if (knows(field)) {
                headings.forEach(heading -> aspects.put(Texts.key(heading), field));
            }
        });
    }

    static boolean knows(Field field) {
        return switch (field) {
            case SLOT, SLOT_SIZE, SLOT_TYPE, SLOT_RATE, SLOT_PART, SLOT_SERIAL, SLOT_MAKER -> true;
            default -> false;
        };
    }

    private static Pattern pattern(String heading) {
        StringBuilder pattern = new StringBuilder();
        for (String word : Headings.plain(heading).split(" ")) {
            pattern.append(pattern.isEmpty() ? "" : "[ -]*").append(word.replace("#", "[ -]*" + NUMBER));
        }
        return Pattern.compile(pattern.toString());
    }

    /** The meaning of a heading that names a slot, alone or with what the column says of it. */
    Optional<Meaning> meaning(String heading) {
        String text = Texts.tidy(heading.replace('_', ' '));
        if (isSlot(text)) {
            return Optional.of(new Meaning(Field.SLOT, text));
        }
        String[] words = text.split("[ /]+");
        for (int split = 1; split < words.length; split++) {
            String front = join(words, 0, split);
            String back = join(words, split, words.length);
            Field last = aspects.get(Texts.key(back));
            if (last != null && isSlot(front)) {
                return Optional.of(new Meaning(last, front));
            }
            Field first = aspects.get(Texts.key(front));
            if (first != null && isSlot(back)) {
                return Optional.of(new Meaning(first, back));
            }
        }
        return Optional.empty();
    }

    private static String join(String[] words, int from, int to) {
        return String.join(" ", List.of(words).subList(from, to));
    }

    private boolean isSlot(String text) {
        String plain = Headings.plain(text);
        return slots.stream().anyMatch(slot -> slot.matcher(plain).matches());
    }
}
