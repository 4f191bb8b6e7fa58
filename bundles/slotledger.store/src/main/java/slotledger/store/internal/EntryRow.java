package slotledger.store.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.store.internal.ChangeJson.Written;

/**
 * An entry as it is kept, in texts.
 *
 * @param made ISO 8601, UTC
 */
record EntryRow(long number, String made, String who, String why, String kind, String change, String seal) {

    /** What an entry after the seal of another one looks like. */
    static EntryRow of(long number, Instant made, Author author, Change change, String sealBefore) {
        Written written = ChangeJson.write(change);
        EntryRow open = new EntryRow(number, made.truncatedTo(ChronoUnit.MILLIS).toString(), author.who(),
                author.why(), written.kind(), written.text(), "");
        return new EntryRow(number, open.made, open.who, open.why, open.kind, open.change,
                open.sealAfter(sealBefore));
    }

    /** The seal this entry must have after that of another; each text goes in with its length, so none can shift. */
    String sealAfter(String sealBefore) {
        MessageDigest digest = Digests.sha256();
        for (String text : new String[] {sealBefore, Long.toString(number), made, who, why, kind, change}) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
            digest.update(bytes);
        }
        return Digests.hex(digest);
    }

    Entry entry() {
        return new Entry(number, Instant.parse(made), new Author(who, why), ChangeJson.read(new Written(kind, change)),
                seal);
    }
}
