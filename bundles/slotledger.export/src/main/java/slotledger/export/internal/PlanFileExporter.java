package slotledger.export.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.json.PlanJson;
import slotledger.export.spi.PlanExporter;
import slotledger.model.task.Progress;

/** plan.json: the plan for later runs and other programs. */
@Component
public final class PlanFileExporter implements PlanExporter {

    @Activate
    public PlanFileExporter() {
    }

    @Override
    public String name() {
        return "plan-file";
    }

    @Override
    public List<Path> write(PlanBook book, Path folder, Progress progress) throws ExportException {
        progress.step("plan file", 0);
        progress.check();
        Path file = folder.resolve("plan.json");
        new PlanJson().write(book.plan(), file);
        Path schema = folder.resolve("plan.schema.json");
        copySchema(schema);
        progress.step("plan file", 1);
        return List.of(file, schema);
    }

    private static void copySchema(Path target) throws ExportException {
        try (InputStream schema = PlanFileExporter.class.getResourceAsStream(PlanJson.SCHEMA)) {
            Files.copy(schema, target);
        } catch (IOException problem) {
            throw new ExportException(
                    "The file " + target + " can't be written: " + problem.getMessage() + ".", problem);
        }
    }
}
