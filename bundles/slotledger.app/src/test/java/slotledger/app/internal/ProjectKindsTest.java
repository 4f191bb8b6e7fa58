package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.app.Project;
import slotledger.app.Survey;
import slotledger.model.matrix.KnownFrom;
import slotledger.model.module.Buffering;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Place;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;

class ProjectKindsTest {

    private static final ModuleKind EIGHT = kind(Generation.DDR4, 8);
    private static final ModuleKind FOUR = kind(Generation.DDR4, 4);
    private static final ModuleKind OLD = kind(Generation.DDR3, 16);

    @Test
    void everyKindIsListedOnceByGenerationAndCapacityWithAllItsPlaces() {
        Map<ModuleKind, Set<KnownFrom>> kinds = ProjectKinds.of(survey());
        assertEquals(List.of(OLD, FOUR, EIGHT), List.copyOf(kinds.keySet()));
        assertEquals(Set.of(KnownFrom.SHELF), kinds.get(OLD));
        assertEquals(Set.of(KnownFrom.FLEET), kinds.get(FOUR));
        assertEquals(Set.of(KnownFrom.OFFER, KnownFrom.FLEET), kinds.get(EIGHT));
    }

    @Test
    void ofKindsAskedForOnlyTheseAreListed() {
        ModuleKind other = ModuleKind.ofCapacity(Capacity.ofGiB(2));
        Map<ModuleKind, Set<KnownFrom>> kinds = ProjectKinds.asked(survey(), List.of(other, FOUR));
        assertEquals(List.of(FOUR, other), List.copyOf(kinds.keySet()));
        assertEquals(Set.of(KnownFrom.ASKED, KnownFrom.FLEET), kinds.get(FOUR));
        assertEquals(Set.of(KnownFrom.ASKED), kinds.get(other));
    }

    private static ModuleKind kind(Generation generation, int gibibytes) {
        return ModuleKind.of(generation, Form.DIMM, Capacity.ofGiB(gibibytes)).with(Buffering.UNBUFFERED);
    }

    private static Survey survey() {
        SmallWorld world = new SmallWorld();
        Money price = Money.zero(Currency.getInstance("EUR"));
        Offer offer = new Offer("o", "s", "p", EIGHT, 1, List.of(new PriceStep(1, price)), OptionalInt.empty(),
                OptionalInt.empty(), Optional.empty(), Optional.empty(), Place.NOWHERE);
        Project project = new Project("school", List.of(), Optional.empty(), List.of(), List.of(), List.of(),
                Optional.empty(), LocalDate.of(2026, 11, 20));
        return new Survey(project, List.of(), 1, List.of(), world.fleet(world.machine("A", "8 4")), List.of(),
                new Market(List.of(offer), Map.of("s", new Supplier("s", Optional.empty(), Optional.empty(),
                        Optional.empty()))),
                new Shelf(Map.of(OLD, 2, Filler.AIR_BLANK, 3)), Optional.empty(), List.of());
    }
}
