package slotledger.export.internal.pdf;

import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.JobSheets;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.task.Progress;

/** All job sheets in one document for printing, with bookmarks by site, room and machine. */
public final class JobSheetsPdf {

    private static final int BOOKMARK_LIMIT = 60;

    private final PlanBook book;
    private final Progress progress;

    public JobSheetsPdf(PlanBook book, Progress progress) {
        this.book = book;
        this.progress = progress;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, this::print);
    }

    private void print(OutputStream out) {
        List<JobSheet> sheets = new JobSheets(book).all();
        try (Paper paper = new Paper(out, book.plan().title() + ", plan of " + book.plan().date())) {
            if (sheets.isEmpty()) {
                paper.begin("Job sheets");
                paper.heading("No machine needs to be opened", 14);
                return;
            }
            PdfOutline site = null;
            PdfOutline room = null;
            JobSheet last = null;
            int done = 0;
            for (JobSheet sheet : sheets) {
                progress.check();
                progress.step("job sheets", done++ / (double) sheets.size());
                paper.begin(sheet.machine().tag().value());
                boolean sameSite = last != null && last.machine().where().site().equals(sheet.machine().where().site());
                boolean sameRoom = sameSite && last.machine().where().equals(sheet.machine().where());
                if (!sameSite) {
                    site = bookmark(paper, paper.writer().getRootOutline(),
                            Texts.or(sheet.machine().where().site(), "Site not known"));
                }
                if (!sameRoom) {
                    room = bookmark(paper, site, Texts.or(sheet.machine().where().room(), "Room not known"));
                }
                bookmark(paper, room, sheet.machine().tag().value());
                new JobSheetPrint(paper, sheet).print();
                last = sheet;
            }
        }
    }

    private static PdfOutline bookmark(Paper paper, PdfOutline parent, String title) {
        return new PdfOutline(parent, new PdfDestination(PdfDestination.FIT),
                Texts.shortened(Texts.line(title), BOOKMARK_LIMIT), false);
    }
}
