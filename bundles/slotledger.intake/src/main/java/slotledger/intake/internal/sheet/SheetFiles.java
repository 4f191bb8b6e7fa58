package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import slotledger.intake.IntakeException;
import slotledger.model.task.Progress;

/** Reads any file of cells: looks at what is in it, not at how its name ends. */
public final class SheetFiles implements SheetFile {

    @Override
    public void read(Path file, SheetVisitor visitor, Progress progress) throws IntakeException {
        readerFor(file).read(file, visitor, progress);
    }

    private static SheetFile readerFor(Path file) throws IntakeException {
        try {
            return switch (FileKind.of(file)) {
                case XLSX -> new XlsxFile();
                case XLS -> new XlsFile();
                case TEXT -> new CsvFile();
            };
        } catch (BadSheetException bad) {
            throw bad.in(file);
        } catch (NoSuchFileException missing) {
            throw new BadSheetException("file-missing", "There is no such file (%s).".formatted(file.toAbsolutePath()),
                    "the path of an .xlsx, .xls or .csv file", "Check the folder and the spelling of the name.")
                    .in(file);
        } catch (AccessDeniedException denied) {
            throw new BadSheetException("file-not-readable", "The file may not be read by this user.",
                    "a readable file", "Change its permissions, or copy it to a folder of your own.").in(file);
        } catch (IOException unreadable) {
            throw unreadable(file, unreadable);
        }
    }

    /** The disk or the network failed, which says nothing about what is in the file. */
    static IntakeException unreadable(Path file, IOException cause) {
        return new BadSheetException("file-not-readable", "The file can't be read: %s.".formatted(cause.getMessage()),
                "a readable file", "Close it where it is open, check the disk or network folder, and try again.", cause)
                .in(file);
    }

    /** A copy of a file's first bytes, enough to tell what it is. */
    static byte[] head(Path file, int length) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return in.readNBytes(length);
        }
    }
}
