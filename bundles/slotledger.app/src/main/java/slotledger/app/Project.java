package slotledger.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The files one piece of work is about.
 *
 * @param title       name for people
 * @param inventories the fleet, one or several files
 * @param mapping     which column is what; empty means by heading
 * @param boards      folders of board files
 * @param offers      offers of suppliers
 * @param shelves     modules owned
 * @param policy      what is wanted and allowed
 * @param choices     what people decided beforehand
 * @param date        offers must hold on this day
 * @param stored      where the files come from; empty where they are plain files of a folder
 */
public record Project(
        String title,
        List<Path> inventories,
        Optional<Path> mapping,
        List<Path> boards,
        List<Path> offers,
        List<Path> shelves,
        Optional<Path> policy,
        Optional<Path> choices,
        LocalDate date,
        Optional<Stored> stored) {

    /** A project of plain files. */
    public Project(
            String title,
            List<Path> inventories,
            Optional<Path> mapping,
            List<Path> boards,
            List<Path> offers,
            List<Path> shelves,
            Optional<Path> policy,
            Optional<Path> choices,
            LocalDate date) {
        this(title, inventories, mapping, boards, offers, shelves, policy, choices, date, Optional.empty());
    }

    /** A project in which nobody decided anything beforehand. */
    public Project(
            String title,
            List<Path> inventories,
            Optional<Path> mapping,
            List<Path> boards,
            List<Path> offers,
            List<Path> shelves,
            Optional<Path> policy,
            LocalDate date) {
        this(title, inventories, mapping, boards, offers, shelves, policy, Optional.empty(), date);
    }

    public Project {
        Objects.requireNonNull(title, "title");
        inventories = List.copyOf(inventories);
        Objects.requireNonNull(mapping, "mapping");
        boards = List.copyOf(boards);
        offers = List.copyOf(offers);
        shelves = List.copyOf(shelves);
        Objects.requireNonNull(policy, "policy");
        Objects.requireNonNull(choices, "choices");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(stored, "stored");
    }

    /** The same files under another title, planned for another day. */
    public Project at(String otherTitle, LocalDate day) {
        return new Project(otherTitle, inventories, mapping, boards, offers, shelves, policy, choices, day, stored);
    }

    /** The same files, taken out of a project with a history. */
    public Project of(Stored where) {
        return new Project(title, inventories, mapping, boards, offers, shelves, policy, choices, date,
                Optional.of(where));
    }
}
