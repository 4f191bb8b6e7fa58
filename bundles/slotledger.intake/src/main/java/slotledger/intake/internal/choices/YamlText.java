package slotledger.intake.internal.choices;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.source.Place;

/** A file of choices as lines with their places. */
final class YamlText {

    private static final long LARGEST = 1_000_000;

    private final String file;

    YamlText(Path file) {
        this.file = String.valueOf(file.getFileName());
    }

    /** The lines at the top; none in a file that holds comments only. */
    List<NodeTuple> read(Path path) throws IntakeException {
        Optional<Node> root;
        try {
            if (Files.size(path) > LARGEST) {
                throw new IOException("larger than %d bytes".formatted(LARGEST));
            }
            String text = Files.readString(path, StandardCharsets.UTF_8).replace("\uFEFF", "");
            root = new Compose(LoadSettings.builder().setLabel(file).build()).composeString(text);
        } catch (MarkedYamlEngineException e) {
            Place place = e.getProblemMark().map(this::place).orElse(Place.ofFile(file));
            throw unreadable(place, e.getProblem(), "lines such as \"most machines opened: 100\"",
                    "Compare the line with the template of the choices.", e);
        } catch (YamlEngineException | IOException e) {
            throw unreadable(Place.ofFile(file), e.getMessage(), "a text file in UTF-8",
                    "Check its name and save it as UTF-8 text.", e);
        }
        if (root.isPresent() && !(root.get() instanceof MappingNode)) {
            throw unreadable(Place.ofFile(file), "it has no keys", "lines such as \"most machines opened: 100\"",
                    "Compare it with the template of the choices.", null);
        }
        return root.map(node -> ((MappingNode) node).getValue()).orElse(List.of());
    }

    private static IntakeException unreadable(
            Place place, String problem, String expected, String remedy, Exception cause) {
        return new IntakeException(Doubt.error("choices-not-readable",
                "The choices can't be read: %s.".formatted(problem), expected, remedy).at(place, ""), cause);
    }

    /** One text or a list of texts; empty where it is something else. */
    Optional<List<Written>> texts(Node node) {
        List<Node> items = node instanceof SequenceNode list ? list.getValue() : List.of(node);
        return items.stream().allMatch(ScalarNode.class::isInstance)
                ? Optional.of(items.stream().map(this::written).toList()) : Optional.empty();
    }

    Written key(NodeTuple line) {
        return written(line.getKeyNode());
    }

    /** What is written; empty where it is no text. */
    Written written(Node node) {
        return new Written(node instanceof ScalarNode scalar ? scalar.getValue() : "", place(node));
    }

    private Place place(Node node) {
        return node.getStartMark().map(this::place).orElse(Place.ofFile(file));
    }

    private Place place(Mark mark) {
        return new Place(file, "", OptionalInt.of(mark.getLine() + 1), OptionalInt.of(mark.getColumn() + 1), "");
    }
}
