package slotledger.bench.fleet;

import java.util.List;

/**
 * A kind of fleet that asks something of its own from a planner. How varied a fleet is hangs on its case alone, never
 * on the number of its machines.
 */
public enum FleetCase {
    /** Few boards, few ways they are filled, prices with some steps. */
    OFFICE("office", Technology.USUAL, 30, 60, 5, Prices.SOME_STEPS, Budget.PLENTY),
    /** The same with steep price steps at every offer, about where quantities fall. */
    TRAPS("price-step traps", Technology.USUAL, 30, 60, 5, Prices.STEEP_STEPS, Budget.PLENTY),
    /** Every machine is full, so that each upgrade frees modules others can use. */
    PULLED("pulled modules everywhere", Technology.USUAL, 30, 60, 6, Prices.SOME_STEPS, Budget.PLENTY),
    /** Money for about half of what is wanted, in all and for each cost centre. */
    TIGHT("tight budgets", Technology.USUAL, 30, 60, 5, Prices.SOME_STEPS, Budget.SHORT),
    /** Two processors, sixteen sockets, printed fill tables. */
    SERVERS("servers", List.of(Technology.DDR4_SERVER), 6, 20, 16, Prices.SOME_STEPS, Budget.PLENTY),
    /** About 25,000 classes: hardly two machines are filled alike. */
    ALL_DIFFERENT("all different", Technology.USUAL, 30, 60, 750, Prices.SOME_STEPS, Budget.PLENTY),
    BOARDS_300("300 boards, 120 kinds", Technology.WIDE, 300, 120, 5, Prices.SOME_STEPS, Budget.PLENTY),
    BOARDS_1000("1000 boards, 300 kinds", Technology.WIDE, 1000, 300, 5, Prices.SOME_STEPS, Budget.PLENTY);

    /** How prices fall with quantity. */
    enum Prices { SOME_STEPS, STEEP_STEPS }

    /** How far the money reaches. */
    enum Budget { PLENTY, SHORT }

    private final String title;
    private final List<Technology> technologies;
    private final int boards;
    private final int kinds;
    private final int populations;
    private final Prices prices;
    private final Budget budget;

    FleetCase(
            String title, List<Technology> technologies, int boards, int kinds, int populations, Prices prices,
            Budget budget) {
        this.title = title;
        this.technologies = technologies;
        this.boards = boards;
        this.kinds = kinds;
        this.populations = populations;
        this.prices = prices;
        this.budget = budget;
    }

    public String title() {
        return title;
    }

    List<Technology> technologies() {
        return technologies;
    }

    /** Boards of all technologies together. */
    int boards() {
        return boards;
    }

    /** Kinds of modules of all technologies together, offered or only present. */
    int kinds() {
        return kinds;
    }

    /** Ways in which the machines of one board are filled, at most. */
    int populations() {
        return populations;
    }

    Prices prices() {
        return prices;
    }

    Budget budget() {
        return budget;
    }
}
