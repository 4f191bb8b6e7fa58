package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.catalog.internal.match.Names;
import slotledger.model.board.Slot;

/**
 * Maps the slot names of an inventory to the printed labels of a board: as written, else without blanks, case and
 * punctuation, else without words that say no more than "slot", else by number alone. All names must find a label in
 * the same way, each another one; numbers may count from 0 throughout.
 */
final class SlotLabels {

    /** "ChannelA-DIMM0", "Slot 2", "BANK 1", "SODIMM_B" */
    private static final Pattern GENERIC =
            Pattern.compile("(?:memory|mem|module|ram|channel|chan|slot|socket|bank|sodimm|dimm|so)");
    private static final Pattern NUMBER = Pattern.compile("(.*?)0*([0-9]{1,3})");

    private SlotLabels() {
    }

    /**
     * Where each name belongs.
     *
     * @param labels  a printed label for each name, in the order of the names
     * @param shifted whether the inventory was taken to count from 0 where the board counts from 1
     */
    record Mapping(List<String> labels, boolean shifted) {
        Mapping {
            labels = List.copyOf(labels);
        }
    }

    /** @param onlyPrinted only names that are printed labels are taken, none that just count */
    static Optional<Mapping> map(List<String> names, List<Slot> slots, boolean onlyPrinted) {
        List<UnaryOperator<String>> ways = onlyPrinted
                ? List.of(String::strip, Names::normalised)
                : List.of(String::strip, Names::normalised, SlotLabels::bare);
        for (UnaryOperator<String> way : ways) {
            Optional<Mapping> mapping = map(names, slots, way, way, false);
            if (mapping.isPresent()) {
                return mapping;
            }
        }
        return onlyPrinted ? Optional.empty() : byCount(names, slots);
    }

    private static Optional<Mapping> byCount(List<String> names, List<Slot> slots) {
        boolean countsOnly = names.stream().allMatch(name -> bare(name).matches("[0-9]+"));
        Optional<Mapping> byNumber =
                countsOnly ? map(names, slots, SlotLabels::bare, SlotLabels::number, false) : Optional.empty();
        if (byNumber.isPresent() || names.stream().noneMatch(name -> number(name).equals("0"))) {
            return byNumber;
        }
        return map(names, slots, name -> next(bare(name)), SlotLabels::bare, true)
                .or(() -> countsOnly
                        ? map(names, slots, name -> next(bare(name)), SlotLabels::number, true)
                        : Optional.empty());
    }

    private static Optional<Mapping> map(
            List<String> names, List<Slot> slots, UnaryOperator<String> ofName, UnaryOperator<String> ofLabel,
            boolean shifted) {
        Map<String, String> labels = new HashMap<>();
        for (Slot slot : slots) {
            String key = ofLabel.apply(slot.label());
            if (key.isEmpty() || labels.put(key, slot.label()) != null) {
                return Optional.empty();
            }
        }
        List<String> mapped = new ArrayList<>();
        Set<String> used = new HashSet<>();
        for (String name : names) {
            String label = labels.get(ofName.apply(name));
            if (label == null || !used.add(label)) {
                return Optional.empty();
            }
            mapped.add(label);
        }
        return Optional.of(new Mapping(mapped, shifted));
    }

    /** What is left without the words that only say "slot": "a0", "2". */
    private static String bare(String name) {
        StringBuilder rest = new StringBuilder();
        for (String token : Names.tokens(name)) {
            rest.append(GENERIC.matcher(token).replaceFirst(""));
        }
        return withoutZeros(rest.toString());
    }

    private static String withoutZeros(String text) {
        Matcher matcher = NUMBER.matcher(text);
        return matcher.matches() ? matcher.group(1) + matcher.group(2) : text;
    }

    /** The number at the end; empty where there is none. */
    private static String number(String name) {
        Matcher matcher = NUMBER.matcher(name.strip().toLowerCase(Locale.ROOT));
        return matcher.matches() ? matcher.group(2) : "";
    }

    private static String next(String key) {
        Matcher matcher = NUMBER.matcher(key);
        return matcher.matches() ? matcher.group(1) + (Integer.parseInt(matcher.group(2)) + 1) : key;
    }
}
