package slotledger.lib.solver.internal;

import java.util.Locale;

/** Names a platform as the solver's artifacts do. */
public final class Platform {

    private Platform() {
    }

    /** For example {@code linux-x86-64}, from the system properties {@code os.name} and {@code os.arch}. */
    public static String name(String osName, String osArch) {
        return system(osName.toLowerCase(Locale.ROOT)) + "-" + processor(osArch.toLowerCase(Locale.ROOT));
    }

    private static String system(String osName) {
        if (osName.startsWith("windows")) {
            return "win32";
        }
        return osName.startsWith("mac") ? "darwin" : osName;
    }

    private static String processor(String osArch) {
        return switch (osArch) {
            case "amd64", "x86_64" -> "x86-64";
            case "arm64" -> "aarch64";
            default -> osArch;
        };
    }
}
