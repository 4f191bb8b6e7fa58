package slotledger.catalog.internal.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.board.Redundancy;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.RedundancyTerms.FillSet;
import slotledger.model.board.RedundancyTerms.Share;

/** Reads what a board asks for, and leaves usable, where memory is mirrored or kept as spare. */
final class RedundancyReading {

    private static final List<String> KEYS = List.of("share", "ignored-channels", "sets", "channel-ranks");
    private static final List<String> SET_KEYS = List.of("slots", "processors");
    private static final int MOST_RANKS = 64;

    private final SlotReading slots;
    private final int processorSockets;

    RedundancyReading(SlotReading slots, int processorSockets) {
        this.slots = slots;
        this.processorSockets = processorSockets;
    }

    List<RedundancyTerms> terms(Value value) {
        List<RedundancyTerms> terms = new ArrayList<>();
        value.fields(List.copyOf(Words.REDUNDANCIES.keySet())).ifPresent(fields -> Words.REDUNDANCIES.forEach(
                (word, redundancy) -> fields.find(word)
                        .flatMap(one -> one.fields(KEYS))
                        .ifPresent(found -> terms.add(terms(redundancy, found)))));
        return terms;
    }

    private RedundancyTerms terms(Redundancy redundancy, Fields fields) {
        Optional<Share> share = fields.find("share").flatMap(value -> value.parsed(Measures::share, Measures.SHARE));
        return new RedundancyTerms(
                redundancy,
                // Mirrored means that everything is there twice; a document that leaves less says so.
                redundancy == Redundancy.MIRRORED ? share.or(() -> Optional.of(new Share(1, 2))) : share,
                fields.find("ignored-channels").map(this::channels).orElse(Set.of()),
                fields.find("sets").map(this::sets).orElse(List.of()),
                fields.find("channel-ranks").map(value -> value.number(1, MOST_RANKS)).orElse(OptionalInt.empty()));
    }

    private Set<String> channels(Value value) {
        Set<String> names = new LinkedHashSet<>();
        for (Value item : value.items()) {
            Optional<String> name = item.text();
            if (name.isPresent() && !slots.hasChannel(name.get())) {
                item.wrong("one of the channels " + String.join(", ", slots.channelNames()),
                        "Write the name as in \"channels\".");
            } else {
                name.ifPresent(names::add);
            }
        }
        return names;
    }

    private List<FillSet> sets(Value value) {
        if (!value.isList()) {
            value.wrong("a list of sets, each with a hyphen", "Write one set a line: \"- [A1, B1]\".");
            return List.of();
        }
        return value.items().stream().flatMap(item -> set(item).stream()).toList();
    }

    private Optional<FillSet> set(Value value) {
        if (!value.isMapping()) {
            return set(value, 1);
        }
        Optional<Fields> fields = value.fields(SET_KEYS);
        int processors = fields.flatMap(known -> known.find("processors"))
                .map(number -> number.number(1, processorSockets).orElse(1))
                .orElse(1);
        return fields.flatMap(known -> known.require("slots", "[A1, B1]")).flatMap(labels -> set(labels, processors));
    }

    private Optional<FillSet> set(Value labels, int processors) {
        List<String> filled = slots.labels(labels);
        return filled.isEmpty() ? Optional.empty() : Optional.of(new FillSet(processors, filled));
    }
}
