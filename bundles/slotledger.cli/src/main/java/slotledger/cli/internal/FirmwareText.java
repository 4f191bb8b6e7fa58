package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Coded;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.MachineFacts;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;
import slotledger.firmware.spd.SpdFacts;
import slotledger.firmware.spd.SpdModule;

/** What firmware says, as lines for people. */
final class FirmwareText {

    private static final String UNKNOWN = "unknown";

    private FirmwareText() {
    }

    static void lines(FirmwareReading reading, Answer.Builder answer) {
        answer.wrapped("File", reading.place());
        if (reading instanceof FirmwareReading.OfTable found) {
            table(found.table(), answer);
        } else if (reading instanceof FirmwareReading.OfModule found) {
            module(found.module(), answer);
        }
        boolean first = true;
        for (Problem problem : reading.problems()) {
            answer.wrapped(first ? "Problems" : "", problem.toString());
            first = false;
        }
        answer.line("");
    }

    private static void table(SmbiosTable table, Answer.Builder answer) {
        answer.item("Table", table.version().map(version -> "SMBIOS " + version).orElse("no version told"));
        Stream.of(StructureKind.SYSTEM, StructureKind.BOARD).map(table::first).flatMap(Optional::stream)
                .forEach(one -> answer.wrapped(one.kind() == StructureKind.SYSTEM ? "Machine" : "Board",
                        said(one, List.of(MachineFacts.HOST, MachineFacts.MAKER, MachineFacts.PRODUCT,
                                MachineFacts.VERSION, MachineFacts.SERIAL))));
        for (Structure array : table.memoryArrays()) {
            answer.wrapped("Array", "%s slots, at most %s, error correction %s".formatted(
                    text(array, ArrayFacts.DEVICES), text(array, ArrayFacts.LARGEST),
                    text(array, ArrayFacts.CORRECTION)));
        }
        boolean first = true;
        for (Structure device : table.memoryDevices()) {
            answer.wrapped(first ? "Slots" : "", device(device));
            first = false;
        }
    }

    private static String device(Structure device) {
        String name = said(device, List.of(DeviceFacts.LOCATOR, DeviceFacts.BANK_LOCATOR));
        Optional<ByteCount> size = device.get(DeviceFacts.SIZE);
        if (size.filter(ByteCount::isNothing).isPresent()) {
            return name + ": empty";
        }
        List<String> parts = new ArrayList<>();
        parts.add(size.map(ByteCount::toString).orElse("size unknown"));
        parts.add(text(device, DeviceFacts.TYPE));
        parts.add(text(device, DeviceFacts.FORM));
        device.get(DeviceFacts.RANKS).ifPresent(ranks -> parts.add(ranks + (ranks == 1 ? " rank" : " ranks")));
        rate(device).ifPresent(parts::add);
        String maker = said(device, List.of(DeviceFacts.MAKER, DeviceFacts.PART, DeviceFacts.SERIAL));
        return name + ": " + String.join(", ", parts) + (maker.equals(UNKNOWN) ? "" : "; " + maker);
    }

    private static Optional<String> rate(Structure device) {
        Optional<Integer> rated = device.get(DeviceFacts.RATE);
        Optional<Integer> runs = device.get(DeviceFacts.CONFIGURED_RATE);
        if (rated.isEmpty() || runs.isEmpty() || Objects.equals(rated, runs)) {
            return rated.or(() -> runs).map(rate -> rate + " MT/s");
        }
        return Optional.of("rated %d MT/s, runs at %d".formatted(rated.get(), runs.get()));
    }

    private static void module(SpdModule module, Answer.Builder answer) {
        String ranks = module.get(SpdFacts.RANKS).map(count -> count + "R").orElse("?R");
        String width = module.get(SpdFacts.CHIP_WIDTH).map(count -> "x" + count).orElse("x?");
        answer.wrapped("Module", "%s %s%s %s %s".formatted(
                module.get(SpdFacts.CAPACITY).map(ByteCount::toString).orElse("capacity unknown"), ranks, width,
                module.get(SpdFacts.TYPE).map(Coded::text).orElse(UNKNOWN),
                module.get(SpdFacts.SHAPE).map(Object::toString).orElse("module of unknown form")));
        answer.item("Check bits", module.get(SpdFacts.CHECK_WIDTH).map(String::valueOf).orElse(UNKNOWN));
        answer.item("Base rate", module.get(SpdFacts.RATE).map(rate -> rate + " MT/s (cycle %d ps)".formatted(
                module.get(SpdFacts.CYCLE).orElse(0))).orElse(UNKNOWN));
        boolean first = true;
        for (var profile : module.profiles()) {
            answer.item(first ? "Profiles" : "", profile.toString());
            first = false;
        }
        answer.item("Voltage", module.get(SpdFacts.VOLTAGE).map(mv -> mv + " mV").orElse(UNKNOWN));
        for (Fact<String> fact : List.of(SpdFacts.MAKER, SpdFacts.CHIP_MAKER, SpdFacts.PART, SpdFacts.SERIAL,
                SpdFacts.MADE)) {
            String word = fact.equals(SpdFacts.MAKER) ? "Maker" : fact.equals(SpdFacts.PART) ? "Part"
                    : fact.equals(SpdFacts.SERIAL) ? "Serial" : fact.name();
            module.facts().all().stream().filter(told -> told.fact().equals(fact))
                    .forEach(told -> answer.item(word, told.text()));
        }
    }

    private static String said(Structure structure, List<Fact<String>> facts) {
        String text = facts.stream().map(structure::get).flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
        return text.isEmpty() ? UNKNOWN : text;
    }

    private static String text(Structure structure, Fact<?> fact) {
        return structure.facts().all().stream().filter(told -> told.fact().equals(fact)).findFirst()
                .map(told -> told.value().isPresent() ? told.text() : UNKNOWN).orElse(UNKNOWN);
    }
}
