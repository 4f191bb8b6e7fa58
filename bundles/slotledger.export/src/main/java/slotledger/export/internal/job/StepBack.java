package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/**
 * How a machine is brought back to what it held before. What comes out stays in a bag with the machine's tag until the
 * proof, unless another machine needs it.
 */
final class StepBack {

    private final AssetTag tag;
    private final List<Move> moves;

    private StepBack(MachinePlan plan) {
        this.tag = plan.machine().tag();
        this.moves = plan.moves();
    }

    /** Short, so that a sheet stays on its page. */
    static Line of(MachinePlan plan) {
        return new StepBack(plan).line();
    }

    private Line line() {
        List<String> filled = moves.stream().map(Move::to).filter(this::isHere)
                .map(to -> ((Station.InSlot) to).slot()).toList();
        Line line = Line.of(filled.isEmpty() ? "Power off, unplug. "
                : "Power off, unplug, take out what was put in (" + String.join(", ", filled) + "). ");
        Map<String, List<String>> back = new LinkedHashMap<>();
        for (Move move : moves) {
            if (isHere(move.from())) {
                back.computeIfAbsent(what(move), text -> new ArrayList<>())
                        .add(((Station.InSlot) move.from()).slot());
            }
        }
        for (Map.Entry<String, List<String>> each : back.entrySet()) {
            line = line.plus(Line.of("Back into ", String.join(", ", each.getValue()), ": " + each.getKey() + ". "));
        }
        return line.plus(Line.of("Note that it was put back, and why. "
                + "Bags with this machine's tag stay whole until the proof."));
    }

    private boolean isHere(Station station) {
        return station instanceof Station.InSlot in && in.machine().equals(tag);
    }

    private String what(Move move) {
        String what = Words.brief(move.content());
        if (!(move.to() instanceof Station.InSlot to)) {
            return what + " from the bag with this machine's tag";
        }
        return to.machine().equals(tag) ? "the " + what + " now in " + to.slot()
                : what + " from the bag of machine " + to.machine() + ", which is put back first if it is done";
    }
}
