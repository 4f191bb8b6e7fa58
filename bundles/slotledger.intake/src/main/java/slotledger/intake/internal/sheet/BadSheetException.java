package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.intake.IntakeException;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.source.Place;

/** A file that can't be read, before its name is put to it. Crosses the parsers, which only let an IOException pass. */
final class BadSheetException extends IOException {

    private static final long serialVersionUID = 1L;

    static final String COPY_AGAIN = "Copy or download the file again; if that is no help, open it in a spreadsheet"
            + " program, check it, and save it as .xlsx.";

    private final String code;
    private final String sheet;
    private final int row;
    private final String expected;
    private final String remedy;

    private BadSheetException(String code, String sheet, int row, String message, String expected, String remedy,
            Throwable cause) {
        super(message, cause);
        this.code = code;
        this.sheet = sheet;
        this.row = row;
        this.expected = expected;
        this.remedy = remedy;
    }

    BadSheetException(String code, String message, String expected, String remedy) {
        this(code, message, expected, remedy, null);
    }

    BadSheetException(String code, String message, String expected, String remedy, Throwable cause) {
        this(code, "", 0, message, expected, remedy, cause);
    }

    /** Something a spreadsheet program would not have written. */
    static BadSheetException damaged(String message, Throwable cause) {
        return new BadSheetException("workbook-damaged", "", 0, message, "a whole workbook", COPY_AGAIN, cause);
    }

    /** Something that would take more memory than any honest file. */
    static BadSheetException tooLarge(String message) {
        return new BadSheetException("file-too-large", message, "a list of machines, offers or modules",
                "Copy the rows and columns that matter into a new workbook and read that.");
    }

    /** The same, with where it was seen; row 0 for the sheet as a whole. A place that is known already stays. */
    BadSheetException at(String seenSheet, int seenRow) {
        if (!sheet.isEmpty() || row > 0) {
            return this;
        }
        return new BadSheetException(code, seenSheet, seenRow, getMessage(), expected, remedy, this);
    }

    IntakeException in(Path file) {
        OptionalInt line = row > 0 ? OptionalInt.of(row) : OptionalInt.empty();
        Place place = new Place(nameOf(file), sheet, line, OptionalInt.empty(), "");
        return new IntakeException(new Finding(
                Severity.ERROR, code, place, Optional.empty(), "", getMessage(), expected, remedy), this);
    }

    static String nameOf(Path file) {
        return file.getFileName() == null ? file.toString() : file.getFileName().toString();
    }
}
