package slotledger.intake.internal.policy;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.policy.PolicyDraft.TargetDraft;
import slotledger.intake.internal.policy.PolicyDraft.WaveDraft;
import slotledger.intake.internal.policy.PolicyKey.Section;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Written;
import slotledger.intake.internal.yaml.YamlText;
/** Reads a policy from a small YAML text. */
final class PolicyYaml {

    private static final YamlText.About ABOUT = new YamlText.About("policy", "budget: 12000");

    private final Path file;
    private final YamlText yaml;
    private final PolicyDraft draft;

    PolicyYaml(Path file, PolicyDraft draft) {
        this.file = file;
        this.yaml = new YamlText(ABOUT, file);
        this.draft = draft;
    }

    void read() throws IntakeException {
        for (NodeTuple tuple : yaml.read(file).orElseThrow(yaml::withoutKeys)) {
            top(key(tuple), tuple.getKeyNode(), tuple.getValueNode());
        }
    }

    private void top(String key, Node keyNode, Node value) {
        Optional<PolicyKey> setting = PolicyKey.of(Section.SETTINGS, key);
        Optional<Section> section = Section.of(key);
        if (setting.isPresent() && value instanceof ScalarNode scalar) {
            draft.set(setting.get(), yaml.written(scalar));
        } else if (section.isEmpty()) {
            unknown(Section.SETTINGS, key, keyNode);
        } else {
            switch (section.get()) {
                case SETTINGS -> wrong(value, "its keys belong at the start of a line of their own");
                case TARGETS -> targets(value);
                case COST_CENTRES -> amounts(value, "lines such as \"4711: 3000\" below it", draft::costCentre);
                case LEAVE_ALONE -> leaveAlone(value);
                case RATES -> amounts(value, "lines such as \"USD: 0.92\" below it", draft::rate);
                case WAVES -> waves(value);
                case LABOUR -> group("labour ", value);
                case SPARES -> group("spares ", value);
            }
        }
    }

    /** "labour:" with "per machine:" below it is "labour per machine". */
    private void group(String prefix, Node value) {
        if (!(value instanceof MappingNode mapping)) {
            wrong(value, "keys such as \"%sper machine\" or \"percent\" below it".formatted(prefix));
            return;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            Optional<PolicyKey> key = PolicyKey.of(Section.SETTINGS, prefix + key(tuple));
            if (key.isPresent() && tuple.getValueNode() instanceof ScalarNode scalar) {
                draft.set(key.get(), yaml.written(scalar));
            } else {
                unknown(Section.SETTINGS, prefix + key(tuple), tuple.getKeyNode());
            }
        }
    }

    private void targets(Node value) {
        if (!(value instanceof SequenceNode list)) {
            wrong(value, "a list, each target beginning with \"- role:\"");
            return;
        }
        for (Node item : list.getValue()) {
            if (!(item instanceof MappingNode mapping)) {
                wrong(item, "a target beginning with \"- role:\"");
                continue;
            }
            TargetDraft target = new TargetDraft(new EnumMap<>(PolicyKey.class), yaml.place(item));
            for (NodeTuple tuple : mapping.getValue()) {
                Optional<PolicyKey> key = PolicyKey.of(Section.TARGETS, key(tuple));
                if (key.isPresent() && tuple.getValueNode() instanceof ScalarNode scalar) {
                    target.entries().put(key.get(), yaml.written(scalar));
                } else {
                    unknown(Section.TARGETS, key(tuple), tuple.getKeyNode());
                }
            }
            draft.targets.add(target);
        }
    }

    private void amounts(Node value, String shape, BiConsumer<String, Written> amounts) {
        if (!(value instanceof MappingNode mapping)) {
            wrong(value, shape);
            return;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            if (tuple.getValueNode() instanceof ScalarNode scalar) {
                amounts.accept(key(tuple), yaml.written(scalar));
            } else {
                wrong(tuple.getValueNode(), "a number");
            }
        }
    }

    private void waves(Node value) {
        if (!(value instanceof SequenceNode list)) {
            wrong(value, "a list, each wave beginning with \"- name:\"");
            return;
        }
        for (Node item : list.getValue()) {
            if (!(item instanceof MappingNode mapping)) {
                wrong(item, "a wave beginning with \"- name:\"");
                continue;
            }
            WaveDraft wave = new WaveDraft(new EnumMap<>(PolicyKey.class), new LinkedHashMap<>(), yaml.place(item));
            for (NodeTuple tuple : mapping.getValue()) {
                Optional<PolicyKey> key = PolicyKey.of(Section.WAVES, key(tuple));
                if (key.isPresent() && tuple.getValueNode() instanceof ScalarNode scalar) {
                    wave.entries().put(key.get(), yaml.written(scalar));
                } else if (Section.of(key(tuple)).filter(Section.COST_CENTRES::equals).isPresent()) {
                    amounts(tuple.getValueNode(), "lines such as \"4711: 3000\" below it", wave.costCentres()::put);
                } else {
                    unknown(Section.WAVES, key(tuple), tuple.getKeyNode());
                }
            }
            draft.waves.add(wave);
        }
    }

    private void leaveAlone(Node value) {
        if (!(value instanceof MappingNode mapping)) {
            wrong(value, "tags, rooms or roles below it");
            return;
        }
        for (NodeTuple tuple : mapping.getValue()) {
            Optional<PolicyKey> kind = PolicyKey.of(Section.LEAVE_ALONE, key(tuple));
            if (kind.isEmpty()) {
                unknown(Section.LEAVE_ALONE, key(tuple), tuple.getKeyNode());
                continue;
            }
            List<Node> items = tuple.getValueNode() instanceof SequenceNode list ? list.getValue()
                    : List.of(tuple.getValueNode());
            for (Node item : items) {
                if (item instanceof ScalarNode scalar) {
                    draft.leave(kind.get(), yaml.written(scalar));
                } else {
                    wrong(item, "a text");
                }
            }
        }
    }

    private String key(NodeTuple tuple) {
        return yaml.key(tuple).text();
    }

    private void unknown(Section section, String key, Node node) {
        draft.report(Doubt.error("unknown-key",
                "The key \"%s\" is not known here, or what follows it does not belong there."
                .formatted(key), "a key of a policy", PolicyKey.advice(section, key)), yaml.place(node), key);
    }

    private void wrong(Node node, String expected) {
        draft.report(Doubt.error("policy-shape", "This does not belong here.", expected,
                "Compare the lines with the template of the policy."), yaml.place(node),
                node instanceof ScalarNode scalar ? scalar.getValue() : "");
    }
}
