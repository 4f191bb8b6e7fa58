package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** The kinds of file that can be read, told by their content. */
enum FileKind {
    XLSX,
    XLS,
    TEXT;

    private static final int HEAD = 4096;
    private static final String EXPECTED = "an .xlsx, .xls or .csv file";

    /** Tells what a file is; anything that can't be read is refused with the reason. */
    static FileKind of(Path file) throws IOException {
        if (Files.notExists(file)) {
            throw new NoSuchFileException(file.toString());
        }
        if (Files.isDirectory(file)) {
            throw refused("file-is-folder", "This is a folder.", "Name the files in it one by one.");
        }
        if (!Files.isRegularFile(file)) {
            throw refused("file-not-readable", "This is a device or a pipe.", "Save its content to a file first.");
        }
        byte[] head = SheetFiles.head(file, HEAD);
        if (head.length == 0) {
            throw refused("file-empty", "The file is empty (0 bytes).", "Export or save the list again.");
        }
        // A byte order mark decides first: FF FE and the like also begin some kinds of picture.
        if (TextCharset.byteOrderMark(head) != null) {
            return text(head);
        }
        return switch (FileMagic.valueOf(head)) {
            case OOXML -> zip(file);
            case OLE2 -> compound(file);
            case BIFF2, BIFF3, BIFF4 -> throw oldWorkbook();
            case PDF -> throw refused("file-is-pdf", "This is a PDF: a picture of a table, not the table.",
                    "Ask for the spreadsheet it was printed from.");
            case RTF -> throw refused("file-is-document", "This is a text document (RTF).",
                    "Copy the table into a spreadsheet and save it as .xlsx.");
            case JPEG, GIF, PNG, TIFF, BMP, EMF, WMF -> picture(head);
            default -> text(head);
        };
    }

    private static BadSheetException refused(String code, String message, String remedy) {
        return new BadSheetException(code, message, EXPECTED, remedy);
    }

    private static BadSheetException truncated(String message, Exception cause) {
        return new BadSheetException("workbook-truncated", message, "a whole workbook", BadSheetException.COPY_AGAIN,
                cause);
    }

    static BadSheetException oldWorkbook() {
        return refused("workbook-too-old", "This workbook was written by Excel 95 or older.",
                "Open it in a spreadsheet program of today and save it as .xlsx.");
    }

    /** Two letters may tell a picture, and may be the first of a heading; but pictures hold zero bytes. */
    private static FileKind picture(byte[] head) throws IOException {
        for (byte one : head) {
            if (one == 0) {
                throw refused("file-is-picture", "This is a picture.", "Ask for the spreadsheet itself.");
            }
        }
        return text(head);
    }

    private static FileKind zip(Path file) throws IOException {
        Set<String> names = new TreeSet<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            zip.stream().limit(ZipParts.MOST_ENTRIES)
                    .forEach(entry -> names.add(entry.getName().replace('\\', '/').toLowerCase(Locale.ROOT)));
        } catch (ZipException broken) {
            throw truncated("The file begins like a workbook but its end is missing or damaged.", broken);
        }
        if (holds(names, "xl/workbook.bin")) {
            throw refused("file-is-other-spreadsheet", "This is a binary workbook (.xlsb).",
                    "Open it in a spreadsheet program and save it as .xlsx.");
        }
        if (names.contains("[content_types].xml")) {
            if (holds(names, "word/") || holds(names, "ppt/")) {
                throw refused("file-is-document", "This is a text document or presentation, not a workbook.",
                        "Copy the table into a spreadsheet and save it as .xlsx.");
            }
            return XLSX;
        }
        if (names.contains("mimetype") && names.contains("content.xml")) {
            throw refused("file-is-other-spreadsheet", "This is an OpenDocument file (.ods or a relative of it).",
                    "Open it in a spreadsheet program and save it as .xlsx.");
        }
        if (holds(names, "index/document.iwa") || names.contains("index.zip")) {
            throw refused("file-is-other-spreadsheet", "This is a document of a spreadsheet program for the Mac.",
                    "Export it there as an .xlsx file.");
        }
        throw refused("file-is-archive", "This is an archive (.zip), not a workbook.",
                "Unpack it and name the files in it.");
    }

    private static boolean holds(Set<String> names, String beginning) {
        return names.stream().anyMatch(name -> name.startsWith(beginning));
    }

    private static FileKind compound(Path file) throws IOException {
        Set<String> names;
        try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
            names = container.getRoot().getEntryNames();
        } catch (IOException | RuntimeException broken) {
            throw truncated("The file begins like a workbook but its parts can't be found.", broken);
        }
        if (names.contains("EncryptedPackage") || names.contains("EncryptionInfo")) {
            throw locked();
        }
        if (names.contains("Workbook") || names.contains("WORKBOOK")) {
            return XLS;
        }
        if (names.contains("Book") || names.contains("BOOK")) {
            throw oldWorkbook();
        }
        throw refused("file-is-document", "This is an old document or mail, not a workbook.",
                "Copy the table into a spreadsheet and save it as .xlsx.");
    }

    static BadSheetException locked() {
        return new BadSheetException("workbook-locked", "The workbook is protected by a password.",
                "a workbook that opens without a password",
                "Open it, remove the password (File, Info, Protect Workbook), and save it under another name.");
    }

    private static FileKind text(byte[] head) throws IOException {
        String start = new String(head, StandardCharsets.ISO_8859_1);
        String beginning = start.replace("\0", "")
                .replaceFirst("^(?:\u00ef\u00bb\u00bf|\u00ff\u00fe|\u00fe\u00ff)?\\s*", "").toLowerCase(Locale.ROOT);
        if (beginning.startsWith("<?xml") && beginning.contains("excel.sheet")
                || beginning.contains("urn:schemas-microsoft-com:office:spreadsheet")) {
            throw refused("file-is-other-spreadsheet", "This is an XML table of Excel 2003.",
                    "Open it in a spreadsheet program and save it as .xlsx.");
        }
        if (beginning.matches("(?s)<(!doctype html|html|head|body|meta|table|style|div|!--).*")
                || beginning.startsWith("<?xml") && beginning.contains("<html")) {
            throw refused("file-is-web-page", "This is a web page, whatever its name ends with.",
                    "Open it in a spreadsheet program and save it as .xlsx.");
        }
        if (beginning.startsWith("<?xml")) {
            throw refused("file-is-xml", "This is an XML file.", "Export the list as .xlsx or .csv instead.");
        }
        if (head[0] == 0x1f && (head[1 % head.length] & 0xff) == 0x8b || start.startsWith("7z\u00bc\u00af")
                || start.startsWith("Rar!")) {
            throw refused("file-is-archive", "This is a packed archive.", "Unpack it and name the files in it.");
        }
        return TEXT;
    }
}
