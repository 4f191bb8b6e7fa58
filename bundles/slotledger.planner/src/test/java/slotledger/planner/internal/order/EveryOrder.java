package slotledger.planner.internal.order;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import slotledger.model.machine.SlotContent;

/**
 * Tries every order of a few openings: the fewest modules that must be borrowed, and among those orders the fewest that
 * lie on the bench at once. Knows nothing of how the order of work is found.
 */
final class EveryOrder {

    private final Errands errands;
    private int borrowed = Integer.MAX_VALUE;
    private int bench = Integer.MAX_VALUE;

    EveryOrder(Errands errands) {
        this.errands = errands;
        tryAll(new int[errands.openings.size()], 0, 0);
    }

    int borrowed() {
        return borrowed;
    }

    int bench() {
        return bench;
    }

    private void tryAll(int[] order, int length, int used) {
        if (length == order.length) {
            weigh(order);
            return;
        }
        for (int next = 0; next < order.length; next++) {
            if ((used & 1 << next) == 0) {
                order[length] = next;
                tryAll(order, length + 1, used | 1 << next);
            }
        }
    }

    private void weigh(int[] order) {
        int[] load = new int[order.length];
        int[] owed = new int[order.length];
        for (char kind = 'a'; kind < 'j'; kind++) {
            weigh(order, SlotContent.of(Errands.kind(kind)), errands.bought.getOrDefault(kind, 0)
                    + errands.shelf.getOrDefault(kind, 0), load, owed);
        }
        int missing = Arrays.stream(owed).max().orElse(0);
        int most = Arrays.stream(load).max().orElse(0);
        if (missing < borrowed || missing == borrowed && most < bench) {
            borrowed = missing;
            bench = most;
        }
    }

    /** Adds what of a kind lies ready after each opening, and what is borrowed then and not yet given back. */
    private void weigh(int[] order, SlotContent kind, int there, int[] load, int[] owed) {
        int[] pulled = new int[order.length];
        int[] missing = new int[order.length];
        int left = there;
        int balance = there;
        for (int place = 0; place < order.length; place++) {
            SlotChanges changes = errands.openings.get(order[place]).changes();
            int takes = count(changes.in(), kind);
            pulled[place] = Math.max(0, takes - left);
            left -= takes - pulled[place];
            balance -= takes;
            missing[place] = Math.max(0, -balance);
            balance += count(changes.out(), kind);
        }
        int before = 0;
        for (int place = 0; place < order.length; place++) {
            before = Math.max(before, missing[place]);
            int later = Arrays.stream(missing, place + 1, order.length).max().orElse(0);
            int now = missing[place] - count(errands.openings.get(order[place]).changes().out(), kind);
            owed[place] += Math.min(before, Math.max(now, later));
        }
        int wanted = 0;
        for (int place = order.length - 1; place >= 0; place--) {
            load[place] += wanted;
            int gives = count(errands.openings.get(order[place]).changes().out(), kind);
            wanted = Math.max(0, wanted - gives) + pulled[place];
        }
    }

    private static int count(Map<String, SlotContent> contents, SlotContent kind) {
        Map<SlotContent, Integer> counts = new HashMap<>();
        contents.values().forEach(content -> counts.merge(content, 1, Integer::sum));
        return counts.getOrDefault(kind, 0);
    }
}
