package slotledger.export.internal.html;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.JobSheets;
import slotledger.export.internal.text.FileNames;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.WholeFile;
import slotledger.export.internal.text.Words;
import slotledger.model.task.Progress;

/** A folder with a page a machine and an index by site and room; it appears when all of it is there. */
public final class JobPages {

    private static final String INDEX = "index.html";

    private final PlanBook book;
    private final Progress progress;

    public JobPages(PlanBook book, Progress progress) {
        this.book = book;
        this.progress = progress;
    }

    /** Writes the folder; returns its index. */
    public Path write(Path folder) throws ExportException {
        Path part = folder.resolveSibling(folder.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Files.createDirectory(part);
            fill(part);
            Files.move(part, folder);
            return folder.resolve(INDEX);
        } catch (IOException e) {
            throw new ExportException("The job pages can't be written to %s: %s. Is the folder writable and new?"
                    .formatted(folder, e.getMessage()), e);
        } finally {
            delete(part);
        }
    }

    private void fill(Path part) throws ExportException {
        FileNames names = new FileNames("index");
        List<JobSheet> sheets = new JobSheets(book).all();
        Map<JobSheet, String> files = new LinkedHashMap<>();
        for (JobSheet sheet : sheets) {
            progress.check();
            progress.step("job pages", files.size() / (double) sheets.size());
            String file = names.name(sheet.machine().tag().value()) + ".html";
            files.put(sheet, file);
            WholeFile.write(part.resolve(file),
                    new SheetPage(sheet, book.plan().title(), book.plan().date()).text());
        }
        WholeFile.write(part.resolve(INDEX), index(files));
        progress.step("job pages", 1);
    }

    private String index(Map<JobSheet, String> files) {
        Html html = new Html(Texts.line(book.plan().title()) + ": job sheets", "index " + book.plan().title());
        html.raw("<header><h1>").name(book.plan().title()).raw("</h1>\n");
        html.element("p", "Job sheets for " + Texts.count(files.size(), "machine", "machines") + ", plan of "
                + book.plan().date() + ". By site and room; the number is the place on the round.");
        html.raw("</header>\n");
        String site = null;
        String room = null;
        for (Map.Entry<JobSheet, String> entry : files.entrySet()) {
            JobSheet sheet = entry.getKey();
            if (!sheet.machine().where().site().equals(site)) {
                site = sheet.machine().where().site();
                room = null;
                html.raw("<h2>").name(Texts.or(site, "Site not known")).raw("</h2>\n");
            }
            if (!sheet.machine().where().room().equals(room)) {
                room = sheet.machine().where().room();
                html.raw("<h3>").name(Texts.or(room, "Room not known")).raw("</h3>\n");
            }
            html.raw("<div class=\"links\"><a href=\"" + entry.getValue() + "\"><b>")
                    .name(Texts.shortened(sheet.machine().tag().value(), 80)).raw("</b><br>")
                    .name(sheet.board().name()).text(", " + Words.memory(sheet.plan().runsNow()) + " to "
                            + Words.memory(sheet.plan().runsAfter()) + ", number " + sheet.orderOf())
                    .raw("</a></div>\n");
        }
        return html.done();
    }

    private static void delete(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path visited, IOException e) throws IOException {
                    Files.delete(visited);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            // a rest of an unfinished folder does no harm
        }
    }
}
