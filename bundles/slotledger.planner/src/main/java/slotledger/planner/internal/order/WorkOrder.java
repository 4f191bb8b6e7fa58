package slotledger.planner.internal.order;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts openings into an order in which every receiver comes after its donors, site by site, room by room, and with
 * few modules on the bench: who takes from the bench comes before who adds to it, and a machine that is only opened
 * for its modules comes when somebody waits for them. A pulled module is promised at once to the nearest opening that
 * becomes ready by it, so that nothing is looked at twice. Where nothing is ready and no donor helps, openings wait for
 * each other in a ring; the one that lacks least is opened before what it needs is there.
 */
final class WorkOrder {

    private final WorkTable table;
    private final Provision provision;
    private final Exits exits;
    private final Bench bench;
    private final Queues queues;
    private final IndexSet level;
    private final IndexSet rising;
    private final IndexSet idle;
    private final IndexSet[] donors;
    private final Places rooms;
    private final Places sites;
    private final boolean[] started;
    private final int[] waitsFor;
    private final int[] order;
    private int done;

    WorkOrder(WorkTable table, Provision provision) {
        this.table = table;
        this.provision = provision;
        this.exits = provision.exits();
        this.bench = new Bench(table, provision);
        this.queues = new Queues(table);
        this.level = new IndexSet(table.size());
        this.rising = new IndexSet(table.size());
        this.idle = new IndexSet(table.size());
        this.rooms = new Places(IntStream.range(0, table.rooms()).map(table::siteOf).toArray(), table.sites());
        this.sites = new Places(new int[table.sites()], 1);
        this.started = new boolean[table.size()];
        this.waitsFor = new int[table.size()];
        this.order = new int[table.size()];
        this.donors = new IndexSet[table.pieces().size()];
        for (int kind = 0; kind < donors.length; kind++) {
            donors[kind] = new IndexSet(table.size(), Queues.QUESTIONS);
        }
        for (int i = 0; i < table.size(); i++) {
            places(i, 0, bench.pulled(i), bench.useful(i));
        }
        for (int i = 0; i < table.size(); i++) {
            if (table.swap(i).takes() == 0 && bench.useful(i) > 0) {
                donor(i, true);
            } else if (!isHeld(i)) {
                place(i);
            }
        }
        work();
    }

    /** The openings, first ones first. */
    int[] order() {
        return order.clone();
    }

    private void work() {
        int place = -1;
        while (done < order.length) {
            int next = place < 0 ? -1 : inSite(place);
            next = next < 0 ? elsewhere(place) : next;
            if (next < 0 && (freeHeld() || openRing(place))) {
                continue;
            }
            next = next < 0 ? idle.next(0) : next;
            finish(next);
            place = next;
        }
    }

    private int inSite(int place) {
        int room = table.room(place);
        int next = inRoom(room);
        if (next < 0) {
            int other = rooms.best(table.siteOf(room));
            if (other < 0 || rooms.lacks(other) > 0) {
                int donor = helper(place, true);
                next = other < 0 || donor >= 0 && rooms.lacks(table.room(donor)) == 0 ? donor : -1;
            }
            next = next < 0 && other >= 0 ? inRoom(other) : next;
        }
        return next;
    }

    private int elsewhere(int place) {
        int site = sites.best(0);
        if (site < 0 || sites.lacks(site) > 0) {
            int donor = helper(place, false);
            if (donor >= 0 && (site < 0 || sites.lacks(table.siteOf(table.room(donor))) == 0)) {
                return donor;
            }
        }
        return site < 0 ? -1 : inRoom(rooms.best(site));
    }

    private int inRoom(int room) {
        int end = table.startOf(room + 1);
        int next = level.next(table.startOf(room));
        if (next < 0 || next >= end) {
            next = rising.next(table.startOf(room));
        }
        return next < end ? next : -1;
    }

    /** The nearest machine that is only opened for its modules and helps somebody who waits. */
    private int helper(int place, boolean sameSite) {
        if (idle.isEmpty()) {
            return -1;
        }
        int best = -1;
        for (int kind = queues.nextKind(0); kind >= 0; kind = queues.nextKind(kind + 1)) {
            best = queues.nearer(best, queues.nearest(donors[kind], place), place);
        }
        return best >= 0 && sameSite && queues.distance(best, place) > 1 ? -1 : best;
    }

