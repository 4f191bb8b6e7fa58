package slotledger.intake.internal.firmware;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.source.Place;

/** Gathers what one machine's firmware says wrongly, so that a lie about eight slots is one finding. */
final class Lies {

    private final Map<Lie, List<String>> seen = new EnumMap<>(Lie.class);

    void add(Lie lie, String what) {
        seen.computeIfAbsent(lie, none -> new ArrayList<>()).add(what);
    }

    List<Finding> findings(Place place, AssetTag machine) {
        return seen.entrySet().stream().map(entry -> entry.getKey().at(place, machine, entry.getValue())).toList();
    }
}
