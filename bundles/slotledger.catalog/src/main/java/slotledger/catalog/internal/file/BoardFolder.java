package slotledger.catalog.internal.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import slotledger.catalog.CatalogException;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.source.Place;

/** Finds the board files of a folder: *.yaml and *.yml, also in folders inside it. */
public final class BoardFolder {

    private static final int DEEPEST = 4;
    private static final int MOST_FILES = 10_000;
    private static final long MOST_BYTES = 4L * YamlText.MOST_CHARACTERS;

    private BoardFolder() {
    }

    /** Reads the files in the order of their paths; one that can't be read becomes a finding. */
    public static List<BoardFile> read(Path folder, List<Finding> findings) throws CatalogException {
        List<BoardFile> files = new ArrayList<>();
        for (Path path : paths(folder)) {
            try {
                if (Files.size(path) > MOST_BYTES) {
                    findings.add(unreadable(path, "board-file-too-large", "The file is too large for a board.",
                            "Split it into one file for each board, or move it out of the folder."));
                } else {
                    files.add(new BoardFile(path.toString(), decoded(Files.readAllBytes(path))));
                }
            } catch (CharacterCodingException e) {
                findings.add(unreadable(path, "board-file-encoding", "The file isn't text in UTF-8.",
                        "Save it again from a text editor with the encoding UTF-8."));
            } catch (IOException e) {
                findings.add(unreadable(path, "board-file-unreadable",
                        "The file can't be read: %s.".formatted(e.getMessage()), "Check its permissions."));
            }
        }
        return files;
    }

    private static List<Path> paths(Path folder) throws CatalogException {
        if (!Files.isDirectory(folder)) {
            throw new CatalogException("The board folder %s is missing, or isn't a folder. Check its path."
                    .formatted(folder), null);
        }
        try (Stream<Path> walk = Files.walk(folder, DEEPEST)) {
            return walk.filter(path -> Files.isRegularFile(path) && isBoardFile(path))
                    .sorted()
                    .limit(MOST_FILES)
                    .toList();
        } catch (IOException | UncheckedIOException e) {
            throw new CatalogException(
                    "The board folder %s can't be read: %s. Check its permissions.".formatted(folder, e.getMessage()),
                    e);
        }
    }

    private static boolean isBoardFile(Path path) {
        String name = path.getFileName().toString().toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && (name.endsWith(".yaml") || name.endsWith(".yml"));
    }

    private static String decoded(byte[] bytes) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static Finding unreadable(Path path, String code, String message, String remedy) {
        return new Finding(Severity.ERROR, code, Place.ofFile(path.toString()), Optional.empty(), "", message,
                "one board in YAML", remedy);
    }
}
