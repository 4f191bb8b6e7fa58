package slotledger.catalog.internal.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.board.Channel;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.module.ModuleKind;

/**
 * Reads channels and slots. The channels say which labels belong to them, first position first; the slots say in which
 * order and where on the board they lie, and what is special about one.
 */
final class SlotReading {

    private static final List<String> CHANNEL_KEYS = List.of("slots", "processor", "spans");
    private static final List<String> SLOT_KEYS = List.of("label", "row", "column", "colour", "use", "soldered");
    private static final Map<String, SlotUse> USES = Map.of("socket", SlotUse.SOCKET, "dead", SlotUse.DEAD);
    private static final int MOST = 999;
    private static final int MOST_SPANS = 4;

    private final List<Drawn> channels = new ArrayList<>();
    private final List<Slot> slots = new ArrayList<>();
    private final Map<String, Seat> seats = new LinkedHashMap<>();

    /** The place of a slot in its channel. */
    private record Seat(String channel, int position) {
    }

    /** A channel as the file has it; what a module of it carries may follow from the modules. */
    private record Drawn(String name, int processor, OptionalInt spans) {
    }

    SlotReading(Optional<Value> channels, Optional<Value> slots, int processorSockets) {
        channels.flatMap(value -> value.namedFields("A: [DIMM1, DIMM2]"))
                .ifPresent(fields -> fields.all().forEach(value -> readChannel(value, processorSockets)));
        if (slots.isPresent()) {
            readSlots(slots.get());
        } else {
            seats.keySet().forEach(label -> addSlot(label, SlotUse.SOCKET, 0, this.slots.size()));
        }
    }

    /** The channels, once it is known what their slots take. */
    List<Channel> channels(List<Takes> takes) {
        return channels.stream()
                .map(channel -> new Channel(channel.name(), channel.processor(), channel.spans()
                        .orElseGet(() -> FormLaw.spans(takes, labelsOf(channel.name())))))
                .toList();
    }

    boolean hasChannel(String name) {
        return channels.stream().anyMatch(channel -> channel.name().equals(name));
    }

    List<String> channelNames() {
        return channels.stream().map(Drawn::name).toList();
    }

    private List<String> labelsOf(String channel) {
        return seats.entrySet().stream()
                .filter(entry -> entry.getValue().channel().equals(channel))
                .map(Map.Entry::getKey)
                .toList();
    }

    List<Slot> slots() {
        return slots;
    }

    /** Labels that must be slots of this board, each once. */
    List<String> labels(Value value) {
        List<String> labels = new ArrayList<>();
        for (Value item : value.items()) {
            Optional<String> label = item.text();
            if (label.isPresent() && !seats.containsKey(label.get())) {
                item.wrong("one of the slots " + String.join(", ", seats.keySet()),
                        "Write the label as in \"channels\".");
            } else if (label.isPresent() && labels.contains(label.get())) {
                item.problem("The slot %s is named twice here.".formatted(label.get()), "Name it once.");
            } else {
                label.ifPresent(labels::add);
            }
        }
        return labels;
    }

    private void readChannel(Value value, int processorSockets) {
        int processor = 1;
        OptionalInt spans = OptionalInt.empty();
        Optional<Value> labels = Optional.of(value);
        if (value.isMapping()) {
            Optional<Fields> fields = value.fields(CHANNEL_KEYS);
            processor = fields.flatMap(known -> known.find("processor"))
                    .map(number -> number.number(1, processorSockets).orElse(1))
                    .orElse(1);
            spans = fields.flatMap(known -> known.find("spans"))
                    .map(number -> number.number(1, MOST_SPANS))
                    .orElse(OptionalInt.empty());
            labels = fields.flatMap(known -> known.require("slots", "[A1, A2]"));
        }
        if (value.name().isEmpty()) {
            value.problem("A channel has no name.", "Write its name before the colon.");
            return;
        }
        if (!hasChannel(value.name())) {
            channels.add(new Drawn(value.name(), processor, spans));
        }
        labels.ifPresent(list -> seat(value.name(), list));
    }

    private void seat(String channel, Value labels) {
        int position = 1;
        for (Value item : labels.items()) {
            Optional<String> label = item.text();
            if (label.isPresent() && seats.putIfAbsent(label.get(), new Seat(channel, position++)) != null) {
                item.problem("The slot %s is in a channel already.".formatted(label.get()),
                        "Keep it in the one channel the document names; printed labels are unique.");
            }
        }
    }

    private void readSlots(Value value) {
        Set<String> seen = new HashSet<>();
        int row = 0;
        int column = 0;
        for (Value item : value.items()) {
            if (item.isList()) {
                row += column > 0 ? 1 : 0;
                column = 0;
                for (Value inner : item.items()) {
                    readSlot(inner, row, column++, seen);
                }
                row++;
                column = 0;
            } else {
                readSlot(item, row, column++, seen);
            }
        }
        for (String label : seats.keySet()) {
            if (!seen.contains(label)) {
                value.problem("The slot %s is in a channel but not among the slots.".formatted(label),
                        "Add it to \"slots\" where it lies, or leave \"slots\" out.");
            }
        }
    }

    private void readSlot(Value value, int row, int column, Set<String> seen) {
        Optional<Fields> fields = value.isMapping() ? value.fields(SLOT_KEYS) : Optional.empty();
        Optional<String> label = value.isMapping()
                ? fields.flatMap(known -> known.require("label", "DIMM1")).flatMap(Value::text)
                : value.text();
        if (label.isEmpty()) {
            return;
        }
        if (!seats.containsKey(label.get())) {
            value.problem("The slot %s is in no channel.".formatted(label.get()),
                    "Add it to its channel under \"channels\"; a label alone doesn't tell the channel.");
        } else if (!seen.add(label.get())) {
            value.problem("The slot %s is there twice.".formatted(label.get()), "Keep one of the two.");
        } else if (fields.isPresent()) {
            addSlot(label.get(), fields.get(), row, column);
        } else {
            addSlot(label.get(), SlotUse.SOCKET, row, column);
        }
    }

    private void addSlot(String label, SlotUse use, int row, int column) {
        Seat seat = seats.get(label);
        slots.add(new Slot(
                label, seat.channel(), seat.position(), use, row, column, Optional.empty(), Optional.empty()));
    }

    private void addSlot(String label, Fields fields, int row, int column) {
        Seat seat = seats.get(label);
        Optional<Value> soldered = fields.find("soldered");
        SlotUse use = fields.find("use").flatMap(value -> value.word(USES)).orElse(SlotUse.SOCKET);
        if (soldered.isPresent() && use == SlotUse.DEAD) {
            soldered.get().problem(
                    "The slot %s can't be dead and soldered.".formatted(label), "Keep one of the two lines.");
            return;
        }
        Optional<ModuleKind> kind = soldered.flatMap(SolderedReading::kind);
        slots.add(new Slot(label, seat.channel(), seat.position(), soldered.isPresent() ? SlotUse.SOLDERED : use,
                number(fields, "row", row), number(fields, "column", column),
                fields.find("colour").flatMap(Value::text), kind));
    }

    private static int number(Fields fields, String name, int otherwise) {
        OptionalInt number = fields.find(name).map(value -> value.number(0, MOST)).orElse(OptionalInt.empty());
        return number.orElse(otherwise);
    }
}
