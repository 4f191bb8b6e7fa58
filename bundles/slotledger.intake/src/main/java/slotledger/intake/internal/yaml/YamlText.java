package slotledger.intake.internal.yaml;

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
import slotledger.intake.internal.value.Written;
import slotledger.model.source.Place;

/** A small YAML text as lines with their places. */
public final class YamlText {

    /**
     * What people are told of a text.
     *
     * @param name    what it is, in the plural or not: "choices"
     * @param example what a line of it looks like
     */
    public record About(String name, String example) {
    }

    private static final long LARGEST = 1_000_000;

    private final About about;
    private final String file;

    public YamlText(About about, Path file) {
        this.about = about;
        this.file = String.valueOf(file.getFileName());
    }

    /** The lines at the top; empty in a file that holds comments only. */
    public Optional<List<NodeTuple>> read(Path path) throws IntakeException {
        Optional<Node> root;
        try {
            if (Files.size(path) > LARGEST) {
                throw new IOException("larger than %d bytes".formatted(LARGEST));
            }
            String text = Files.readString(path, StandardCharsets.UTF_8).replace("\uFEFF", "");
            root = new Compose(LoadSettings.builder().setLabel(file).build()).composeString(text);
        } catch (MarkedYamlEngineException e) {
            Place place = e.getProblemMark().map(this::place).orElse(Place.ofFile(file));
            throw misshapen(place, e.getProblem(), e);
        } catch (YamlEngineException e) {
            throw misshapen(Place.ofFile(file), e.getMessage(), e);
        } catch (IOException e) {
            throw unreadable(Place.ofFile(file), e.getMessage(), "a text file in UTF-8",
                    "Check its name and save it as UTF-8 text.", e);
        }
        if (root.isPresent() && !(root.get() instanceof MappingNode)) {
            throw withoutKeys();
        }
        return root.map(node -> ((MappingNode) node).getValue());
    }

    /** What to say of a text that holds nothing, where something is needed. */
    public IntakeException withoutKeys() {
        return misshapen(Place.ofFile(file), "it has no keys", null);
    }

    private IntakeException misshapen(Place place, String problem, Exception cause) {
        return unreadable(place, problem, "lines such as \"%s\"".formatted(about.example()),
                "Compare the line with the template of the %s.".formatted(about.name()), cause);
    }

    private IntakeException unreadable(
            Place place, String problem, String expected, String remedy, Exception cause) {
        return new IntakeException(Doubt.error(about.name() + "-not-readable",
                "The %s can't be read: %s.".formatted(about.name(), problem), expected, remedy).at(place, ""), cause);
    }

    /** One text or a list of texts; empty where it is something else. */
    public Optional<List<Written>> texts(Node node) {
        List<Node> items = node instanceof SequenceNode list ? list.getValue() : List.of(node);
        return items.stream().allMatch(ScalarNode.class::isInstance)
                ? Optional.of(items.stream().map(this::written).toList()) : Optional.empty();
    }

    public Written key(NodeTuple line) {
        return written(line.getKeyNode());
    }

    /** What is written; empty where it is no text. */
    public Written written(Node node) {
        return new Written(node instanceof ScalarNode scalar ? scalar.getValue() : "", place(node));
    }

    public Place place(Node node) {
        return node.getStartMark().map(this::place).orElse(Place.ofFile(file));
    }

    private Place place(Mark mark) {
        return new Place(file, "", OptionalInt.of(mark.getLine() + 1), OptionalInt.of(mark.getColumn() + 1), "");
    }
}
