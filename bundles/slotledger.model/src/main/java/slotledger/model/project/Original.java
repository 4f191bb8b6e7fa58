package slotledger.model.project;

/**
 * A file as it was brought in, byte for byte.
 *
 * @param name   path in the project's folder of plain files, with slashes: "fleet.xlsx", "boards/kb510.yaml"
 * @param sha256 what identifies the bytes, 64 hexadecimal digits in lower case
 * @param size   bytes
 */
public record Original(String name, String sha256, long size) {

    public Original {
        if (!isPlainPath(name)) {
            throw new IllegalArgumentException(
                    "The name (%s) of an original must be a path below the project's folder.".formatted(name));
        }
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "The SHA-256 (%s) of %s must be 64 hexadecimal digits.".formatted(sha256, name));
        }
        if (size < 0) {
            throw new IllegalArgumentException("The size (%d) of %s must be at least 0.".formatted(size, name));
        }
    }

    /** Names come out of packed files of anybody's making; none may lead out of the folder they are written to. */
    private static boolean isPlainPath(String name) {
        if (name.isEmpty() || name.startsWith("/") || name.contains("\\") || name.contains(":")
                || name.chars().anyMatch(c -> c < ' ')) {
            return false;
        }
        for (String step : name.split("/", -1)) {
            if (step.isBlank() || step.equals(".") || step.equals("..")) {
                return false;
            }
        }
        return true;
    }
}
