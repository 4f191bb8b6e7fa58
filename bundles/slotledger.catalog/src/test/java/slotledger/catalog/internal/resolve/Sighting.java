package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;

/**
 * An observed machine from one line of text: {@code Kestrin | KB-410 | DIMM1=4 DDR3 | DIMM2=empty | total=4 | slots=4}.
 * A field without a name is a module nobody says the slot of. Capacities are in GB, or in MB where a B follows. Fillers
 * are written as the model calls them.
 */
final class Sighting {

    private static final Pattern MODULE = Pattern.compile("([0-9]+)(MB)?( .*)?");

    private Sighting() {
    }

    static ObservedMachine of(String line) {
        return of("PC-1", line);
    }

    static ObservedMachine of(String tag, String line) {
        String[] fields = line.split("\\|");
        Optional<Capacity> total = Optional.empty();
        OptionalInt slotCount = OptionalInt.empty();
        OptionalInt processors = OptionalInt.empty();
        String processor = "";
        String redundancy = "";
        List<ObservedSlot> slots = new ArrayList<>();
        for (int i = 2; i < fields.length; i++) {
            String[] pair = fields[i].strip().split("=", 2);
            String value = pair[pair.length - 1].strip();
            switch (pair.length == 1 ? "" : pair[0].strip()) {
                case "total" -> total = Optional.of(Capacity.ofMiB(Math.round(Double.parseDouble(value) * 1024)));
                case "slots" -> slotCount = OptionalInt.of(Integer.parseInt(value));
                case "processors" -> processors = OptionalInt.of(Integer.parseInt(value));
                case "processor" -> processor = value;
                case "mode" -> redundancy = value;
                case "" -> slots.add(slot(Optional.empty(), value));
                default -> slots.add(slot(Optional.of(pair[0].strip()), value));
            }
        }
        return new ObservedMachine(new AssetTag(tag), "", fields[0].strip(), fields[1].strip(), new Whereabouts("", ""),
                "", "", "", processor, processors, redundancy, slotCount, total, slots,
                Place.ofRow("fleet.csv", "", 2));
    }

    private static ObservedSlot slot(Optional<String> label, String text) {
        return new ObservedSlot(label, content(text), "", "", Place.NOWHERE);
    }

    private static SlotContent content(String text) {
        Matcher matcher = MODULE.matcher(text);
        if (text.equals("empty")) {
            return SlotContent.EMPTY;
        }
        Optional<Filler> filler =
                Stream.of(Filler.values()).filter(known -> known.text().equals(text)).findFirst();
        if (filler.isPresent()) {
            return SlotContent.of(filler.get());
        }
        if (!matcher.matches()) {
            return new SlotContent.Unread(text);
        }
        int amount = Integer.parseInt(matcher.group(1));
        ModuleKind kind = ModuleKind.ofCapacity(
                matcher.group(2) == null ? Capacity.ofGiB(amount) : Capacity.ofMiB(amount));
        for (String word : Optional.ofNullable(matcher.group(3)).orElse("").strip().split(" +")) {
            kind = switch (word) {
                case "" -> kind;
                case "DDR3" -> kind.with(Generation.DDR3);
                case "DDR4" -> kind.with(Generation.DDR4);
                case "SO" -> kind.with(Form.SO_DIMM);
                case "soldered" -> kind.with(Form.SOLDERED);
                case "registered" -> kind.with(Buffering.REGISTERED);
                case "ECC" -> kind.with(ErrorCheck.ECC);
                default -> throw new IllegalArgumentException("The word %s must be known.".formatted(word));
            };
        }
        return SlotContent.of(kind);
    }
}
