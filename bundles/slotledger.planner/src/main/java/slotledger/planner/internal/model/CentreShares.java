package slotledger.planner.internal.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.SortedMap;
import slotledger.model.module.Piece;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * Which bought modules go into machines of which cost centre. A centre pays its modules by their share of the pack;
 * spares and rests of packs are nobody's.
 */
final class CentreShares {

    private record Share(Purchasing.Step step, int centre, int variable) {
    }

    private final IntegerProgramme programme;
    private final Map<String, Money> budgets;
    private final List<Offer> offers;
    private final Tax tax;
    private final List<String> centres = new ArrayList<>(List.of(""));
    private final List<Share> shares = new ArrayList<>();

    CentreShares(
            IntegerProgramme programme,
            Map<String, Money> budgets,
            List<Offer> offers,
            Purchasing purchasing,
            List<OptionalLong> needs,
            Tax tax) {
        this.tax = tax;
        this.programme = programme;
        this.budgets = budgets;
        this.offers = offers;
        centres.addAll(budgets.keySet());
        for (Purchasing.Step step : purchasing.steps()) {
            Offer offer = offers.get(step.offer());
            Linear packs = new Linear().add(step.variable(), -offer.packSize());
            for (int centre = 0; centre < centres.size(); centre++) {
                int share = programme.variable(
                        "modules of %s for cost centre %s".formatted(offer.id(), centres.get(centre)),
                        0,
                        needs.get(step.offer()).orElse(0));
                shares.add(new Share(step, centre, share));
                packs.add(share, 1);
            }
            programme.atMost("modules of " + offer.id(), packs, 0);
        }
    }

    int centre(String name) {
        return centres.indexOf(name);
    }

    List<String> centres() {
        return List.copyOf(centres);
    }

    /** Modules of an offer that go into machines. */
    Linear uses(int offer) {
        Linear uses = new Linear();
        shares.stream().filter(share -> share.step().offer() == offer).forEach(share -> uses.add(share.variable(), 1));
        return uses;
    }

    /** All bought modules that go into machines. */
    Linear allUses() {
        Linear uses = new Linear();
        shares.forEach(share -> uses.add(share.variable(), 1));
        return uses;
    }

    /** No centre takes more bought modules of a kind than its machines need. */
    void addKind(Piece piece, SortedMap<Integer, Linear> needByCentre) {
        for (int centre = 0; centre < centres.size(); centre++) {
            Linear row = new Linear();
            for (Share share : shares) {
                if (share.centre() == centre && offers.get(share.step().offer()).piece().equals(piece)) {
                    row.add(share.variable(), 1);
                }
            }
            if (needByCentre.containsKey(centre)) {
                row.add(needByCentre.get(centre), -1);
            }
            programme.atMost("modules for cost centre " + centres.get(centre), row, 0);
        }
    }

    /**
     * Goods of each cost centre within its budget, exactly: all is counted in parts of a pack, and of the tax where
     * budgets are meant with it. Where further packs have other prices, with the most that a pack costs on average.
     */
    void addBudgets(List<Limit> limits) {
        long sizes = offers.stream().mapToLong(Offer::packSize).reduce(1, Divisors::leastCommonMultiple);
        long unit = tax.inBudgets() ? TaxRows.unit(Purchasing.percents(offers, tax)) : Percent.PARTS;
        long parts = Math.multiplyExact(sizes, Percent.PARTS / unit);
        for (int centre = 1; centre < centres.size(); centre++) {
            Linear goods = new Linear();
            for (Share share : shares) {
                if (share.centre() == centre) {
                    Offer offer = offers.get(share.step().offer());
                    long taxed = tax.inBudgets() ? Percent.PARTS + tax.on(offer).parts() : Percent.PARTS;
                    long ofPack = Math.multiplyExact(sizes / offer.packSize(), taxed / unit);
                    goods.add(share.variable(), Math.multiplyExact(share.step().span().share(), ofPack));
                }
            }
            long most = Math.multiplyExact(budgets.get(centres.get(centre)).minor(), parts);
            limits.add(new Limit(Limit.Of.CENTRE_BUDGET, centres.get(centre), programme.rows().size(), parts));
            programme.joinAtMost("budget of cost centre " + centres.get(centre), goods, most);
        }
    }

    int[][] uses(long[] values) {
        int[][] uses = new int[offers.size()][centres.size()];
        shares.forEach(share ->
                uses[share.step().offer()][share.centre()] += Math.toIntExact(values[share.variable()]));
        return uses;
    }
}
