package slotledger.export.internal;

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
        progress.step("plan file", 1);
        return List.of(file);
    }
}
