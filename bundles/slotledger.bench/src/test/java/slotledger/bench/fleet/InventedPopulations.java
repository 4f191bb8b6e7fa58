package slotledger.bench.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** How machines of a board are filled now: as the rules allow, mostly with one kind, some with two. */
final class InventedPopulations {

    private static final int TRIES = 5;

    private final FleetCase of;
    private final MemoryRules rules;
    private final Random random;

    InventedPopulations(FleetCase of, MemoryRules rules, Random random) {
        this.of = of;
        this.rules = rules;
        this.random = random;
    }

    /** Different ones, each once in one order of its channels and once mirrored where that is allowed. */
    List<Population> list(Board board, Technology technology, List<ModuleKind> kinds) {
        List<ModuleKind> present = kinds.stream()
                .filter(kind -> technology.unit().times(technology.isServer() ? 1 : 2).atLeast(kind.capacity()))
                .filter(kind -> isAllowed(board, filled(board, kind, kind, first(board))))
                .toList();
        Set<Population> found = new LinkedHashSet<>();
        Set<List<List<Integer>>> seen = new HashSet<>();
        for (int i = 0; i < TRIES * of.populations() && seen.size() < of.populations(); i++) {
            Population population = filled(board, pick(present), pick(present), filledSlots(board));
            if (isAllowed(board, population) && seen.add(asSet(board, population, kinds))) {
                found.add(population);
                Population mirrored = mirrored(board, population);
                if (of != FleetCase.ALL_DIFFERENT && isAllowed(board, mirrored)) {
                    found.add(mirrored);
                }
            }
        }
        return List.copyOf(found);
    }

    private ModuleKind pick(List<ModuleKind> kinds) {
        return kinds.get(Math.max(random.nextInt(kinds.size()), random.nextInt(kinds.size())));
    }

    private static int first(Board board) {
        return board.fill().table().isEmpty() ? 1 : 2;
    }

    private int filledSlots(Board board) {
        int all = board.fill().order().size();
        if (of == FleetCase.PULLED) {
            return all;
        }
        int least = first(board);
        return least * (1 + random.nextInt(all / least));
    }

    /** The first slots with one kind; the later half of them with the other where the throw says so. */
    private Population filled(Board board, ModuleKind one, ModuleKind other, int count) {
        boolean mixed = random.nextInt(of == FleetCase.ALL_DIFFERENT ? 2 : 4) > 0;
        Population population = Population.empty(board);
        for (int i = 0; i < count; i++) {
            ModuleKind kind = !mixed && i >= count / 2 ? other : one;
            population = population.with(board.fill().order().get(i), kind);
        }
        if (of == FleetCase.ALL_DIFFERENT && count > 1 && random.nextInt(2) == 0) {
            population = population.with(board.fill().order().get(count - 1), random.nextBoolean() ? one : other);
        }
        return population;
    }

    private boolean isAllowed(Board board, Population population) {
        return switch (rules.weigh(Setup.of(board, population))) {
            case PASSES, CAUTION, LOWERS -> true;
            case UNKNOWN, BLOCKS -> false;
        };
    }

    /** What the channels hold, whatever their order. */
    private static List<List<Integer>> asSet(Board board, Population population, List<ModuleKind> kinds) {
        List<List<Integer>> channels = new ArrayList<>();
        int positions = board.slots().size() / board.channels().size();
        for (int first = 0; first < board.slots().size(); first += positions) {
            channels.add(board.slots().subList(first, first + positions).stream()
                    .map(slot -> population.in(slot.label()).module().map(kinds::indexOf).orElse(-1))
                    .sorted().toList());
        }
        channels.sort(Comparator.comparing(List::toString));
        return channels;
    }

    /** The channels the other way round. */
    private static Population mirrored(Board board, Population population) {
        List<Slot> slots = board.slots();
        int positions = slots.size() / board.channels().size();
        Population mirrored = Population.empty(board);
        for (int i = 0; i < slots.size(); i++) {
            int channel = board.channels().size() - 1 - i / positions;
            Slot from = slots.get(channel * positions + i % positions);
            mirrored = mirrored.with(slots.get(i).label(), population.in(from.label()));
        }
        return mirrored;
    }
}
