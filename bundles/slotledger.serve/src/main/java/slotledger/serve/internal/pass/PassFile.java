package slotledger.serve.internal.pass;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import slotledger.serve.ServeException;

/** Keeps passes and sessions between starts: hashes only, readable by its owner where the file system knows owners. */
final class PassFile {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Path file;

    PassFile(Path file) {
        this.file = file;
    }

    /** All that is kept. */
    record Content(List<PassRecord> passes, List<Session> sessions) {
        Content {
            passes = List.copyOf(passes);
            sessions = List.copyOf(sessions);
        }
    }

    Content read() throws ServeException {
        if (!Files.exists(file)) {
            return new Content(List.of(), List.of());
        }
        try {
            JsonNode all = JSON.readTree(file.toFile());
            List<PassRecord> passes = new ArrayList<>();
            for (JsonNode pass : all.path("passes")) {
                passes.add(new PassRecord(text(pass, "round"), pass.path("plan").asInt(), text(pass, "technician"),
                        text(pass, "salt"), text(pass, "hash"), Instant.parse(text(pass, "expires"))));
            }
            List<Session> sessions = new ArrayList<>();
            for (JsonNode each : all.path("sessions")) {
                sessions.add(new Session(text(each, "hash"), text(each, "round"), each.path("plan").asInt(),
                        text(each, "technician"), Instant.parse(text(each, "expires"))));
            }
            return new Content(passes, sessions);
        } catch (IOException | DateTimeParseException problem) {
            throw new ServeException("The passes in " + file + " can't be read. Delete the file; every round then gets "
                    + "a new secret.", problem);
        }
    }

    void write(Content content) throws IOException {
        ObjectNode all = JSON.createObjectNode();
        for (PassRecord pass : content.passes()) {
            all.withArray("passes").addObject().put("round", pass.round()).put("plan", pass.plan())
                    .put("technician", pass.technician()).put("salt", pass.salt()).put("hash", pass.hash())
                    .put("expires", pass.expires().toString());
        }
        for (Session session : content.sessions()) {
            all.withArray("sessions").addObject().put("hash", session.hash()).put("round", session.round())
                    .put("plan", session.plan()).put("technician", session.technician())
                    .put("expires", session.expires().toString());
        }
        Files.createDirectories(file.getParent());
        Path part = OwnersFile.createBeside(file);
        try {
            Files.write(part, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(all));
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static String text(JsonNode node, String field) throws IOException {
        JsonNode value = node.get(field);
        if (value == null || !value.isTextual()) {
            throw new IOException("The field \"" + field + "\" is missing.");
        }
        return value.asText();
    }
}
