package slotledger.model.board;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;

/**
 * A system model's memory side, as its own document describes it.
 *
 * @param id               stable id
 * @param maker            maker's name
 * @param model            model name
 * @param aliases          other names an inventory may use for exactly this board
 * @param form             kind of computer
 * @param processorSockets how many processors fit
 * @param processors       processors it may carry, with their own limits; empty means none are told apart
 * @param channels         all channels, in the document's order
 * @param slots            all slots, in the document's order, soldered memory among them
 * @param takes            allowed ways of filling, at least one
 * @param largestTotal     most memory the document allows in all
 * @param addressable      most memory the chipset addresses; what is above is installed but not seen
 * @param fill             which slots come first
 * @param banks            sockets that are filled together
 * @param redundancies     terms of the ways of keeping memory back, one each
 * @param interleave       what becomes of unequal channels
 * @param rateLimits       printed limits of the rate
 * @param notes            for the technician: how to reach the slots, what to look out for
 * @param source           the document most facts are from
 * @param sources          facts that have another source
 */
public record Board(
        BoardId id,
        String maker,
        String model,
        List<String> aliases,
        BoardForm form,
        int processorSockets,
        List<Processor> processors,
        List<Channel> channels,
        List<Slot> slots,
        List<Takes> takes,
        Optional<Capacity> largestTotal,
        Optional<Capacity> addressable,
        Fill fill,
        Banks banks,
        List<RedundancyTerms> redundancies,
        Interleave interleave,
        List<RateLimit> rateLimits,
        List<String> notes,
        Source source,
        Map<BoardFact, Source> sources) {

    public Board {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(maker, "maker");
        Objects.requireNonNull(model, "model");
        aliases = List.copyOf(aliases);
        Objects.requireNonNull(form, "form");
        processors = List.copyOf(processors);
        channels = List.copyOf(channels);
        slots = List.copyOf(slots);
        takes = List.copyOf(takes);
        Objects.requireNonNull(largestTotal, "largestTotal");
        Objects.requireNonNull(addressable, "addressable");
        Objects.requireNonNull(fill, "fill");
        Objects.requireNonNull(banks, "banks");
        redundancies = List.copyOf(redundancies);
        Objects.requireNonNull(interleave, "interleave");
        rateLimits = List.copyOf(rateLimits);
        notes = List.copyOf(notes);
        Objects.requireNonNull(source, "source");
        sources = Map.copyOf(sources);
        if (processorSockets < 1) {
            throw new IllegalArgumentException(
                    "The processor sockets (%d) of board %s must be at least 1.".formatted(processorSockets, id));
        }
        if (slots.isEmpty() || takes.isEmpty()) {
            throw new IllegalArgumentException("The board %s must have slots and say what they take.".formatted(id));
        }
        checkNames(id, channels, slots, takes, fill);
        Set<String> labels = slots.stream().map(Slot::label).collect(Collectors.toSet());
        banks.list().forEach(bank -> checkLabels(id, labels, "bank " + bank.name(), bank.slots()));
        for (RedundancyTerms terms : redundancies) {
            String where = "sets for " + terms.redundancy().text() + " memory";
            terms.sets().forEach(set -> checkLabels(id, labels, where, set.slots()));
        }
    }

    private static void checkNames(
            BoardId id, List<Channel> channels, List<Slot> slots, List<Takes> takes, Fill fill) {
        Set<String> channelNames = channels.stream().map(Channel::name).collect(Collectors.toSet());
        if (channelNames.size() != channels.size()) {
            throw new IllegalArgumentException("The channels of board %s must have different names.".formatted(id));
        }
        Set<String> labels = new HashSet<>();
        for (Slot slot : slots) {
            if (!labels.add(slot.label())) {
                throw new IllegalArgumentException(
                        "The slot label %s of board %s must not occur twice.".formatted(slot.label(), id));
            }
            if (!channelNames.contains(slot.channel())) {
                throw new IllegalArgumentException(
                        "The channel %s of slot %s of board %s must be one of the channels %s."
                                .formatted(slot.channel(), slot.label(), id, channelNames));
            }
        }
        checkLabels(id, labels, "fill order", fill.order());
        fill.table().forEach(row -> checkLabels(id, labels, "fill table", row.slots()));
        takes.forEach(way -> checkLabels(id, labels, "slots of what it takes", way.slots()));
    }

    private static void checkLabels(BoardId id, Set<String> labels, String where, Iterable<String> used) {
        for (String label : used) {
            if (!labels.contains(label)) {
                throw new IllegalArgumentException(
                        "The slot %s in the %s of board %s must be one of its slots %s."
                                .formatted(label, where, id, labels));
            }
        }
    }

    /** "Maker Model". */
    public String name() {
        return maker + " " + model;
    }

    /** Where a fact is from: its own source, else the board's main document. */
    public Source sourceOf(BoardFact fact) {
        return sources.getOrDefault(fact, source);
    }

    /** The slot with this label; fails for a label the board doesn't have. */
    public Slot slot(String label) {
        return findSlot(label)
                .orElseThrow(() -> new IllegalArgumentException("The board %s has no slot %s.".formatted(id, label)));
    }

    public Optional<Slot> findSlot(String label) {
        return slots.stream().filter(slot -> slot.label().equals(label)).findFirst();
    }

    /** The channel with this name; fails for a name the board doesn't have. */
    public Channel channel(String name) {
        return channels.stream()
                .filter(channel -> channel.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The board %s has no channel %s.".formatted(id, name)));
    }

    /** What the board asks for where memory is kept back so; empty where its document doesn't know that. */
    public Optional<RedundancyTerms> terms(Redundancy redundancy) {
        return redundancies.stream().filter(terms -> terms.redundancy() == redundancy).findFirst();
    }

    /** The sockets, in the document's order. */
    public List<Slot> sockets() {
        return slots.stream().filter(Slot::isSocket).toList();
    }
}
