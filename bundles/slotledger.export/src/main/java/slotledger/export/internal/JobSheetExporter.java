package slotledger.export.internal;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.pdf.JobSheetsPdf;
import slotledger.export.spi.PlanExporter;
import slotledger.model.task.Progress;

/** job-sheets.pdf: a sheet a machine, for printing. */
@Component
public final class JobSheetExporter implements PlanExporter {

    @Activate
    public JobSheetExporter() {
    }

    @Override
    public String name() {
        return "job-sheets";
    }

    @Override
    public int rank() {
        return 20;
    }

    @Override
    public List<Path> write(PlanBook book, Path folder, Progress progress) throws ExportException {
        Path file = folder.resolve("job-sheets.pdf");
        new JobSheetsPdf(book, progress).write(file);
        progress.step("job sheets", 1);
        return List.of(file);
    }
}
