package slotledger.catalog.internal.file;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import slotledger.catalog.internal.match.Similarity;

/** The fields of one mapping in a board file. */
final class Fields {

    private final Value owner;
    private final Map<String, Value> values = new LinkedHashMap<>();

    private Fields(Value owner) {
        this.owner = owner;
    }

    static Fields free(MappingNode mapping, Value owner, Problems problems) {
        Fields fields = new Fields(owner);
        for (NodeTuple tuple : mapping.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key) {
                fields.add(key.getValue().strip(), new Value(key.getValue().strip(), tuple.getValueNode(), problems),
                        new Value(owner.name(), key, problems));
            } else {
                new Value(owner.name(), tuple.getKeyNode(), problems)
                        .wrong("a word before the colon", "Write the name of one field there.");
            }
        }
        return fields;
    }

    static Fields known(MappingNode mapping, Value owner, Problems problems, List<String> known) {
        Fields fields = free(mapping, owner, problems);
        for (NodeTuple tuple : mapping.getValue()) {
            if (tuple.getKeyNode() instanceof ScalarNode key && !known.contains(key.getValue().strip())) {
                new Value(owner.name(), key, problems).problem(
                        "There is no field \"%s\" in \"%s\".".formatted(key.getValue(), owner.name()),
                        Similarity.closest(key.getValue(), known)
                                .map(word -> "Maybe \"" + word + "\" is meant.")
                                .orElse("Delete it, or use one of: " + String.join(", ", known) + "."));
            }
        }
        return fields;
    }

    private void add(String name, Value value, Value key) {
        if (values.putIfAbsent(name, value) != null) {
            key.problem("The field \"%s\" is there twice.".formatted(name), "Keep one of the two.");
        }
    }

    Optional<Value> find(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** The value of a field that must be there. */
    Optional<Value> require(String name, String example) {
        if (!values.containsKey(name)) {
            owner.problem("The field \"%s\" is missing in \"%s\".".formatted(name, owner.name()),
                    "Add a line such as \"%s: %s\".".formatted(name, example));
        }
        return find(name);
    }

    Collection<Value> all() {
        return values.values();
    }

    Value owner() {
        return owner;
    }
}
