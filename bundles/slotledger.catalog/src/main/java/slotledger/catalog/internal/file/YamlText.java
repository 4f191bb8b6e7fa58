package slotledger.catalog.internal.file;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import slotledger.model.source.Place;

/** Turns the text of a board file into a tree of values, within limits that no honest file comes near. */
final class YamlText {

    /** Characters; a server with many slots, tables and notes needs less than 20,000. */
    static final int MOST_CHARACTERS = 200_000;
    /** Mappings and lists inside each other. The format needs five. */
    static final int MOST_NESTING = 12;
    /** Values, so that a long run of tiny ones costs no more than a file. */
    static final int MOST_EVENTS = 20_000;

    private static final String FORMAT = "one board in YAML";

    private YamlText() {
    }

    static Optional<Value> read(String text, Problems problems, String file) {
        if (text.length() > MOST_CHARACTERS) {
            problems.error("board-file-too-large", Place.ofFile(file), "",
                    "The file has more than %,d characters.".formatted(MOST_CHARACTERS), FORMAT,
                    "Split it into one file for each board.");
            return Optional.empty();
        }
        // No board needs an alias to a list or mapping, and nested ones grow beyond all bounds.
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setAllowDuplicateKeys(true)
                .setMaxAliasesForCollections(0)
                .setCodePointLimit(MOST_CHARACTERS)
                .build();
        try {
            if (!withinLimits(text, settings, problems)) {
                return Optional.empty();
            }
            Optional<Node> root = new Compose(settings).composeString(text);
            if (root.isEmpty()) {
                problems.error("board-file-empty", Place.ofFile(file), "", "The file holds no board.", FORMAT,
                        "Fill it in, or delete it.");
            }
            return root.map(node -> new Value("board file", node, problems));
        } catch (MarkedYamlEngineException e) {
            problems.error("board-file-syntax", problems.place(e.getProblemMark()), "",
                    "The file isn't valid YAML: %s.".formatted(oneLine(e.getProblem())), FORMAT,
                    "Check the indentation, brackets and quotes here and in the line above.");
        } catch (YamlEngineException e) {
            problems.error("board-file-syntax", Place.ofFile(file), "",
                    "The file can't be read as YAML: %s.".formatted(oneLine(e.getMessage())), FORMAT,
                    "Check it in a text editor; maybe it is another kind of file.");
        }
        return Optional.empty();
    }

    private static boolean withinLimits(String text, LoadSettings settings, Problems problems) {
        int depth = 0;
        int count = 0;
        for (Event event : new Parse(settings).parseString(text)) {
            switch (event.getEventId()) {
                case MappingStart, SequenceStart -> depth++;
                case MappingEnd, SequenceEnd -> depth--;
                case Alias, Comment, DocumentEnd, DocumentStart, Scalar, StreamEnd, StreamStart -> { }
            }
            if (depth > MOST_NESTING || ++count > MOST_EVENTS) {
                problems.error("board-file-too-large", problems.place(event.getStartMark()), "",
                        "The file nests deeper, or holds more values, than any board needs.", FORMAT,
                        "Compare it with the template of a board file.");
                return false;
            }
        }
        return true;
    }

    private static String oneLine(String text) {
        return text == null ? "no reason given" : text.replaceAll("\\s+", " ").strip();
    }
}
