package slotledger.bench.fleet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.Whereabouts;
import slotledger.model.source.Place;

/**
 * Deals boards, populations, roles and places out to machines, common ones more often. Everything machines can share
 * is shared, so that a million fit into little memory.
 */
final class InventedMachines {

    static final List<String> CENTRES = List.of("Arts", "Sciences", "Office", "Library");

    private static final int SITES = 5;
    private static final int ROOMS = 60;
    private static final int FIRST_TAG = 10_000_000;

    /**
     * One board and how its machines are filled.
     *
     * @param technology  what goes into the board
     * @param board       the board
     * @param populations some
     */
    record Sort(Technology technology, Board board, List<Population> populations) {
        Sort {
            populations = List.copyOf(populations);
        }
    }

    /** What a machine is wanted for. */
    enum Grade {
        PLAIN(1, 1), USUAL(2, 2), LAB(2, 3), LARGE(4, 2);

        private final int units;
        private final int weight;

        Grade(int units, int weight) {
            this.units = units;
            this.weight = weight;
        }

        int units() {
            return units;
        }

        int weight() {
            return weight;
        }

        String role(Technology technology) {
            return name().toLowerCase() + " " + technology.name().toLowerCase().replace('_', ' ');
        }
    }

    private final List<Sort> sorts;
    private final Random random;

    InventedMachines(List<Sort> sorts, Random random) {
        this.sorts = List.copyOf(sorts);
        this.random = random;
    }

    List<Machine> list(int size) {
        List<List<String>> roles = sorts.stream().map(InventedMachines::roles).toList();
        List<Whereabouts> places = places();
        Optional<String> system = Optional.of("64-bit");
        Optional<String> processor = Optional.of("Usual");
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < sorts.size(); i++) {
            order.add(i);
        }
        Collections.shuffle(order, random);
        List<Machine> machines = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            int chosen = order.get(Math.min(random.nextInt(sorts.size()), random.nextInt(sorts.size())));
            Sort sort = sorts.get(chosen);
            machines.add(new Machine(
                    new AssetTag(Integer.toString(FIRST_TAG + i)),
                    "",
                    places.get(random.nextInt(places.size())),
                    CENTRES.get(random.nextInt(CENTRES.size())),
                    roles.get(chosen).get(random.nextInt(Grade.values().length)),
                    sort.board().id(),
                    sort.board().processorSockets(),
                    processor,
                    system,
                    Redundancy.NONE,
                    sort.populations().get(random.nextInt(sort.populations().size())),
                    Place.NOWHERE));
        }
        return machines;
    }

    private static List<String> roles(Sort sort) {
        List<String> roles = new ArrayList<>();
        for (Grade grade : Grade.values()) {
            roles.add(grade.role(sort.technology()).intern());
        }
        return roles;
    }

    private static List<Whereabouts> places() {
        List<Whereabouts> places = new ArrayList<>();
        for (int site = 1; site <= SITES; site++) {
            for (int room = 1; room <= ROOMS; room++) {
                places.add(new Whereabouts("Site " + site, "Room " + room));
            }
        }
        return places;
    }
}
