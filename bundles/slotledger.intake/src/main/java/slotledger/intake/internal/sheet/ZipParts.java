package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * The parts of a workbook's zip container, by name whatever their case and slashes. Nothing is ever unpacked to disk,
 * so a name such as "../../x" reaches nothing.
 *
 * <p>Not POI's container: its limits against zip bombs are settings of the whole program, and its ratio of 1:100
 * refuses an honest sheet of a million empty rows.
 */
final class ZipParts implements AutoCloseable {

    /** A workbook has a few dozen parts; sheets with pictures a few hundred. */
    static final int MOST_ENTRIES = 65_536;

    private final ZipFile zip;
    private final Map<String, ZipEntry> entries = new HashMap<>();

    ZipParts(Path file) throws IOException {
        try {
            zip = new ZipFile(file.toFile());
        } catch (ZipException broken) {
            throw BadSheetException.damaged("The workbook's container is damaged.", broken);
        }
        if (zip.size() > MOST_ENTRIES) {
            int parts = zip.size();
            zip.close();
            throw BadSheetException.tooLarge("The workbook has %d parts.".formatted(parts));
        }
        zip.stream().forEach(entry -> entries.putIfAbsent(normal(entry.getName()), entry));
    }

    private static String normal(String name) {
        String slashed = name.replace('\\', '/').toLowerCase(Locale.ROOT);
        return slashed.startsWith("/") ? slashed.substring(1) : slashed;
    }

    boolean has(String part) {
        return entries.containsKey(normal(part));
    }

    /** Bytes of a part when unpacked, as far as the container says so; only good for showing progress. */
    long size(String part) {
        ZipEntry entry = entries.get(normal(part));
        return entry == null ? 0 : Math.max(0, entry.getSize());
    }

    GuardedStream open(String part, Meter meter) throws IOException {
        ZipEntry entry = entries.get(normal(part));
        if (entry == null) {
            throw BadSheetException.damaged("The workbook lacks its part %s.".formatted(part), null);
        }
        try {
            return new GuardedStream(zip.getInputStream(entry), entry, meter);
        } catch (ZipException broken) {
            throw BadSheetException.damaged("The workbook's part %s can't be unpacked.".formatted(part), broken);
        }
    }

    /** Resolves a relationship's target against the part that names it. */
    static String resolve(String part, String target) throws BadSheetException {
        String slashed = target.replace('\\', '/');
        if (slashed.startsWith("/")) {
            return slashed.substring(1);
        }
        try {
            return URI.create("/" + part).resolve(slashed).normalize().getPath().substring(1);
        } catch (IllegalArgumentException | NullPointerException odd) {
            throw BadSheetException.damaged("The workbook points to a part with an impossible name (%s)."
                    .formatted(target), odd);
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
