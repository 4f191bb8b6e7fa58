package slotledger.firmware.internal.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

/** Finds the contents of files, folders and ZIP archives, within limits that no sound collection reaches. */
public final class Collector {

    /** A dump of the memory below 1 MB, the longest table and a list of a big fleet all fit in. */
    static final int LARGEST_FILE = 32 << 20;
    static final long LARGEST_ARCHIVE = 128L << 20;
    static final int MOST_FILES = 20_000;
    private static final int MOST_FILES_OF_FOLDER = 1_000_000;

    private static final String ENTRY_POINT = "smbios_entry_point";
    private static final String TABLE = "DMI";

    private Collector() {
    }

    /** Takes contents, with the share of files that were read. */
    @FunctionalInterface
    public interface Taker {
        void take(Collected content, double done);
    }

    /** Hands over one content after the other, so that a large folder is never in memory as a whole. */
    public static void each(Path path, Taker to) throws IOException {
        if (!Files.isDirectory(path)) {
            ofFile(path, to, 1);
            return;
        }
        List<Path> files = new ArrayList<>();
        try (Stream<Path> walk = Files.walk(path)) {
            walk.filter(Files::isRegularFile).limit(MOST_FILES_OF_FOLDER + 1L).sorted().forEach(files::add);
        } catch (UncheckedIOException unreadable) {
            throw unreadable.getCause();
        }
        int most = Math.min(files.size(), MOST_FILES_OF_FOLDER);
        for (int i = 0; i < most; i++) {
            inFolder(files.get(i), to, (i + 1.0) / most);
        }
        if (files.size() > most) {
            to.take(Collected.refused(path.toString(), "it has more than %d files".formatted(most),
                    "fewer; the others were left out"), 1);
        }
    }

    private static void inFolder(Path file, Taker to, double done) {
        String name = file.getFileName().toString();
        try {
            if (name.equals(TABLE) && Files.exists(file.resolveSibling(ENTRY_POINT))) {
                to.take(new Collected(file.toString(), bounded(Files.newInputStream(file)), Optional.of(
                        bounded(Files.newInputStream(file.resolveSibling(ENTRY_POINT)))), List.of()), done);
            } else if (!name.equals(ENTRY_POINT) || !Files.exists(file.resolveSibling(TABLE))) {
                ofFile(file, to, done);
            }
        } catch (IOException unreadable) {
            to.take(Collected.refused(file.toString(), "it can't be read: " + unreadable.getMessage(),
                    "a file that may be read"), done);
        }
    }

    private static void ofFile(Path file, Taker to, double done) throws IOException {
        byte[] content = bounded(Files.newInputStream(file));
        if (content.length > LARGEST_FILE) {
            to.take(tooLarge(file.toString()), done);
        } else if (isArchive(content)) {
            List<Collected> entries = archive(file.toString(), content);
            for (int i = 0; i < entries.size(); i++) {
                to.take(entries.get(i), done * (i + 1) / entries.size());
            }
        } else {
            to.take(Collected.of(file.toString(), content), done);
        }
    }

    private static Collected tooLarge(String place) {
        return Collected.refused(place, "it is larger than %d MB".formatted(LARGEST_FILE >> 20),
                "a table, an image or a list");
    }

    /** At most one byte more than the largest file. */
    private static byte[] bounded(InputStream stream) throws IOException {
        try (stream) {
            return stream.readNBytes(LARGEST_FILE + 1);
        }
    }

    private static boolean isArchive(byte[] content) {
        return content.length > 4 && content[0] == 'P' && content[1] == 'K' && content[2] == 3 && content[3] == 4;
    }

    static List<Collected> archive(String place, byte[] content) {
        Map<String, byte[]> entries = new TreeMap<>();
        List<Collected> refused = new ArrayList<>();
        long total = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(content))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.isDirectory()) {
                    continue;
                }
                byte[] bytes = zip.readNBytes((int) Math.min(LARGEST_FILE, LARGEST_ARCHIVE - total) + 1);
                total += bytes.length;
                if (bytes.length > LARGEST_FILE || total > LARGEST_ARCHIVE || entries.size() >= MOST_FILES) {
                    refused.add(Collected.refused(place + "!" + entry.getName(), "the archive unpacks to too much",
                            "at most %d files, %d MB each and %d MB in all; the rest was left out".formatted(
                                    MOST_FILES, LARGEST_FILE >> 20, LARGEST_ARCHIVE >> 20)));
                    break;
                }
                entries.put(entry.getName(), bytes);
            }
        } catch (ZipException | IllegalArgumentException damaged) {
            refused.add(Collected.refused(place, "the archive is damaged: " + damaged.getMessage(),
                    "a whole ZIP file"));
        } catch (IOException cut) {
            refused.add(Collected.refused(place, "the archive ends too early", "a whole ZIP file"));
        }
        List<Collected> found = new ArrayList<>();
        entries.forEach((name, bytes) -> entry(place, name, bytes, entries).ifPresent(found::add));
        found.addAll(refused);
        return found;
    }

    private static Optional<Collected> entry(String place, String name, byte[] bytes, Map<String, byte[]> entries) {
        String folder = name.substring(0, name.lastIndexOf('/') + 1);
        String file = name.substring(folder.length());
        String full = place + "!" + name;
        if (file.equals(ENTRY_POINT) && entries.containsKey(folder + TABLE)) {
            return Optional.empty();
        }
        if (file.equals(TABLE) && entries.containsKey(folder + ENTRY_POINT)) {
            return Optional.of(new Collected(full, bytes, Optional.of(entries.get(folder + ENTRY_POINT)), List.of()));
        }
        return Optional.of(isArchive(bytes) ? Collected.refused(full, "an archive in an archive",
                "archives of tables; unpack it first") : Collected.of(full, bytes));
    }
}
