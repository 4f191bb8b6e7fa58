package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.nio.file.Path;
import slotledger.intake.IntakeException;
import slotledger.model.task.Progress;

/** Reads .xlsx workbooks as a stream: only the shared texts and the row under way are in memory. */
final class XlsxFile implements SheetFile {

    /** Share of the heap that shared texts may take. */
    private static final int SHARE = 2;

    @Override
    public void read(Path file, SheetVisitor visitor, Progress progress) throws IntakeException {
        try (ZipParts parts = new ZipParts(file)) {
            Meter unseen = new Meter(Progress.NONE, "", 0);
            XlsxBook book = XlsxBook.of(parts, unseen);
            XlsxStyles styles = new XlsxStyles();
            if (!book.styles().isEmpty()) {
                try (PartXml xml = new PartXml(parts.open(book.styles(), unseen))) {
                    styles.read(xml);
                }
            }
            long size = parts.size(book.strings());
            for (XlsxBook.Sheet sheet : book.sheets()) {
                size += parts.size(sheet.part());
            }
            Meter meter = new Meter(progress, "Reading " + BadSheetException.nameOf(file), size);
            SharedStrings strings = new SharedStrings(Runtime.getRuntime().maxMemory() / SHARE);
            if (!book.strings().isEmpty()) {
                try (PartXml xml = new PartXml(parts.open(book.strings(), meter))) {
                    strings.read(xml);
                }
            }
            XlsxCells cells = new XlsxCells(strings, styles, book.date1904());
            for (XlsxBook.Sheet sheet : book.sheets()) {
                try (PartXml xml = new PartXml(parts.open(sheet.part(), meter))) {
                    new XlsxSheet(xml, cells, visitor).read(sheet);
                }
            }
            meter.finish();
        } catch (BadSheetException bad) {
            throw bad.in(file);
        } catch (IOException unreadable) {
            throw SheetFiles.unreadable(file, unreadable);
        }
    }
}
