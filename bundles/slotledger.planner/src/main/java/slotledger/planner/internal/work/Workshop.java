package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/** Follows every module through the work: which one goes where, and in which order machines are opened. */
final class Workshop implements WorkOrder.Worker {

    /** What is known of one opened machine; entering modules may be added after its turn. */
    private static final class Opened {
        private final int number;
        private final List<Unit> leaving = new ArrayList<>();
        private final Map<String, Unit> entering = new LinkedHashMap<>();

        private Opened(int number) {
            this.number = number;
        }
    }

    private final Bench bench;
    private final boolean reusePulled;
    private final Map<AssetTag, Opened> opened = new LinkedHashMap<>();
    private final List<Unit> unusable = new ArrayList<>();
    private final Map<AssetTag, List<AssetTag>> rings = new LinkedHashMap<>();

    Workshop(Bench bench, boolean reusePulled) {
        this.bench = bench;
        this.reusePulled = reusePulled;
    }

    @Override
    public void doJob(Job job, boolean opensRing) {
        AssetTag tag = job.machine().tag();
        Opened machine = new Opened(opened.size() + 1);
        opened.put(tag, machine);
        if (opensRing) {
            rings.put(tag, new ArrayList<>());
        }
        job.changes().in().forEach((slot, content) -> {
            Piece piece = content.piece().orElseThrow();
            Optional<Unit> unit = bench.take(
                    piece, job.options().group().costCentre(), new Station.InSlot(tag, slot));
            machine.entering.put(slot, unit.orElse(null));
        });
        job.changes().within().forEach((from, to) -> {
            Unit unit = new Unit(job.machine().population().in(from), new Station.InSlot(tag, from));
            unit.goesTo(new Station.InSlot(tag, to));
            machine.leaving.add(unit);
        });
        job.changes().out().forEach((slot, content) -> putDown(tag, content, slot, machine));
    }

    private void putDown(AssetTag tag, SlotContent content, String slot, Opened machine) {
        Unit unit = new Unit(content, new Station.InSlot(tag, slot));
        machine.leaving.add(unit);
        Optional<Piece> piece = content.piece();
        if (piece.isEmpty() || !reusePulled) {
            unusable.add(unit);
            return;
        }
        bench.put(piece.get(), unit).map(Station.InSlot.class::cast).ifPresent(waiting -> {
            opened.get(waiting.machine()).entering.put(waiting.slot(), unit);
            rings.get(waiting.machine()).add(tag);
        });
    }

    /** Everything that stays on the shelf or has nowhere to go yet. */
    List<Unit> rest() {
        List<Unit> rest = new ArrayList<>(bench.rest());
        rest.addAll(unusable);
        return rest;
    }

    /** Place in the order of work, 0 where the machine isn't opened. */
    int number(AssetTag tag) {
        return opened.containsKey(tag) ? opened.get(tag).number : 0;
    }

    /** The moves of a machine: what leaves its slot first, then what comes from outside. */
    List<Move> moves(AssetTag tag) {
        List<Move> moves = new ArrayList<>();
        if (opened.containsKey(tag)) {
            opened.get(tag).leaving.forEach(unit -> moves.add(unit.move()));
            opened.get(tag).entering.values().forEach(unit -> moves.add(unit.move()));
        }
        return moves;
    }

    /** Machines opened before a module they need is pulled, and the machines it comes from. */
    Map<AssetTag, List<AssetTag>> rings() {
        return Collections.unmodifiableMap(rings);
    }
}
