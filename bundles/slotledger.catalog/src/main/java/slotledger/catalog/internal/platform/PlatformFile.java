package slotledger.catalog.internal.platform;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import slotledger.catalog.Platform;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** Reads the table of platforms; its columns are explained at its head. */
public final class PlatformFile {

    private static final int COLUMNS = 10;
    private static final List<Entry> ENTRIES = read();

    /** A platform and the names its processors go by. */
    private record Entry(Pattern processors, Platform platform) {
    }

    private PlatformFile() {
    }

    public static List<Platform> all() {
        return ENTRIES.stream().map(Entry::platform).toList();
    }

    /** The first whose pattern is in the name. */
    public static Optional<Platform> find(String processor) {
        String plain = processor.replaceAll("(?i)\\((r|tm)\\)|®|™", "").replaceAll("\\s+", " ");
        return ENTRIES.stream().filter(entry -> entry.processors().matcher(plain).find()).map(Entry::platform)
                .findFirst();
    }

    private static List<Entry> read() {
        try (InputStream file = Platform.class.getResourceAsStream("platforms.txt")) {
            if (file == null) {
                throw new IllegalStateException("The table platforms.txt must be in the catalog bundle.");
            }
            List<Entry> entries = new ArrayList<>();
            for (String line : new String(file.readAllBytes(), StandardCharsets.UTF_8).split("\\R")) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    entries.add(entry(line));
                }
            }
            return List.copyOf(entries);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Entry entry(String line) {
        // A bar inside a pattern has no blanks around it.
        String[] cells = line.split(" \\| ", -1);
        if (cells.length != COLUMNS) {
            throw new IllegalStateException("The line (%s) of platforms.txt must have %d columns."
                    .formatted(line, COLUMNS));
        }
        Set<Generation> generations = EnumSet.noneOf(Generation.class);
        for (String word : cells[2].strip().split(" ")) {
            generations.add(Generation.valueOf(word));
        }
        Map<Integer, Rate> rates = new TreeMap<>();
        for (String rate : cells[6].strip().split(" ")) {
            String[] parts = rate.split(":");
            rates.put(Integer.parseInt(parts[0]), Rate.of(Integer.parseInt(parts[1])));
        }
        Set<Voltage> voltages = new HashSet<>();
        for (String millivolts : cells[8].strip().split(" ")) {
            voltages.add(Voltage.ofMillivolts(Integer.parseInt(millivolts)));
        }
        String source = cells[9].strip();
        return new Entry(Pattern.compile(cells[1].strip()), new Platform(cells[0].strip(), generations,
                Integer.parseInt(cells[3].strip()), Integer.parseInt(cells[4].strip()),
                Capacity.ofGiB(Long.parseLong(cells[5].strip())), rates,
                Platform.Ecc.valueOf(cells[7].strip()), voltages,
                source.equals("memory") ? new Source(Ground.MEMORY, "check", "", Optional.empty())
                        : Source.document(source, "")));
    }
}
