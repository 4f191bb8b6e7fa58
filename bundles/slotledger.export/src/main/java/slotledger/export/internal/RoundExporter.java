package slotledger.export.internal;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.pdf.RoundsPdf;
import slotledger.export.internal.round.WorkBook;
import slotledger.export.spi.PlanExporter;
import slotledger.model.task.Progress;

/** rounds.pdf and work.xlsx: what to pack, where to go, what is left over, who is not helped and why. */
@Component
public final class RoundExporter implements PlanExporter {

    @Activate
    public RoundExporter() {
    }

    @Override
    public String name() {
        return "rounds";
    }

    @Override
    public int rank() {
        return 40;
    }

    @Override
    public List<Path> write(PlanBook book, Path folder, Progress progress) throws ExportException {
        Path document = folder.resolve("rounds.pdf");
        Path workbook = folder.resolve("work.xlsx");
        progress.step("rounds", 0);
        new RoundsPdf(book, progress).write(document);
        progress.check();
        progress.step("rounds", 0.5);
        new WorkBook(book, progress).write(workbook);
        progress.step("rounds", 1);
        return List.of(document, workbook);
    }
}
