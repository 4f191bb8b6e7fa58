package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import slotledger.model.module.ModuleKind;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Shelf;

/**
 * All module kinds a plan can speak of, numbered, and where they can be had.
 *
 * @param kinds  those of offers, then of the shelf, then of the machines' sockets
 * @param offers that can be used, in file order
 * @param shelf  what is owned
 * @param numbers place of each kind in the list
 */
public record Stock(List<ModuleKind> kinds, List<Offer> offers, Shelf shelf, Map<ModuleKind, Integer> numbers) {

    public Stock {
        kinds = List.copyOf(kinds);
        offers = List.copyOf(offers);
        Objects.requireNonNull(shelf, "shelf");
        numbers = Map.copyOf(numbers);
    }

    /** Numbers the kinds of offers, shelf and classes. */
    public static Stock of(List<Offer> offers, Shelf shelf, List<MachineClass> classes) {
        Map<ModuleKind, Integer> numbers = new LinkedHashMap<>();
        offers.forEach(offer -> numbers.putIfAbsent(offer.kind(), numbers.size()));
        shelf.modules().keySet().forEach(kind -> numbers.putIfAbsent(kind, numbers.size()));
        for (MachineClass group : classes) {
            group.setup().board().sockets().forEach(slot -> group.now().in(slot.label()).module()
                    .ifPresent(kind -> numbers.putIfAbsent(kind, numbers.size())));
        }
        return new Stock(new ArrayList<>(numbers.keySet()), offers, shelf, numbers);
    }

    public int number(ModuleKind kind) {
        return numbers.get(kind);
    }

    /** Whether modules of the kind are offered or on the shelf. */
    public boolean isOfferedOrOwned(ModuleKind kind) {
        return shelf.count(kind) > 0 || offers.stream().anyMatch(offer -> offer.kind().equals(kind));
    }

    public List<Offer> offers(ModuleKind kind) {
        return offers.stream().filter(offer -> offer.kind().equals(kind)).toList();
    }
}
