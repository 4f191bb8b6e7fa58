package slotledger.bench.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.planner.PlanRequest;
import slotledger.rules.MemoryRules;
import slotledger.rules.standard.StandardRules;

/** Makes up whole requests. The same case, size and number give the same request on every machine. */
public final class Fleets {

    static final Currency EUR = Currency.getInstance("EUR");

    private static final int SHELVED = 7;
    private static final int SHORT_MONEY = 900;

    private final FleetCase of;
    private final int size;
    private final long number;
    private final MemoryRules rules = StandardRules.create();
    private final Map<BoardId, Board> boards = new LinkedHashMap<>();
    private final List<Target> targets = new ArrayList<>();
    private final Map<Piece, Integer> shelf = new LinkedHashMap<>();

    private Fleets(FleetCase of, int size, long number) {
        this.of = of;
        this.size = size;
        this.number = number;
    }

    /**
     * A request.
     *
     * @param of     what kind of fleet
     * @param size   how many machines
     * @param number which of all such fleets
     */
    public static PlanRequest request(FleetCase of, int size, long number) {
        return new Fleets(of, size, number).request();
    }

    private PlanRequest request() {
        Random random = new Random(number * FleetCase.values().length + of.ordinal());
        InventedMarket market = new InventedMarket(of, size, new Random(random.nextLong()));
        List<InventedMachines.Sort> sorts = new ArrayList<>();
        int parts = of.technologies().size();
        for (int part = 0; part < parts; part++) {
            Technology technology = of.technologies().get(part);
            List<ModuleKind> kinds = technology.kinds(share(of.kinds(), part, parts), random);
            market.offer(technology, kinds);
            for (int i = 0; i < kinds.size(); i += SHELVED) {
                shelf.put(kinds.get(i), 2 + size / 500);
            }
            addTargets(technology);
            InventedBoards made = new InventedBoards(technology, random);
            InventedPopulations populations = new InventedPopulations(of, rules, random);
            for (int i = 0; i < share(of.boards(), part, parts); i++) {
                Board board = made.make(i + 1);
                List<Population> filled = populations.list(board, technology, kinds);
                if (!filled.isEmpty()) {
                    boards.put(board.id(), board);
                    sorts.add(new InventedMachines.Sort(technology, board, filled));
                }
            }
        }
        List<Machine> machines = new InventedMachines(sorts, new Random(random.nextLong())).list(size);
        return new PlanRequest(of.title(), new Fleet(machines, boards), market.market(), new Shelf(shelf), policy(),
                LocalDate.of(2026, 9, 1));
    }

    private static int share(int all, int part, int parts) {
        return all * (part + 1) / parts - all * part / parts;
    }

    private void addTargets(Technology technology) {
        for (InventedMachines.Grade grade : InventedMachines.Grade.values()) {
            Capacity capacity = technology.unit().times(grade.units());
            targets.add(new Target(grade.role(technology), capacity, grade == InventedMachines.Grade.LAB, false,
                    Optional.empty(), grade.weight()));
        }
    }

    private Policy policy() {
        boolean isShort = of.budget() == FleetCase.Budget.SHORT;
        Optional<Money> budget = isShort ? Optional.of(InventedMarket.money((long) size * SHORT_MONEY))
                : Optional.empty();
        Map<String, Money> centres = new LinkedHashMap<>();
        if (isShort) {
            for (String centre : InventedMachines.CENTRES.subList(0, 2)) {
                centres.put(centre, InventedMarket.money((long) size * SHORT_MONEY / 5));
            }
        }
        return new Policy(EUR, targets, budget, centres, InventedMarket.money(500), InventedMarket.money(100), 2, true,
                true, false, Policy.LeaveAlone.NONE);
    }
}
