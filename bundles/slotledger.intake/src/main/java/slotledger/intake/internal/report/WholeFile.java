package slotledger.intake.internal.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.source.Place;

/** Writes a file whole or not at all: to a temporary file beside it, which is then moved. */
public final class WholeFile {

    /** What is written. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException, IntakeException;
    }

    private WholeFile() {
    }

    public static void write(Path target, Content content) throws IntakeException {
        Path temporary = null;
        try {
            Path folder = target.toAbsolutePath().getParent();
            Files.createDirectories(folder);
            // Not a temporary file: that one only its owner may read, and others must.
            temporary = folder.resolve(".slotledger-" + UUID.randomUUID() + ".part");
            try (OutputStream out = Files.newOutputStream(temporary)) {
                content.writeTo(out);
            }
            move(temporary, target);
        } catch (IOException e) {
            throw new IntakeException(Doubt.error("file-not-written",
                    "The file can't be written: %s.".formatted(e.getMessage()),
                    "a folder one may write to, and a file that is not open elsewhere",
                    "Close the file in the spreadsheet program, or choose another folder.")
                    .at(Place.ofFile(target.toString()), ""), e);
        } finally {
            delete(temporary);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void delete(Path temporary) {
        if (temporary != null) {
            try {
                Files.deleteIfExists(temporary);
            } catch (IOException e) {
                temporary.toFile().deleteOnExit();
            }
        }
    }
}
