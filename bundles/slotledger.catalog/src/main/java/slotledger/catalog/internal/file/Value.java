package slotledger.catalog.internal.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import slotledger.catalog.internal.match.Similarity;
import slotledger.model.source.Place;

/**
 * One value of a board file that knows its name and place. What can't be understood becomes a problem, and the answer
 * is empty.
 */
final class Value {

    private final String name;
    private final Node node;
    private final Problems problems;

    Value(String name, Node node, Problems problems) {
        this.name = name;
        this.node = node;
        this.problems = problems;
    }

    String name() {
        return name;
    }

    Place place() {
        return problems.place(node.getStartMark());
    }

    boolean isList() {
        return node instanceof SequenceNode;
    }

    boolean isMapping() {
        return node instanceof MappingNode;
    }

    /** The text of a plain value. */
    Optional<String> text() {
        if (node instanceof ScalarNode scalar && !scalar.getTag().equals(Tag.NULL) && !scalar.getValue().isBlank()) {
            return Optional.of(scalar.getValue().strip());
        }
        if (node instanceof ScalarNode) {
            wrong("a value after \"" + name + ":\"", "Write the value, or delete the line.");
        } else {
            wrong("one text or number", "Write a single value instead of a list or of lines of its own.");
        }
        return Optional.empty();
    }

    /** The text, turned into a value by a parser that answers empty where it can't. */
    <T> Optional<T> parsed(Function<String, Optional<T>> parser, String expected) {
        Optional<String> text = text();
        Optional<T> parsed = text.flatMap(parser);
        if (text.isPresent() && parsed.isEmpty()) {
            wrong(expected, "Write it like that.");
        }
        return parsed;
    }

    /** One of some words. */
    <T> Optional<T> word(Map<String, T> words) {
        Optional<String> text = text();
        Optional<T> meant = text.map(words::get);
        if (text.isPresent() && meant.isEmpty()) {
            wrong("one of " + String.join(", ", words.keySet()), Similarity.closest(text.get(), words.keySet())
                    .map(word -> "Maybe \"" + word + "\" is meant.")
                    .orElse("Write one of these words."));
        }
        return meant;
    }

    OptionalInt number(int least, int most) {
        Optional<Integer> number = parsed(
                text -> text.matches("[0-9]{1,7}")
                        ? Optional.of(Integer.parseInt(text)).filter(read -> read >= least && read <= most)
                        : Optional.empty(),
                "a whole number from %d to %d".formatted(least, most));
        return number.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    Optional<Boolean> flag() {
        return word(Words.FLAGS);
    }

    /** The items of a list; a single value counts as a list of one. */
    List<Value> items() {
        if (node instanceof SequenceNode list) {
            return list.getValue().stream().map(item -> new Value(name, item, problems)).toList();
        }
        return List.of(this);
    }

    /** The texts of a list or of a single value. */
    List<String> texts() {
        return items().stream().flatMap(item -> item.text().stream()).toList();
    }

    /** The fields of a mapping; unknown ones are problems. */
    Optional<Fields> fields(List<String> known) {
        if (node instanceof MappingNode mapping) {
            return Optional.of(Fields.known(mapping, this, problems, known));
        }
        wrong("lines such as \"" + known.get(0) + ": …\"", "Write the fields below \"" + name + ":\", indented.");
        return Optional.empty();
    }

    /** The fields of a mapping whose names the file's author chooses. */
    Optional<Fields> namedFields(String example) {
        if (node instanceof MappingNode mapping) {
            return Optional.of(Fields.free(mapping, this, problems));
        }
        wrong("lines such as \"" + example + "\"", "Write the fields below \"" + name + ":\", indented.");
        return Optional.empty();
    }

    /** Reports that this value isn't what was expected. */
    void wrong(String expected, String remedy) {
        problems.error("board-field", place(), shown(), "The value of \"%s\" can't be used.".formatted(name), expected,
                remedy);
    }

    /** Reports something about this value in other words. */
    void problem(String message, String remedy) {
        problems.error("board-field", place(), shown(), message, "", remedy);
    }

    private String shown() {
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
}
