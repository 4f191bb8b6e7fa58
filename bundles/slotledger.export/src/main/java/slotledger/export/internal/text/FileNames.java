package slotledger.export.internal.text;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Gives each text a file name of its own that every usual file system takes: letters A to Z, digits, hyphen and
 * underscore, at most 60 characters, no device name, unique without regard to case.
 */
public final class FileNames {

    private static final int MOST = 60;
    /** Names Windows keeps for devices, with any ending (Microsoft, "Naming Files, Paths, and Namespaces"). */
    private static final Pattern DEVICE = Pattern.compile("(?i)con|prn|aux|nul|com[0-9]|lpt[0-9]|conin|conout|clock");

    private final Set<String> taken = new HashSet<>();

    /** Keeps names from being given to anything else. */
    public FileNames(String... reserved) {
        for (String name : reserved) {
            taken.add(name.toLowerCase(Locale.ROOT));
        }
    }

    /** A new name for the text, without an ending. */
    public String name(String text) {
        String safe = text.replaceAll("[^A-Za-z0-9_-]+", "_").replaceAll("^[_-]+|[_-]+$", "");
        if (safe.length() > MOST) {
            safe = safe.substring(0, MOST);
        }
        if (safe.isEmpty()) {
            safe = "machine";
        }
        if (DEVICE.matcher(safe).matches()) {
            safe = safe + "_";
        }
        String unique = safe;
        for (int number = 2; !taken.add(unique.toLowerCase(Locale.ROOT)); number++) {
            unique = safe + "-" + number;
        }
        return unique;
    }
}
