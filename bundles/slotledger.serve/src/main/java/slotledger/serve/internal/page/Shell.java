package slotledger.serve.internal.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The files that make up the page; there is no data in them. */
public final class Shell {

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html;charset=utf-8",
            "css", "text/css;charset=utf-8",
            "js", "text/javascript;charset=utf-8",
            "svg", "image/svg+xml",
            "webmanifest", "application/manifest+json");
    private static final String[] FILES = {"index.html", "look.css", "main.js", "keep.js", "link.js", "jobs.js",
        "list.js", "machine.js", "parts.js", "scan.js", "icon.svg", "app.webmanifest"};
    /** Keeps the others for times without a connection; so it must know when one of them has changed. */
    private static final String WORKER = "worker.js";

    private final Map<String, File> files = new LinkedHashMap<>();

    public Shell() {
        StringBuilder versions = new StringBuilder();
        for (String name : FILES) {
            byte[] bytes = bytes(name);
            versions.append(hash(bytes));
            put("index.html".equals(name) ? "/" : "/" + name, name, bytes);
        }
        String names = "\"" + String.join("\", \"", files.keySet()) + "\"";
        put("/" + WORKER, WORKER, new String(bytes(WORKER), StandardCharsets.UTF_8)
                .replace("@version@", hash(versions.toString().getBytes(StandardCharsets.UTF_8)))
                .replace("\"@files@\"", names)
                .getBytes(StandardCharsets.UTF_8));
    }

    /**
     * One file.
     *
     * @param type of its content
     * @param tag  changes when it does
     */
    public record File(String type, byte[] bytes, String tag) {
    }

    /** The file of a path, exactly as it is written. */
    public Optional<File> file(String path) {
        return Optional.ofNullable(files.get(path));
    }

    private void put(String path, String name, byte[] bytes) {
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
        files.put(path, new File(type, bytes, "\"" + hash(bytes) + "\""));
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 8);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java must know SHA-256.", impossible);
        }
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Shell.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("The file %s of the page must be in the bundle.".formatted(name));
            }
            return in.readAllBytes();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
