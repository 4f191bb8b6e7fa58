package slotledger.store.internal;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.EntryWords;
import slotledger.model.project.Journal;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Two people who change the same at once: the second is told who did what, when and why. */
final class Collisions {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final int MOST_TOLD = 3;

    private Collisions() {
    }

    /** @param own seals of the entries this program wrote: what somebody wrote here before is known to that person */
    static void refuse(Journal journal, Change change, Author author, long basis, Set<String> own)
            throws StoreException {
        List<Entry> others = journal.aboutTheSameSince(change, basis).stream()
                .filter(entry -> !entry.author().who().equals(author.who()) || !own.contains(entry.seal())).toList();
        if (others.isEmpty()) {
            return;
        }
        EntryWords words = new EntryWords(journal);
        String told = others.stream().skip(Math.max(0, others.size() - MOST_TOLD))
                .map(entry -> told(entry, words)).collect(Collectors.joining("; "));
        throw new StoreException(Trouble.CHANGED, "Somebody else changed the same while you were at it, and nothing of "
                + "yours was saved. " + (others.size() > MOST_TOLD ? "The last of " + others.size() + ": " : "") + told
                + ". If yours is right all the same, do it once more: it then holds in place of theirs.");
    }

    private static String told(Entry entry, EntryWords words) {
        String why = entry.author().why();
        return "Entry " + entry.number() + ", " + TIME.format(entry.made().atZone(ZoneId.systemDefault())) + ": "
                + entry.author().who() + " " + words.words(entry) + (why.isEmpty() ? "" : " (\"" + why + "\")");
    }
}
