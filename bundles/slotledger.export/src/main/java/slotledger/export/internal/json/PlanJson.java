package slotledger.export.internal.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import slotledger.export.ExportException;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.plan.Plan;

/** A plan as a JSON file by the schema beside this bundle's classes, plan.schema.json. */
public final class PlanJson {

    /** Where the schema lies in this bundle. */
    public static final String SCHEMA = "/slotledger/export/plan.schema.json";

    private static final String FORMAT = "slotledger-plan";
    private static final int VERSION = 3;

    private final ObjectMapper mapper = JsonMapper.builder(new JsonFactory())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    public void write(Plan plan, Path file) throws ExportException {
        WholeFile.write(file, out -> write(plan, out));
    }

    private void write(Plan plan, OutputStream out) throws IOException {
        try (JsonGenerator json = mapper.createGenerator(out)) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeNumberField("version", VERSION);
            json.writeFieldName("plan");
            new RecordWriter(json).write(plan);
            json.writeEndObject();
        }
    }

    public Plan read(Path file) throws ExportException {
        JsonNode root;
        try (InputStream in = Files.newInputStream(file)) {
            root = mapper.readTree(in);
        } catch (JsonProcessingException e) {
            String where = e.getLocation() == null ? "" : " (line " + e.getLocation().getLineNr() + ")";
            throw new ExportException("The file %s is not a plan: it is no JSON, or is cut short%s: %s."
                    .formatted(file, where, e.getOriginalMessage()), e);
        } catch (IOException e) {
            throw new ExportException("The file %s can't be read: %s.".formatted(file, e.getMessage()), e);
        }
        if (root == null || !FORMAT.equals(root.path("format").textValue())) {
            throw new ExportException("The file %s is not a plan: it doesn't say \"format\": \"%s\"."
                    .formatted(file, FORMAT));
        }
        if (root.path("version").intValue() != VERSION) {
            throw new ExportException("The file %s has version %s; version %d can be read. Plan the fleet again."
                    .formatted(file, root.path("version"), VERSION));
        }
        try {
            return (Plan) new RecordReader().read(root.path("plan"), Plan.class, "plan");
        } catch (RecordReader.MismatchException e) {
            throw new ExportException(
                    "The file %s is not a plan as it was written, %s".formatted(file, e.getMessage()), e);
        }
    }
}
