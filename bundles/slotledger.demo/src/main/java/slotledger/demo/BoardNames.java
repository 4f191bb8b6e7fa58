package slotledger.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Maker and model of each board, from the first lines of the board files. */
record BoardNames(Map<String, String> makers, Map<String, String> models) {

    BoardNames {
        makers = Map.copyOf(makers);
        models = Map.copyOf(models);
    }

    static BoardNames read(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> found = Files.list(folder)) {
            found.forEach(files::add);
        }
        Map<String, String> makers = new HashMap<>();
        Map<String, String> models = new HashMap<>();
        for (Path file : files) {
            List<String> lines = Files.readAllLines(file);
            String board = value(lines, "board: ");
            makers.put(board, value(lines, "maker: "));
            models.put(board, value(lines, "model: "));
        }
        return new BoardNames(makers, models);
    }

    private static String value(List<String> lines, String key) {
        return lines.stream().filter(line -> line.startsWith(key)).findFirst().orElse(key).substring(key.length());
    }
}
