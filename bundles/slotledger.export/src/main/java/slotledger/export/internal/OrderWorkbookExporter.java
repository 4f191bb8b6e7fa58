package slotledger.export.internal;

import java.nio.file.Path;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.order.OrderBook;
import slotledger.export.spi.PlanExporter;
import slotledger.model.task.Progress;

/** order.xlsx: what to buy of whom, for whom, and why. */
@Component
public final class OrderWorkbookExporter implements PlanExporter {

    @Activate
    public OrderWorkbookExporter() {
    }

    @Override
    public String name() {
        return "order-workbook";
    }

    @Override
    public int rank() {
        return 10;
    }

    @Override
    public List<Path> write(PlanBook book, Path folder, Progress progress) throws ExportException {
        Path file = folder.resolve("order.xlsx");
        progress.step("order workbook", 0);
        new OrderBook(book, progress).write(file);
        progress.step("order workbook", 1);
        return List.of(file);
    }
}
