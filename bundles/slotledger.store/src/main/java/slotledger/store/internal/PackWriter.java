package slotledger.store.internal;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import slotledger.model.project.Entry;
import slotledger.model.project.Original;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Writes a packed project; the same project gives the same bytes. */
final class PackWriter {

    /** The earliest a ZIP file knows, so that nothing depends on when it was packed. */
    private static final LocalDateTime WHENEVER = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Rows store;

    PackWriter(Rows store) {
        this.store = store;
    }

    /** The file is whole or not there. */
    void write(Path file, boolean force) throws StoreException {
        if (Files.exists(file) && !force) {
            throw new StoreException(Trouble.EXISTS,
                    "There is a file " + file + " already. Name another, or say --force to replace it.");
        }
        Path target = file.toAbsolutePath().normalize();
        Path beside = target.resolveSibling("." + target.getFileName() + "-" + UUID.randomUUID());
        try {
            Files.createDirectories(target.getParent());
            try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE)) {
                ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(Channels.newOutputStream(channel)),
                        StandardCharsets.UTF_8);
                write(zip);
                zip.finish();
                zip.flush();
                channel.force(true);
            }
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The file " + file + " can't be written: "
                    + problem.getMessage() + ". Check that its disk has room and that you may write there.", problem);
        } finally {
            deleteQuietly(beside);
        }
    }

    private void write(ZipOutputStream zip) throws IOException, StoreException {
        Entry last = store.journal().last();
        text(zip, PackFormat.HEAD, PackFormat.head(new Mark(store.id(), last.number(), last.seal())));
        StringBuilder lines = new StringBuilder();
        store.rows().forEach(row -> lines.append(PackFormat.line(row)));
        text(zip, PackFormat.JOURNAL, lines.toString());
        Map<String, Original> originals = new TreeMap<>();
        store.journal().entries().forEach(entry -> Originals.of(entry.change())
                .forEach(original -> originals.put(original.sha256(), original)));
        for (Original original : originals.values()) {
            begin(zip, PackFormat.ORIGINALS + original.sha256());
            store.copy(original, zip);
            zip.closeEntry();
        }
    }

    private static void text(ZipOutputStream zip, String name, String text) throws IOException {
        begin(zip, name);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static void begin(ZipOutputStream zip, String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(WHENEVER);
        zip.putNextEntry(entry);
    }

    private static void deleteQuietly(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException stuck) {
            // A leftover whose name begins with a dot does no harm.
        }
    }
}
