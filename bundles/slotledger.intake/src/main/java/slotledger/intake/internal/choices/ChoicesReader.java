package slotledger.intake.internal.choices;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import slotledger.intake.IntakeException;
import slotledger.intake.Known;
import slotledger.intake.Reading;
import slotledger.intake.internal.choices.ChoicesKey.Level;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Nearest;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Written;
import slotledger.intake.internal.yaml.YamlText;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Taste;
import slotledger.model.trade.Taste.About;
import slotledger.model.trade.Taste.Attitude;

/** Reads what people decided from a small YAML text. What can't be understood becomes a finding. */
public final class ChoicesReader {

    private static final int MOST_MACHINES = 10_000_000;

    private final YamlText yaml;
    private final Known known;
    private final PinReader pinReader;
    private final TasteReader tasteReader;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<ChoicesKey, Written> seen = new EnumMap<>(ChoicesKey.class);
    private final List<Pin> pins = new ArrayList<>();
    private final List<Taste> tastes = new ArrayList<>();
    private final Set<String> uniform = new LinkedHashSet<>();
    private OptionalInt mostOpened = OptionalInt.empty();

    private ChoicesReader(Path file, Known known) {
        this.yaml = new YamlText(new YamlText.About("choices", "most machines opened: 100"), file);
        this.known = known;
        KindSearch kinds = new KindSearch(known, this::report);
        pinReader = new PinReader(known, kinds, this::report);
        tasteReader = new TasteReader(known, kinds, this::report);
    }

    /** The choices of a file. */
    public static Reading<Choices> read(Path file, Known known) throws IntakeException {
        ChoicesReader reader = new ChoicesReader(file, known);
        for (NodeTuple line : reader.yaml.read(file).orElse(List.of())) {
            reader.top(reader.yaml.key(line), line.getValueNode());
        }
        Choices choices = new Choices(reader.pins, reader.tastes, reader.uniform, reader.mostOpened);
        return new Reading<>(choices, List.of(), reader.findings);
    }

    private void top(Written key, Node value) {
        Optional<ChoicesKey> known = ChoicesKey.of(Level.TOP, key.text());
        if (known.isEmpty()) {
            unknown(Level.TOP, key);
            return;
        }
        Written before = seen.putIfAbsent(known.get(), key);
        if (before != null) {
            report(Doubt.error("key-twice", "\"%s\" stands already at %s; the first counts.".formatted(
                    key.text(), before.place()), "every key once", "Put both together below one of them."), key);
            return;
        }
        switch (known.get()) {
            case PINS -> mappings(value, "a pin that begins with \"- machine:\"", this::pin);
            case FORBID -> mappings(value, "a line such as \"- supplier: ...\"",
                    item -> taste(Attitude.FORBID, item));
            case PREFER -> mappings(value, "a line such as \"- maker: ...\"", item -> taste(Attitude.PREFER, item));
            case UNIFORM -> yaml.texts(value).ifPresentOrElse(rooms -> rooms.forEach(this::room),
                    () -> wrong(value, "a list of rooms such as [\"Main / 101\"]"));
            case MOST_OPENED -> mostOpened(yaml.written(value));
            case MACHINE, SLOTS, KIND, SUPPLIER, MAKER, WORTH -> unknown(Level.TOP, key);
        }
    }

    private interface Taker {
        void take(MappingNode item);
    }

    private void mappings(Node value, String expected, Taker taker) {
        if (!(value instanceof SequenceNode list)) {
            wrong(value, "a list; each item is " + expected);
            return;
        }
        for (Node item : list.getValue()) {
            if (item instanceof MappingNode mapping) {
                taker.take(mapping);
            } else {
                wrong(item, expected);
            }
        }
    }

