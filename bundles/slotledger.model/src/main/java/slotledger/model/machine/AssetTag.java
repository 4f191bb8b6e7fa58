package slotledger.model.machine;

/**
 * What identifies a machine in a fleet: its asset tag, or what stands in for it.
 *
 * <p>Tags come from spreadsheets and may hold anything; whoever writes one into a file, a cell or a page escapes it
 * there.
 *
 * @param value not blank
 */
public record AssetTag(String value) implements Comparable<AssetTag> {

    public AssetTag {
        if (value.isBlank()) {
            throw new IllegalArgumentException(
                    "The asset tag must not be blank. Maybe the serial number can stand in.");
        }
    }

    @Override
    public int compareTo(AssetTag other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
