package slotledger.store.internal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/**
 * The small file beside the database that names the last entry. A database that was copied only in part can open with
 * an older state as if nothing were missing; the mark tells.
 *
 * @param entries how many entries the database held when it was written, at least
 * @param seal    of the last of them
 */
record Mark(UUID id, long entries, String seal) {

    static final String NAME = "project.mark";

    private static final Pattern TEXT = Pattern.compile(
            "(?s).*^id: ([0-9a-f-]{36})\\R^entries: ([1-9]\\d{0,17})\\R^seal: ([0-9a-f]{64})\\R.*", Pattern.MULTILINE);

    /** Reads the mark of a project's folder. */
    static Mark read(Path folder) throws StoreException {
        Path file = folder.resolve(NAME);
        try {
            Matcher text = TEXT.matcher(Files.readString(file));
            if (text.matches()) {
                return new Mark(UUID.fromString(text.group(1)), Long.parseLong(text.group(2)), text.group(3));
            }
        } catch (IOException problem) {
            throw new StoreException(Trouble.DAMAGED, "The file " + file + " can't be read: " + problem.getMessage()
                    + ". Maybe the project was copied only in part: copy the whole folder again.", problem);
        }
        throw new StoreException(Trouble.DAMAGED, "The file " + file + " is not as Slotledger writes it. Maybe the "
                + "project was copied only in part: copy the whole folder again.");
    }

    /** Writes it beside its place and moves it there, so that it is the old or the new one, never a half. */
    void write(Path folder) throws IOException {
        // Two threads may have the project open; two programs never have.
        synchronized (Mark.class) {
            writeAlone(folder);
        }
    }

    private void writeAlone(Path folder) throws IOException {
        Path beside = folder.resolve("." + NAME + ".new");
        String text = "A project of Slotledger. The program keeps this file; please don't edit it.\n"
                + "To mail or back up the project: slotledger project pack\n"
                + "id: " + id + "\nentries: " + entries + "\nseal: " + seal + "\n";
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
        Files.move(beside, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
