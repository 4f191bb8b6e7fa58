package slotledger.model.board;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * How the sockets of a board form banks. A fact of the board: some boards read half a bank at a time, some want twice
 * as many modules as the width of the bus asks for.
 *
 * @param list    the banks in the order they are filled; empty where no document names any
 * @param busBits data bits the processor or chipset reads at once, without check bits; empty means unknown
 */
public record Banks(List<Bank> list, OptionalInt busBits) {

    /** No document names a bank. */
    public static final Banks NONE = new Banks(List.of(), OptionalInt.empty());

    public Banks {
        list = List.copyOf(list);
        Objects.requireNonNull(busBits, "busBits");
        List<String> slots = list.stream().flatMap(bank -> bank.slots().stream()).toList();
        if (slots.stream().distinct().count() != slots.size()) {
            throw new IllegalArgumentException("A slot must not be in two banks: %s.".formatted(slots));
        }
        if (list.stream().map(Bank::name).collect(Collectors.toSet()).size() != list.size()) {
            throw new IllegalArgumentException("The banks must have different names: %s.".formatted(list));
        }
        if (busBits.isPresent() && busBits.getAsInt() < 1) {
            throw new IllegalArgumentException(
                    "The bits of the bus (%d) must be at least 1.".formatted(busBits.getAsInt()));
        }
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }
}
