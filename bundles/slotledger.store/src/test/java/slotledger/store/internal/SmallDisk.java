package slotledger.store.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A disk of a few MiB, in memory, that can be made read-only; only root may make one. */
final class SmallDisk implements AutoCloseable {

    private final Path folder;

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    /** The calling test is skipped where this user or this system may not. */
    static SmallDisk at(Path folder, int mebibytes) throws IOException, InterruptedException {
        Files.createDirectory(folder);
        Assumptions.assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=" + mebibytes + "m", "slotledger-test",
                folder.toString()) == 0,
                "No small disk can be mounted here (only root may), so nothing is tested on one.");
        return new SmallDisk(folder);
    }

    Path folder() {
        return folder;
    }

    void makeReadOnly() throws IOException, InterruptedException {
        run("mount", "-o", "remount,ro", folder.toString());
    }

    /** Takes all the room that is left, but for so many bytes. */
    Path fill(long but) throws IOException {
        Path filler = folder.resolve("filler");
        Files.write(filler, new byte[(int) Math.max(0, folder.toFile().getUsableSpace() - but)]);
        return filler;
    }

    @Override
    public void close() throws IOException {
        try {
            run("umount", folder.toString());
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private static int run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        return process.waitFor(20, TimeUnit.SECONDS) ? process.exitValue() : -1;
    }
}
