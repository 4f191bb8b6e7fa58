package slotledger.model.project;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;

/**
 * All entries of a project. Nothing is ever taken out; an entry that was taken back has another one that says so.
 *
 * @param entries numbered from 1
 */
public record Journal(List<Entry> entries) {

    public Journal {
        entries = List.copyOf(entries);
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).number() != i + 1) {
                throw new IllegalArgumentException("The entry after number %d must be number %d, and is %d."
                        .formatted(i, i + 1, entries.get(i).number()));
            }
        }
        if (entries.isEmpty() || !(entries.get(0).change() instanceof Change.Created)) {
            throw new IllegalArgumentException("A journal must begin with the creation of the project.");
        }
    }

    public Entry last() {
        return entries.get(entries.size() - 1);
    }

    /** Whether there is an entry of that number and it still holds. */
    public boolean holds(long number) {
        return holding().contains(number);
    }

    /** The journal as it was when an entry had just been written. */
    public Journal upTo(long number) {
        if (number < 1 || number > entries.size()) {
            throw new IllegalArgumentException(
                    "The entry (%d) must be one of 1 to %d.".formatted(number, entries.size()));
        }
        return new Journal(entries.subList(0, (int) number));
    }

    /** The journal with one entry more. */
    public Journal with(Entry next) {
        List<Entry> longer = new ArrayList<>(entries);
        longer.add(next);
        return new Journal(longer);
    }

    /** What a change is about; taking an entry back, or restoring it, is about the same as that entry. */
    public Set<String> subjects(Change change) {
        Set<String> subjects = new TreeSet<>(change.subjects());
        if (change instanceof Change.TakenBack back) {
            subjects.addAll(subjectsOf(back.entry()));
        } else if (change instanceof Change.Restored again) {
            subjects.addAll(subjectsOf(again.entry()));
        }
        return subjects;
    }

    private Set<String> subjectsOf(long number) {
        return number < 1 || number > entries.size() ? Set.of() : entries.get((int) number - 1).change().subjects();
    }

    /**
     * Entries about the same that were written while somebody was deciding.
     *
     * @param change what somebody is about to write
     * @param basis  number of the last entry that person has seen
     */
    public List<Entry> aboutTheSameSince(Change change, long basis) {
        Set<String> subjects = subjects(change);
        return entries.stream().skip(basis).filter(entry -> !Collections.disjoint(subjects(entry.change()), subjects))
                .toList();
    }

    /** Whether an entry is dated before the one it follows: some computer's clock was wrong. The order is the truth. */
    public boolean isDatedBeforeItsPredecessor(long number) {
        return number > 1 && number <= entries.size()
                && entries.get((int) number - 1).made().isBefore(entries.get((int) number - 2).made());
    }

    /** What follows from all entries that hold. */
    public ProjectState state() {
        return folded().build();
    }

    /** The entry an undo takes back unless another is named: the last change that holds. */
    public OptionalLong undoable() {
        return holding().descendingSet().stream().mapToLong(Long::longValue).filter(this::canBeTakenBack).findFirst();
    }

    /** The entry a redo restores unless another is named: the last one taken back, if nothing was changed since. */
    public OptionalLong redoable() {
        TreeSet<Long> holding = holding();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Change change = entries.get(i).change();
            if (change instanceof Change.TakenBack back) {
                if (!holding.contains(back.entry())) {
                    return OptionalLong.of(back.entry());
                }
            } else if (!(change instanceof Change.Restored)) {
                break;
            }
        }
        return OptionalLong.empty();
    }

    /** Whether an entry is a change that holds, so that it can be taken back. */
    public boolean canBeTakenBack(long number) {
        return number > 1 && number <= entries.size() && isChange(number) && holds(number);
    }

    /** Whether an entry is a change that was taken back, so that it can be restored. */
    public boolean canBeRestored(long number) {
        return number > 1 && number <= entries.size() && isChange(number) && !holds(number);
    }

    private boolean isChange(long number) {
        Change change = entries.get((int) number - 1).change();
        return !(change instanceof Change.TakenBack) && !(change instanceof Change.Restored);
    }

    StateBuilder folded() {
        TreeSet<Long> holding = holding();
        StateBuilder state = new StateBuilder();
        entries.forEach(entry -> state.add(entry, holding.contains(entry.number())));
        return state;
    }

    private TreeSet<Long> holding() {
        TreeSet<Long> holding = new TreeSet<>();
        for (Entry entry : entries) {
            holding.add(entry.number());
            if (entry.change() instanceof Change.TakenBack back) {
                holding.remove(back.entry());
            } else if (entry.change() instanceof Change.Restored again) {
                holding.add(again.entry());
            }
        }
        return holding;
    }
}
