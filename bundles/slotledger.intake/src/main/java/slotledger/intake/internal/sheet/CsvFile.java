package slotledger.intake.internal.sheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import slotledger.intake.IntakeException;
import slotledger.model.task.Progress;

/** Reads text files of values between commas, semicolons or tabs (RFC 4180 and what is usual beside it). */
final class CsvFile implements SheetFile {

    private static final int SAMPLE = 1 << 16;

    // sep=;
    private static final Pattern SEPARATOR_LINE = Pattern.compile("\"?sep=(.)\"?[ ,;\\t]*(\r\n|\n|\r|\\z)",
            Pattern.CASE_INSENSITIVE);

    @Override
    public void read(Path file, SheetVisitor visitor, Progress progress) throws IntakeException {
        try {
            TextCharset encoding = TextCharset.of(file, progress);
            Meter meter = new Meter(progress, "Reading " + BadSheetException.nameOf(file), Files.size(file));
            try (InputStream in = new MeteredStream(Files.newInputStream(file), meter);
                    Reader text = new BufferedReader(decoded(in, encoding), SAMPLE)) {
                readText(text, visitor);
            }
            meter.finish();
        } catch (BadSheetException bad) {
            throw bad.in(file);
        } catch (IOException unreadable) {
            throw SheetFiles.unreadable(file, unreadable);
        }
    }

    private static Reader decoded(InputStream in, TextCharset encoding) throws IOException {
        in.readNBytes(encoding.mark());
        return new InputStreamReader(in, encoding.charset());
    }

    private static void readText(Reader text, SheetVisitor visitor) throws IOException {
        text.mark(SAMPLE + 1);
        char[] sample = new char[SAMPLE];
        int length = 0;
        for (int count = 0; count >= 0 && length < SAMPLE; count = text.read(sample, length, SAMPLE - length)) {
            length += count;
        }
        text.reset();
        String beginning = new String(sample, 0, Math.max(0, length));
        Matcher separator = SEPARATOR_LINE.matcher(beginning);
        char delimiter;
        int skippedLines = 0;
        if (separator.lookingAt()) {
            delimiter = separator.group(1).charAt(0);
            skippedLines = 1;
            text.skip(separator.end());
        } else {
            delimiter = Delimiter.of(beginning, length < SAMPLE);
        }
        visitor.startSheet("", false);
        readRecords(text, delimiter, skippedLines, visitor);
        visitor.endSheet(List.of(), Set.of());
    }

    private static void readRecords(Reader text, char delimiter, int skippedLines, SheetVisitor visitor)
            throws IOException {
        CSVFormat format = CSVFormat.Builder.create().setDelimiter(delimiter).setQuote('"').setIgnoreEmptyLines(false)
                .setIgnoreSurroundingSpaces(delimiter != '\t').get();
        RecordGuard guard = new RecordGuard(text);
        RowCells row = new RowCells();
        try (CSVParser parser = CSVParser.builder().setReader(guard).setFormat(format).get()) {
            Iterator<CSVRecord> records = parser.iterator();
            while (true) {
                int line = Math.toIntExact(parser.getCurrentLineNumber() + 1 + skippedLines);
                CSVRecord found = next(records, guard, line);
                if (found == null) {
                    return;
                }
                guard.recordDone();
                row.clear();
                try {
                    fill(row, found);
                } catch (BadSheetException bad) {
                    throw bad.at("", line);
                }
                row.tell(line, false, visitor);
            }
        }
    }

    private static CSVRecord next(Iterator<CSVRecord> records, RecordGuard guard, int line) throws IOException {
        try {
            return records.hasNext() ? records.next() : null;
        } catch (UncheckedIOException broken) {
            if (broken.getCause() instanceof BadSheetException bad) {
                throw bad.at("", line);
            }
            throw misquoted(guard, line, broken);
        }
    }

    private static BadSheetException misquoted(RecordGuard guard, int line, Exception broken) {
        BadSheetException bad = guard.hasEnded()
                ? new BadSheetException("quote-not-closed", "A quote is opened and never closed.",
                        "quotes in pairs around a value",
                        "Add the missing quote (\") in or below this line, or save the list as .xlsx.", broken)
                : new BadSheetException("quote-misplaced", "Text follows a closing quote before the next value begins.",
                        "quotes (\") around a whole value, doubled (\"\") inside it",
                        "Correct the quotes of this line, or save the list as .xlsx.", broken);
        return bad.at("", line);
    }

    private static void fill(RowCells row, CSVRecord found) throws BadSheetException {
        if (found.size() > CellName.MOST_COLUMNS) {
            throw BadSheetException.tooLarge("A line holds %d values, more than a spreadsheet has columns."
                    .formatted(found.size()));
        }
        for (int i = 0; i < found.size(); i++) {
            String text = unguarded(found.get(i));
            if (!text.isBlank()) {
                row.add(new Cell(i + 1, Cell.Type.TEXT, text, Double.NaN));
            }
        }
    }

    /** An apostrophe keeps spreadsheets from taking a text for a formula; lists we write have it, and many others. */
    private static String unguarded(String text) {
        return text.length() > 1 && text.charAt(0) == '\'' && "=+-@".indexOf(text.charAt(1)) >= 0
                ? text.substring(1) : text;
    }
}