    private void pin(MappingNode item) {
        Map<ChoicesKey, Node> parts = parts(Level.PIN, item);
        Node machine = parts.get(ChoicesKey.MACHINE);
        Node slots = parts.get(ChoicesKey.SLOTS);
        boolean stays = slots instanceof ScalarNode scalar
                && Set.of("asnow", "asitis").contains(Texts.key(scalar.getValue()));
        if (!(machine instanceof ScalarNode) || !stays && !(slots instanceof MappingNode)) {
            wrong(machine instanceof ScalarNode && slots != null ? slots : item,
                    "\"machine:\" with an asset tag, and \"slots:\" with a line for each slot that somebody decided,"
                    + " or \"slots: as now\"");
            return;
        }
        List<Map.Entry<Written, Written>> contents = slots instanceof MappingNode lines
                ? lines.getValue().stream().map(line -> Map.entry(yaml.key(line), yaml.written(line.getValueNode())))
                        .toList()
                : List.of();
        Written tag = yaml.written(machine);
        pinReader.read(tag, contents).ifPresent(pin -> {
            Optional<Pin> before = pins.stream().filter(each -> each.machine().equals(pin.machine())).findFirst();
            if (before.isPresent()) {
                report(Doubt.error("pinned-twice", "The machine %s is pinned already at %s; the first counts."
                        .formatted(pin.machine(), before.get().place()), "one pin a machine",
                        "Put both together."), tag);
            } else {
                pins.add(pin);
            }
        });
    }

    private void taste(Attitude attitude, MappingNode item) {
        Map<ChoicesKey, Node> parts = parts(Level.TASTE, item);
        Node worth = parts.remove(ChoicesKey.WORTH);
        if (worth != null && attitude == Attitude.FORBID) {
            wrong(worth, "no worth: what is forbidden is not bought at any price");
        }
        int percent = worth == null || attitude == Attitude.FORBID ? 0 : tasteReader.worth(yaml.written(worth));
        if (parts.isEmpty()) {
            wrong(item, "a kind, a supplier or a maker");
        }
        parts.forEach((key, node) -> yaml.texts(node).ifPresentOrElse(
                names -> tastes.addAll(tasteReader.read(attitude, About.valueOf(key.name()), names, percent)),
                () -> wrong(node, "a text or a list of texts")));
    }

    private Map<ChoicesKey, Node> parts(Level level, MappingNode item) {
        Map<ChoicesKey, Node> parts = new EnumMap<>(ChoicesKey.class);
        for (NodeTuple line : item.getValue()) {
            Written key = yaml.key(line);
            ChoicesKey.of(level, key.text()).ifPresentOrElse(
                    found -> parts.put(found, line.getValueNode()), () -> unknown(level, key));
        }
        return parts;
    }

    private void room(Written written) {
        String wanted = written.text().strip().toLowerCase(Locale.ROOT);
        List<Machine> machines = known.fleet().machines();
        boolean exists = machines.stream().anyMatch(machine ->
                machine.where().toString().toLowerCase(Locale.ROOT).equals(wanted)
                        || machine.where().room().strip().toLowerCase(Locale.ROOT).equals(wanted));
        if (exists && !wanted.isEmpty()) {
            uniform.add(wanted);
            return;
        }
        Set<String> rooms = machines.stream().map(machine -> machine.where().toString())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        machines.forEach(machine -> rooms.add(machine.where().room()));
        report(Doubt.error("room-not-known", "No machine with a known board stands in such a room.",
                "a room of the inventory, \"site / room\" or the room alone",
                Nearest.to(written.text(), rooms).map("Maybe \"%s\" is meant."::formatted)
                        .orElse("Write it as the inventory does.")), written);
    }

    private void mostOpened(Written written) {
        String text = written.text().strip();
        if (text.matches("\\d{1,8}") && Integer.parseInt(text) <= MOST_MACHINES) {
            mostOpened = OptionalInt.of(Integer.parseInt(text));
        } else {
            report(Doubt.error("number-not-understood", "This is not a number of machines.",
                    "a whole number such as 100", "Correct it."), written);
        }
    }

    private void unknown(Level level, Written key) {
        report(Doubt.error("unknown-key", "The key \"%s\" is not known here.".formatted(key.text()),
                "a key of the choices", ChoicesKey.advice(level, key.text())), key);
    }

    private void wrong(Node node, String expected) {
        report(Doubt.error("choices-shape", "This does not belong here.", expected,
                "Compare the lines with the template of the choices."), yaml.written(node));
    }

    private void report(Doubt doubt, Written written) {
        findings.add(doubt.at(written.place(), written.text()));
    }
}
