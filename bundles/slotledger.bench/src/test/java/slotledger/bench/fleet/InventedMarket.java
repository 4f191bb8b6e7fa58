package slotledger.bench.fleet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Place;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;

/** Four suppliers with terms of delivery; singles and kits, prices that fall with quantity, some stock that ends. */
final class InventedMarket {

    private static final List<String> SUPPLIERS = List.of("Alderhook", "Birkmere", "Cindervale", "Dornhold");
    private static final int HUNDRED = 100;

    /** One price that falls: from this share of the quantity one would think of, by so many percent. */
    private record Fall(double share, int percent) {
    }

    private static final List<Fall> SOME = List.of(new Fall(0.05, 3), new Fall(0.4, 7));
    private static final List<Fall> STEEP =
            List.of(new Fall(0.04, 4), new Fall(0.2, 9), new Fall(0.7, 15), new Fall(1.6, 22));

    private final FleetCase of;
    private final Random random;
    private final double quantity;
    private final List<Offer> offers = new ArrayList<>();

    InventedMarket(FleetCase of, int machines, Random random) {
        this.of = of;
        this.random = random;
        this.quantity = (double) machines / of.kinds() * (of == FleetCase.SERVERS ? 8 : 1);
    }

    /** Three of four kinds are offered, each by up to three suppliers. */
    void offer(Technology technology, List<ModuleKind> kinds) {
        for (int i = 0; i < kinds.size(); i++) {
            ModuleKind kind = kinds.get(i);
            double price = (kind.capacity().gibibytes() * technology.price() + 300) * (0.8 + random.nextDouble() * 0.4);
            int first = random.nextInt(SUPPLIERS.size());
            int many = i % 4 == 3 ? 0 : 1 + random.nextInt(3);
            for (int each = 0; each < many; each++) {
                String supplier = SUPPLIERS.get((first + each) % SUPPLIERS.size());
                double own = price * (0.94 + random.nextDouble() * 0.12);
                add(supplier, kind, 1, own);
                int throwOfKits = random.nextInt(10);
                if (throwOfKits < 5) {
                    add(supplier, kind, throwOfKits < 3 ? 2 : throwOfKits == 3 ? 4 : 10, own * 0.97);
                }
            }
        }
    }

    private void add(String supplier, ModuleKind kind, int packSize, double each) {
        List<PriceStep> steps = new ArrayList<>();
        long first = Math.round(each * packSize);
        steps.add(new PriceStep(1, money(first)));
        boolean steep = of.prices() == FleetCase.Prices.STEEP_STEPS;
        int most = steep ? STEEP.size() : random.nextInt(SOME.size() + 1);
        int from = 1;
        for (Fall fall : (steep ? STEEP : SOME).subList(0, most)) {
            double share = fall.share() * (0.6 + random.nextDouble() * 0.8);
            from = Math.max(from + 2, (int) Math.round(quantity * share / packSize));
            steps.add(new PriceStep(from, money(first * (HUNDRED - fall.percent()) / HUNDRED)));
        }
        OptionalInt stock = random.nextInt(7) == 0
                ? OptionalInt.of(3 + (int) (quantity * random.nextDouble() / packSize)) : OptionalInt.empty();
        String part = "%s-%03d".formatted(supplier.substring(0, 2).toUpperCase(), offers.size() + 1);
        offers.add(new Offer(supplier + "/" + part, supplier, part, kind, packSize, steps, stock, OptionalInt.empty(),
                Optional.empty(), Optional.empty(), Place.NOWHERE));
    }

    Market market() {
        Map<String, Supplier> suppliers = new LinkedHashMap<>();
        supplier(suppliers, 0, 990, 50_000, -1);
        supplier(suppliers, 1, 1490, -1, -1);
        supplier(suppliers, 2, -1, -1, 5_000);
        supplier(suppliers, 3, 690, 15_000, 2_500);
        return new Market(offers, suppliers);
    }

    private static void supplier(Map<String, Supplier> all, int number, long shipping, long freeFrom, long minimum) {
        String name = SUPPLIERS.get(number);
        all.put(name, new Supplier(name, some(shipping), some(freeFrom), some(minimum)));
    }

    private static Optional<Money> some(long minor) {
        return minor < 0 ? Optional.empty() : Optional.of(money(minor));
    }

    static Money money(long minor) {
        return new Money(minor, Fleets.EUR);
    }
}
