package slotledger.export.internal;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.html.JobPages;
import slotledger.export.spi.PlanExporter;
import slotledger.model.task.Progress;

/** job-sheets/: a page a machine for phones, with an index. */
@Component
public final class JobPageExporter implements PlanExporter {

    @Activate
    public JobPageExporter() {
    }

    @Override
    public String name() {
        return "job-pages";
    }

    @Override
    public int rank() {
        return 30;
    }

    @Override
    public List<Path> write(PlanBook book, Path folder, Progress progress) throws ExportException {
        return List.of(new JobPages(book, progress).write(folder.resolve("job-sheets")));
    }
}
