package slotledger.model.project;

import java.util.List;
import java.util.Objects;

/**
 * A part as one import left it.
 *
 * @param number counted from 1 for each part, taken back or not, so that a number always means the same files
 * @param entry  the import
 * @param files  in the order of their names
 */
public record PartVersion(Part part, int number, long entry, List<Original> files) {

    public PartVersion {
        Objects.requireNonNull(part, "part");
        files = List.copyOf(files);
    }

    @Override
    public String toString() {
        return part.id() + " " + number;
    }
}
