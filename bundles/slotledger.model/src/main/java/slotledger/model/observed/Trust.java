package slotledger.model.observed;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slotledger.model.source.Ground;

/**
 * Whose word is taken where sources differ.
 *
 * @param orders by subject, most trusted first
 */
public record Trust(Map<Subject, List<Ground>> orders) {

    private static final List<Ground> FIRMWARE_FIRST = List.of(Ground.FIRMWARE, Ground.SPREADSHEET);
    private static final List<Ground> SHEET_FIRST = List.of(Ground.SPREADSHEET, Ground.FIRMWARE);

    /**
     * What holds unless somebody says otherwise: a machine knows best what is in it and its number; people know what
     * it is called. Common practice.
     */
    public static final Trust USUAL = new Trust(Map.of(Subject.SERIAL, FIRMWARE_FIRST, Subject.MAKER, SHEET_FIRST,
            Subject.MODEL, SHEET_FIRST, Subject.PROCESSOR, FIRMWARE_FIRST, Subject.MEMORY, FIRMWARE_FIRST));

    public Trust {
        Map<Subject, List<Ground>> copy = new EnumMap<>(Subject.class);
        orders.forEach((subject, order) -> copy.put(subject, List.copyOf(order)));
        orders = Map.copyOf(copy);
    }

    /** The same with another order for one subject. */
    public Trust with(Subject subject, List<Ground> order) {
        Map<Subject, List<Ground>> changed = new EnumMap<>(orders);
        changed.put(subject, order);
        return new Trust(changed);
    }

    /** Whether one is believed before another; what isn't named comes last. */
    public boolean prefers(Subject subject, Ground one, Ground other) {
        return rank(subject, one) < rank(subject, other);
    }

    private int rank(Subject subject, Ground ground) {
        int at = orders.getOrDefault(subject, List.of()).indexOf(ground);
        return at < 0 ? Integer.MAX_VALUE : at;
    }
}
