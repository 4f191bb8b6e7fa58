package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import slotledger.model.board.Board;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;

/** A made-up fleet of several hundred machines with what makes planning hard: packs, steps, delivery, little money. */
final class LargeFleets {

    private LargeFleets() {
    }

    /** With price steps at every offer. */
    static Fixtures ofSteps(int machines, long seed) {
        return of(machines, seed, true);
    }

    static Fixtures of(int machines, long seed) {
        return of(machines, seed, false);
    }

    private static Fixtures of(int machines, long seed, boolean steps) {
        Random random = new Random(seed);
        Fixtures made = new Fixtures();
        List<Board> boards = new ArrayList<>();
        for (int i = 0; i < 26; i++) {
            int slots = i == 25 ? 16 : i % 3 == 0 ? 4 : 2;
            int largest = 8 << random.nextInt(2);
            boards.add(made.board("board" + i, slots, largest, largest * slots >> random.nextInt(2), 1));
        }
        List<ModuleKind> kinds = new ArrayList<>();
        for (int gib : new int[] {1, 2, 4, 8, 16}) {
            kinds.add(Fixtures.kind(gib));
            kinds.add(Fixtures.kind(Generation.DDR4, gib, 2133));
        }
        for (int i = 0; i < machines; i++) {
            Board board = boards.get(Math.min(random.nextInt(26), random.nextInt(26)));
            ModuleKind kind = kinds.get(random.nextInt(8));
            ModuleKind[] now = new ModuleKind[Math.min(4, board.slots().size())];
            for (int slot = 0; slot < now.length; slot++) {
                now[slot] = random.nextInt(3) == 0 ? null
                        : random.nextInt(8) == 0 ? kinds.get(random.nextInt(8)) : kind;
            }
            made.machine("%c%04d".formatted('A' + i % 7, i), board, "role" + random.nextInt(5),
                    "centre" + random.nextInt(3), now);
        }
        for (int role = 0; role < 4; role++) {
            made.targets.add(new Target("role" + role, Capacity.ofGiB(role == 3 ? 16 : 8), role % 2 == 0, false,
                    Optional.empty(), 1 + role));
        }
        for (ModuleKind kind : kinds.subList(4, 10)) {
            int price = (int) (kind.capacity().gibibytes() * 380) + random.nextInt(300) + 301;
            for (String supplier : List.of("Alder", "Birch", "Cedar")) {
                int own = price + random.nextInt(price / 4);
                int stock = random.nextInt(4) == 0 ? 20 : -1;
                if (random.nextInt(3) == 0) {
                    made.offer(supplier, kind, 2, stock, steps
                            ? new int[] {1, own * 2 - 99, 10, own * 2 - 199, 50, own * 2 - 299}
                            : new int[] {1, own * 2 - 99});
                } else {
                    made.offer(supplier, kind, 1, stock, steps
                            ? new int[] {1, own, 25, own * 19 / 20}
                            : new int[] {1, own});
                }
            }
        }
        made.terms("Alder", 990, 15_000, -1);
        made.terms("Birch", 1490, -1, 5_000);
        made.terms("Cedar", 0, -1, 20_000);
        made.shelf.put(kinds.get(4), 14);
        made.shelf.put(kinds.get(7), 9);
        made.budget = Optional.of(Fixtures.eur(machines * 1500L));
        made.sparePercent = 3;
        return made;
    }
}
