package slotledger.firmware.fact;

/**
 * Something that firmware can say.
 *
 * @param name as people call it, unique among the facts of one record
 * @param type of its values
 */
public record Fact<T>(String name, Class<T> type) {

    public Fact {
        if (name.isBlank()) {
            throw new IllegalArgumentException("The name of a fact must not be blank.");
        }
    }

    public static Fact<String> text(String name) {
        return new Fact<>(name, String.class);
    }

    public static Fact<Integer> number(String name) {
        return new Fact<>(name, Integer.class);
    }

    public static Fact<ByteCount> size(String name) {
        return new Fact<>(name, ByteCount.class);
    }
}