    private void donor(int opening, boolean waits) {
        if (waits) {
            idle.add(opening);
        } else {
            idle.remove(opening);
        }
        for (int j = 0; j < table.swap(opening).gives(); j++) {
            IndexSet all = donors[table.swap(opening).give(j)];
            if (waits) {
                all.add(opening);
            } else {
                all.remove(opening);
            }
        }
    }

    private boolean isHeld(int opening) {
        for (int j = 0; j < table.swap(opening).takes(); j++) {
            int kind = table.swap(opening).take(j);
            if (exits.exit(kind) == opening && provision.pulled(opening, j) > 0 && bench.waiting(kind) > 1) {
                return true;
            }
        }
        return false;
    }

    /** Makes an opening ready where all it needs is there, else lets it wait for the first kind it lacks. */
    private void place(int opening) {
        if (started[opening] || waitsFor[opening] > 0) {
            return;
        }
        Swap swap = table.swap(opening);
        int lacking = bench.lacking(opening);
        if (lacking >= 0) {
            waitsFor[opening] = lacking + 1;
            queues.add(swap.take(lacking), key(opening, lacking), opening);
        } else {
            start(opening);
        }
    }

    private int key(int opening, int take) {
        return 2 * provision.pulled(opening, take) + (bench.useful(opening) > 0 ? 0 : 1);
    }

    private void start(int opening) {
        started[opening] = true;
        waitsFor[opening] = 0;
        bench.promise(opening);
        (bench.useful(opening) > bench.pulled(opening) ? rising : level).add(opening);
        places(opening, 1, -bench.pulled(opening), 0);
        for (int j = 0; j < table.swap(opening).takes(); j++) {
            int kind = table.swap(opening).take(j);
            int exit = exits.exit(kind);
            if (exit >= 0 && !started[exit] && waitsFor[exit] == 0 && !isHeld(exit)) {
                place(exit);
            }
        }
    }

    private void finish(int opening) {
        Swap swap = table.swap(opening);
        if (started[opening]) {
            level.remove(opening);
            rising.remove(opening);
            places(opening, -1, 0, -bench.useful(opening));
        } else {
            started[opening] = true;
            donor(opening, false);
            places(opening, 0, -bench.pulled(opening), -bench.useful(opening));
        }
        order[done++] = opening;
        for (int j = 0; j < swap.gives(); j++) {
            bench.put(swap.give(j), swap.given(j));
            for (int next = waiter(swap.give(j), opening); next >= 0; next = waiter(swap.give(j), opening)) {
                leaveQueue(next);
                place(next);
            }
        }
    }

    private int waiter(int kind, int place) {
        return queues.nearest(kind, bench.free(kind), place);
    }

    private void leaveQueue(int opening) {
        int take = waitsFor[opening] - 1;
        queues.remove(table.swap(opening).take(take), key(opening, take), opening);
        waitsFor[opening] = 0;
    }

    private void places(int opening, int ready, int waits, int gives) {
        rooms.change(table.room(opening), ready, waits, gives);
        sites.change(table.siteOf(table.room(opening)), ready, waits, gives);
    }

    /** Nothing may be held back for good: what could be done is done, and at last everything held back waits. */
    private boolean freeHeld() {
        int fallback = -1;
        for (int kind = 0; kind < table.pieces().size(); kind++) {
            int exit = exits.exit(kind);
            if (exit >= 0 && !started[exit] && waitsFor[exit] == 0) {
                if (bench.lacking(exit) < 0) {
                    place(exit);
                    return true;
                }
                fallback = exit;
            }
        }
        if (fallback >= 0 && queues.nextKind(0) < 0) {
            place(fallback);
            return true;
        }
        return false;
    }

    private boolean openRing(int place) {
        List<Integer> heads = queues.heads(true);
        if (heads.isEmpty()) {
            heads = queues.heads(false);
        }
        int best = -1;
        for (int head : heads) {
            if (best < 0 || isBetter(head, best, place)) {
                best = head;
            }
        }
        if (best < 0) {
            return false;
        }
        leaveQueue(best);
        start(best);
        return true;
    }

    private boolean isBetter(int one, int other, int place) {
        int difference = Integer.compare(bench.lacks(one), bench.lacks(other));
        if (difference == 0) {
            difference = Boolean.compare(isRoot(other), isRoot(one));
        }
        return difference < 0 || difference == 0 && queues.nearer(one, other, place) == one;
    }

    private boolean isRoot(int opening) {
        return exits.isRoot(table.swap(opening).take(waitsFor[opening] - 1));
    }
}
