package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Original;
import slotledger.store.ProjectSource;

/** A program that is killed in the middle of its work loses nothing it has acknowledged. */
class KilledTest {

    private static final int KILLS = Boolean.getBoolean("long.tests") ? 1000 : 20;
    private static final int ENTRIES_AT_MOST = 12;
    private static final int MILLIS_MORE_AT_MOST = 25;

    @TempDir
    Path top;

    @Test
    void everyAcknowledgedEntryIsThereAfterTheProgramWasKilled(TestReporter reporter) throws Exception {
        DefaultProjectStores stores =
                new DefaultProjectStores(Clock.systemUTC(), Schema.today(), Duration.ofSeconds(10));
        Path folder = top.resolve("school");
        Random random = new Random(20261128);
        long written = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            // A fresh project now and then keeps the long run from reading an ever longer journal.
            if (kill % 100 == 0) {
                folder = top.resolve("school-" + kill);
                stores.create(folder, "School", Map.of(), Fixture.ANNA);
            }
            long acknowledged = killWhileWriting(folder, random);
            written += verify(stores, folder, acknowledged, kill);
        }
        reporter.publishEntry("kills", KILLS + " kills, " + written + " entries looked at");
    }

    private static long killWhileWriting(Path folder, Random random) throws IOException, InterruptedException {
        Process child = Child.start("write", folder);
        long acknowledged = 0;
        try (BufferedReader output = Child.output(child)) {
            int entries = 1 + random.nextInt(ENTRIES_AT_MOST);
            for (int i = 0; i < entries; i++) {
                acknowledged = number(output.readLine());
            }
            TimeUnit.MILLISECONDS.sleep(random.nextInt(MILLIS_MORE_AT_MOST));
            // By its handle: the process itself would close its output, too.
            child.toHandle().destroyForcibly();
            // What it said before it died is promised, too.
            for (String line = output.readLine(); line != null; line = output.readLine()) {
                acknowledged = line.isEmpty() ? acknowledged : Math.max(acknowledged, number(line));
            }
            assertTrue(child.waitFor(20, TimeUnit.SECONDS), "the child must end");
        }
        return acknowledged;
    }

    private static long number(String line) {
        assertTrue(line != null && line.matches("\\d+"), "the child must write, and wrote " + line);
        return Long.parseLong(line);
    }

    private long verify(DefaultProjectStores stores, Path folder, long acknowledged, int kill) throws Exception {
        try (ProjectSource source = stores.read(folder)) {
            long last = source.journal().last().number();
            // One entry more may have been on its way.
            assertTrue(last >= acknowledged && last <= acknowledged + 1,
                    "kill " + kill + ": " + acknowledged + " acknowledged, " + last + " found");
            for (Entry entry : source.journal().entries().subList(1, (int) last)) {
                assertEquals("entry " + entry.number(), entry.author().why());
            }
            for (Entry entry : source.journal().entries().subList(Math.max(1, (int) last - 4), (int) last)) {
                if (entry.change() instanceof Change.Imported imported) {
                    Original original = imported.parts().values().iterator().next().get(0);
                    Path file = top.resolve("back.csv");
                    source.write(original, file);
                    assertEquals(original.size(), Files.size(file));
                    Files.delete(file);
                }
            }
            return last;
        }
    }
}
