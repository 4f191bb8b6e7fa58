package slotledger.export.internal.text;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import slotledger.export.ExportException;

/** Writes a file whole or not at all: beside its place first, moved there when it is complete. */
public final class WholeFile {

    /** Fills a file. */
    @FunctionalInterface
    public interface Filling {
        void into(OutputStream out) throws IOException;
    }

    private WholeFile() {
    }

    public static void write(Path file, String text) throws ExportException {
        write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Replaces a file of that name; leaves it as it was where the filling fails. */
    public static void write(Path file, Filling filling) throws ExportException {
        Path part = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(
                    Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
                filling.into(out);
            }
            move(part, file);
        } catch (IOException | UncheckedIOException e) {
            throw new ExportException(
                    "The file %s can't be written: %s. Is the folder there, writable, and is there room on the disk?"
                            .formatted(file, e.getMessage()), e);
        } finally {
            deleteQuietly(part);
        }
    }

    private static void move(Path part, Path file) throws IOException {
        try {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void deleteQuietly(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // the reason why it could not be written is the one to report
        }
    }
}
