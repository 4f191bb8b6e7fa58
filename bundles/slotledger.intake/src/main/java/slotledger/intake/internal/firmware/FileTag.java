package slotledger.intake.internal.firmware;

import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * The asset tag, serial number or name that a file was named by: "firmware/K-17.bin", "fleet.zip!K-17/DMI",
 * "K-17.dmidecode.txt".
 */
final class FileTag {

    /** Names that every machine's files have; the folder tells the machine then. */
    private static final Pattern GENERIC = Pattern.compile(
            "(?i)(DMI|smbios|dmidecode|dmi|memory|firmware|table|dump|cim|tables)");
    private static final Pattern ENDING = Pattern.compile(
            "(?i)\\.(bin|dmi|smbios|dump|dmidecode|txt|json|xml|csv|raw|hex|dat|zip|lst|log|rom|spd)$");

    private FileTag() {
    }

    /** Whether the place tells one machine by a name of its own. */
    static boolean isTold(String place) {
        String tag = of(place);
        return !tag.matches(".*#\\d+") && !GENERIC.matcher(tag).matches();
    }

    /** @param place as people see it, with "#2" behind it for the second machine of a list */
    static String of(String place) {
        String path = place.replace('!', '/').replace('\\', '/');
        int number = path.lastIndexOf('#');
        String behind = number > 0 && path.substring(number).matches("#\\d+") ? path.substring(number) : "";
        String[] parts = path.substring(0, path.length() - behind.length()).split("/");
        String name = "";
        for (int i = parts.length - 1; i >= 0 && (name.isBlank() || GENERIC.matcher(name).matches()); i--) {
            name = bare(parts[i]);
        }
        return name.isBlank() ? bare(parts[parts.length - 1]) + behind : name + behind;
    }

    private static String bare(String file) {
        String name = file;
        String shorter = ENDING.matcher(name).replaceFirst("");
        while (!shorter.equals(name) && !shorter.isEmpty()) {
            name = shorter;
            shorter = ENDING.matcher(name).replaceFirst("");
        }
        return name.strip();
    }

    /** The place in the words of the project: from the folder or archive that was named on. */
    static String shown(Path root, String place) {
        Path parent = root.toAbsolutePath().getParent();
        String name = String.valueOf(root.getFileName());
        String start = root.toString();
        return parent == null || !place.startsWith(start) ? place : name + place.substring(start.length());
    }
}
