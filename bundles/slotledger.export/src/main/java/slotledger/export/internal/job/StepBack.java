package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.List;
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

    static List<Line> of(MachinePlan plan) {
        return new StepBack(plan).lines();
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of("If it does not start or shows less than it should: power off and unplug again, and take out "
                + "what was put in" + (isAnyThingIn() ? " (" + String.join(", ", slotsFilled()) + ")" : "") + "."));
        for (Move move : moves) {
            if (move.from() instanceof Station.InSlot from && from.machine().equals(tag)) {
                lines.add(back(move, from.slot()));
            }
        }
        lines.add(Line.of("Then write down that it was put back, and why. Give nothing of a bag with this machine's tag "
                + "away before the proof."));
        return lines;
    }

    private boolean isAnyThingIn() {
        return !slotsFilled().isEmpty();
    }

    private List<String> slotsFilled() {
        return moves.stream().map(Move::to).filter(this::isHere).map(to -> ((Station.InSlot) to).slot()).toList();
    }

    private boolean isHere(Station station) {
        return station instanceof Station.InSlot in && in.machine().equals(tag);
    }

    private Line back(Move move, String slot) {
        Line what = Line.of("Back into slot ", slot, ": the ", Words.brief(move.content()));
        if (!(move.to() instanceof Station.InSlot to)) {
            return what.plus(Line.of(", from the bag with this machine's tag."));
        }
        return to.machine().equals(tag)
                ? what.plus(Line.of(" that is now in slot ", to.slot(), "."))
                : what.plus(Line.of(". It went to machine ", to.machine().value(), ", slot ", to.slot(),
                        ": until that one is done it lies in its bag, then it must be put back first."));
    }
}
