package slotledger.rules.internal.capacity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slotledger.model.unit.Capacity;

/**
 * One edition of Windows and the physical memory it uses.
 *
 * @param name    words that name it on Microsoft's page
 * @param limit32 of the 32-bit edition; empty where there is none
 * @param limit64 of the 64-bit edition; empty where there is none
 */
record WindowsEdition(String name, Optional<Capacity> limit32, Optional<Capacity> limit64) {

    private static final List<String> EDITION_WORDS = List.of(
            "pro", "home", "enterprise", "education", "ultimate", "starter", "basic", "premium",
            "business", "standard", "datacenter", "essentials", "foundation", "web");
    /** Words that a name and an edition both have, or neither. */
    private static final List<String> KINDS = List.of("server", "r2", "itanium", "embedded");
    private static final List<WindowsEdition> ALL = read();

    /** All editions of the data file. */
    static List<WindowsEdition> all() {
        return ALL;
    }

    /**
     * The editions a name may mean: the one with the most words that are all in the name, in any order; where no
     * edition is named, all of the release.
     *
     * @param name lower-case
     */
    static List<WindowsEdition> meantBy(String name) {
        List<String> words = words(name);
        List<WindowsEdition> best = new ArrayList<>();
        int most = 0;
        for (WindowsEdition edition : ALL) {
            List<String> own = words(edition.name.toLowerCase(Locale.ROOT));
            if (isOfKind(words, own) && words.containsAll(own)) {
                if (own.size() > most) {
                    best.clear();
                    most = own.size();
                }
                if (own.size() == most) {
                    best.add(edition);
                }
            }
        }
        return most > releaseWords(words) ? best : ofRelease(words, best);
    }

    private static List<WindowsEdition> ofRelease(List<String> words, List<WindowsEdition> exact) {
        List<WindowsEdition> found = new ArrayList<>(exact);
        for (WindowsEdition edition : ALL) {
            List<String> own = words(edition.name.toLowerCase(Locale.ROOT));
            int release = releaseWords(own);
            if (isOfKind(words, own) && words.containsAll(own.subList(0, release)) && !found.contains(edition)) {
                found.add(edition);
            }
        }
        boolean bare = words.stream().noneMatch(EDITION_WORDS::contains);
        return bare || exact.isEmpty() ? found : exact;
    }

    private static boolean isOfKind(List<String> words, List<String> own) {
        return KINDS.stream().allMatch(kind -> words.contains(kind) == own.contains(kind));
    }

    private static int releaseWords(List<String> words) {
        return (words.contains("server") ? 3 : 2) + (words.contains("r2") ? 1 : 0);
    }

    private static List<String> words(String text) {
        String apart = text.replaceAll("\\bwin(?=\\d)", "windows ").replaceAll("\\bwin\\b", "windows");
        return Arrays.stream(apart.split("[^a-z0-9.]+"))
                .filter(word -> !word.isEmpty())
                .map(word -> word.equals("professional") ? "pro" : word.equals("ia64") ? "itanium" : word)
                .toList();
    }

    private static List<WindowsEdition> read() {
        try (InputStream stream = WindowsEdition.class.getResourceAsStream("windows-memory-limits.txt");
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> line.split("\\|"))
                    .map(parts -> new WindowsEdition(parts[0].strip(), capacity(parts[1]), capacity(parts[2])))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Capacity> capacity(String text) {
        String[] parts = text.strip().split(" ");
        return switch (parts.length > 1 ? parts[1] : "") {
            case "MB" -> Optional.of(Capacity.ofMiB(Long.parseLong(parts[0])));
            case "GB" -> Optional.of(Capacity.ofGiB(Long.parseLong(parts[0])));
            case "TB" -> Optional.of(Capacity.ofGiB(1024 * Long.parseLong(parts[0])));
            case "" -> Optional.empty();
            default -> throw new IllegalStateException("The limit (%s) must be in MB, GB or TB.".formatted(text));
        };
    }
}
