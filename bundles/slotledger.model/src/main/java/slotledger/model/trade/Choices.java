package slotledger.model.trade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;

/**
 * What people decided before a plan is made; the planner keeps to it.
 *
 * @param pins       machines and the population each of them must end with
 * @param tastes     what is forbidden or preferred
 * @param uniform    rooms whose machines of one board all get the same kinds; "site / room" or the room alone
 * @param mostOpened most machines somebody opens; empty means no limit
 */
public record Choices(
        Map<AssetTag, Population> pins, List<Taste> tastes, Set<String> uniform, OptionalInt mostOpened) {

    /** Nobody decided anything. */
    public static final Choices NONE = new Choices(Map.of(), List.of(), Set.of(), OptionalInt.empty());

    public Choices {
        pins = Collections.unmodifiableMap(new LinkedHashMap<>(pins));
        tastes = List.copyOf(tastes);
        uniform = Set.copyOf(uniform);
        Objects.requireNonNull(mostOpened, "mostOpened");
    }
}
