package slotledger.store.internal;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.store.ProjectSource;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** A packed project. It may come from anybody, so nothing in it is believed unchecked. */
final class PackSource implements ProjectSource {

    /** A hundred thousand entries fit; a file that unpacks to more is no journal of people's decisions. */
    private static final int LARGEST_TEXT = 256 * 1024 * 1024;

    private final Path file;
    private final ZipFile zip;
    private final Mark mark;
    private final List<EntryRow> rows;
    private final Journal journal;

    private PackSource(Path file, ZipFile zip, Mark mark, List<EntryRow> rows, Journal journal) {
        this.file = file;
        this.zip = zip;
        this.mark = mark;
        this.rows = rows;
        this.journal = journal;
    }

    static PackSource open(Path file) throws StoreException {
        if (!Files.isRegularFile(file)) {
            throw new StoreException(Trouble.MISSING, "There is no project at " + file + ".");
        }
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw broken(file, problem.getMessage(), problem);
        }
        try {
            Mark mark = PackFormat.head(text(zip, PackFormat.HEAD), file.toString());
            List<EntryRow> rows = text(zip, PackFormat.JOURNAL).lines().map(PackFormat::row).toList();
            if (rows.isEmpty() || rows.size() != mark.entries()
                    || !rows.get(rows.size() - 1).seal().equals(mark.seal())) {
                throw new IOException(
                        "it should hold " + mark.entries() + " entries, and " + rows.size() + " are there");
            }
            return new PackSource(file, zip, mark, rows, Entries.journal(rows, file.toString()));
        } catch (IOException | IllegalArgumentException problem) {
            close(zip);
            throw broken(file, problem.getMessage(), problem);
        } catch (StoreException problem) {
            close(zip);
            throw problem;
        }
    }

    Mark mark() {
        return mark;
    }

    List<EntryRow> rows() {
        return rows;
    }

    /** Every original that some entry names, each once. */
    Collection<Original> originals() {
        Map<String, Original> originals = new TreeMap<>();
        journal.entries().forEach(entry -> Originals.of(entry.change())
                .forEach(original -> originals.put(original.sha256(), original)));
        return originals.values();
    }

    @Override
    public UUID id() {
        return mark.id();
    }

    @Override
    public Journal journal() {
        return journal;
    }

    @Override
    public void write(Original original, Path target) throws StoreException {
        try {
            Files.createDirectories(target.toAbsolutePath().getParent());
        } catch (IOException problem) {
            throw unwritable(target, problem);
        }
        try (DigestInputStream bytes = new DigestInputStream(bytes(original), Digests.sha256());
                OutputStream out = newFile(target)) {
            bytes.transferTo(out);
            if (!Digests.hex(bytes.getMessageDigest()).equals(original.sha256())) {
                throw new IOException("its original " + original.name() + " is not as it was brought in");
            }
        } catch (IOException problem) {
            throw broken(file, problem.getMessage(), problem);
        }
    }

    private static OutputStream newFile(Path target) throws StoreException {
        try {
            return Files.newOutputStream(target, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (IOException problem) {
            throw unwritable(target, problem);
        }
    }

    /** Never more bytes than the journal says, whatever a crafted file would unpack to. */
    InputStream bytes(Original original) throws IOException {
        ZipEntry entry = zip.getEntry(PackFormat.ORIGINALS + original.sha256());
        if (entry == null) {
            throw new IOException("its original " + original.name() + " is missing");
        }
        return new Limited(zip.getInputStream(entry), original.size());
    }

    private static String text(ZipFile zip, String name) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new IOException("it holds no " + name);
        }
        try (InputStream stream = new Limited(zip.getInputStream(entry), LARGEST_TEXT)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Override
    public void close() {
        close(zip);
    }

    private static void close(ZipFile zip) {
        try {
            zip.close();
        } catch (IOException readOnly) {
            // Nothing was written.
        }
    }

    private static StoreException broken(Path file, String what, Exception cause) {
        return new StoreException(Trouble.DAMAGED, "The packed project " + file + " can't be read: " + what
                + ". Maybe it was copied or mailed only in part: get it again.", cause);
    }

    private static StoreException unwritable(Path file, IOException problem) {
        return new StoreException(Trouble.UNWRITABLE, "The file " + file + " can't be written: "
                + problem.getMessage() + ".", problem);
    }

    /** Fails where there is more than there may be. */
    private static final class Limited extends FilterInputStream {

        private long left;

        Limited(InputStream stream, long most) {
            super(stream);
            this.left = most;
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            if (one >= 0) {
                count(1);
            }
            return one;
        }

        @Override
        public int read(byte[] target, int offset, int length) throws IOException {
            int read = super.read(target, offset, length);
            return read < 0 ? read : count(read);
        }

        private int count(int read) throws IOException {
            left -= read;
            if (left < 0) {
                throw new IOException("a file in it is larger than it may be");
            }
            return read;
        }
    }
}
