package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.eventusermodel.HSSFEventFactory;
import org.apache.poi.hssf.eventusermodel.HSSFRequest;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import slotledger.intake.IntakeException;
import slotledger.model.task.CancelledException;
import slotledger.model.task.Progress;

/** Reads .xls workbooks (Excel 97 to 2003) record by record. */
final class XlsFile implements SheetFile {

    /** The texts of a workbook are kept in memory and can take several times their length in the file. */
    private static final int SHARE = 8;

    @Override
    public void read(Path file, SheetVisitor visitor, Progress progress) throws IntakeException {
        try {
            long most = Runtime.getRuntime().maxMemory() / SHARE;
            if (Files.size(file) > most) {
                throw new BadSheetException("file-too-large",
                        "The .xls file has %d MB, more than can be read.".formatted(Files.size(file) >> 20),
                        "at most %d MB".formatted(most >> 20),
                        "Open it in a spreadsheet program and save it as .xlsx, which may be of any size.");
            }
            try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
                readBook(container, file, visitor, progress);
            }
        } catch (BadSheetException bad) {
            throw bad.in(file);
        } catch (IOException unreadable) {
            throw SheetFiles.unreadable(file, unreadable);
        }
    }

    private static void readBook(POIFSFileSystem container, Path file, SheetVisitor visitor, Progress progress)
            throws IOException {
        DirectoryNode root = container.getRoot();
        String name = root.getEntryNames().stream().filter("Workbook"::equalsIgnoreCase).findFirst()
                .orElseThrow(() -> BadSheetException.damaged("The file holds no workbook.", null));
        XlsRecords records = new XlsRecords(visitor);
        HSSFRequest request = new HSSFRequest();
        request.addListenerForAllRecords(records);
        try (InputStream stream = root.createDocumentInputStream(name)) {
            Meter meter = new Meter(progress, "Reading " + BadSheetException.nameOf(file), stream.available());
            new HSSFEventFactory().processEvents(request, new MeteredStream(stream, meter));
            records.finish();
            meter.finish();
        } catch (XlsRecords.Stopped stopped) {
            stopped.rethrow();
        } catch (CancelledException cancelled) {
            throw cancelled;
        } catch (EncryptedDocumentException locked) {
            throw FileKind.locked();
        } catch (OldExcelFormatException old) {
            throw FileKind.oldWorkbook();
        } catch (RuntimeException | IOException broken) {
            // POI answers damage with many kinds of exceptions, down to an index out of bounds.
            throw BadSheetException.damaged("The workbook is damaged: its records can't be read.", broken)
                    .at(records.sheetName(), records.rowNumber());
        }
    }
}
