package slotledger.workbench.internal.slots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.verdict.Operation;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Opened;

/** Draws up a machine's slots as they are now and, once there is a plan, as they will be. */
public final class SlotPictures {

    private SlotPictures() {
    }

    /** One picture before a plan, two with one, none for a machine nobody knows. */
    public static List<SlotPicture> of(Opened opened, Optional<Plan> plan, AssetTag tag) {
        Optional<Machine> machine = opened.machine(tag);
        if (machine.isEmpty()) {
            return opened.unresolved(tag).map(SlotPictures::observed).stream().toList();
        }
        Board board = opened.survey().fleet().boardOf(machine.get());
        Optional<MachinePlan> own = plan.flatMap(made -> made.find(tag));
        return own.map(made -> List.of(before(board, made), after(board, made)))
                .orElseGet(() -> List.of(now(board, machine.get(), opened.runsNow().get(tag))));
    }

    private static SlotPicture now(Board board, Machine machine, Operation runsNow) {
        List<SlotBox> boxes = new ArrayList<>();
        for (Slot slot : board.slots()) {
            SlotContent content = machine.population().in(slot.label());
            boxes.add(box(slot, content, unchanged(slot, content, present(content)), ""));
        }
        return new SlotPicture(Texts.picture_now, facts(runsNow, machine.population()), boxes);
    }

    private static SlotPicture before(Board board, MachinePlan plan) {
        SlotWays ways = new SlotWays(plan.machine().tag(), plan.moves());
        List<SlotBox> boxes = new ArrayList<>();
        for (Slot slot : board.slots()) {
            SlotContent content = plan.before().in(slot.label());
            Optional<Station> target = ways.leaves(slot.label());
            SlotChange change = target
                    .map(station -> ways.isHere(station) ? SlotChange.MOVED : SlotChange.REMOVED)
                    .orElseGet(() -> unchanged(slot, content, SlotChange.KEPT));
            boxes.add(box(slot, content, change, target.map(ways::to).orElse("")));
        }
        return new SlotPicture(Texts.picture_before, facts(plan.runsNow(), plan.before()), boxes);
    }

    private static SlotPicture after(Board board, MachinePlan plan) {
        SlotWays ways = new SlotWays(plan.machine().tag(), plan.moves());
        List<SlotBox> boxes = new ArrayList<>();
        for (Slot slot : board.slots()) {
            SlotContent content = plan.after().in(slot.label());
            Optional<Station> origin = ways.arrives(slot.label());
            SlotChange change = origin
                    .map(station -> ways.isHere(station) ? SlotChange.MOVED : SlotChange.NEW)
                    .orElseGet(() -> unchanged(slot, content, SlotChange.KEPT));
            boxes.add(box(slot, content, change, origin.map(ways::from).orElse("")));
        }
        return new SlotPicture(Texts.picture_after, facts(plan.runsAfter(), plan.after()), boxes);
    }

    private static SlotPicture observed(ObservedMachine machine) {
        List<SlotBox> boxes = new ArrayList<>();
        for (ObservedSlot slot : machine.slots()) {
            String label = slot.label().orElseGet(() -> Texts.with(Texts.slot_unnamed, boxes.size() + 1));
            SlotContent content = slot.content();
            SlotChange change = content.isEmpty() ? SlotChange.EMPTY
                    : content instanceof SlotContent.Unread ? SlotChange.UNREAD : present(content);
            boxes.add(new SlotBox(0, boxes.size(), label, "", ContentLines.of(content), change, ""));
        }
        String total = machine.total().map(amount -> Texts.with(Texts.facts_written, amount)).orElse("");
        return new SlotPicture(Texts.picture_observed, total, boxes);
    }

    private static SlotChange present(SlotContent content) {
        return content instanceof SlotContent.Filled ? SlotChange.FILLER : SlotChange.PRESENT;
    }

    private static SlotChange unchanged(Slot slot, SlotContent content, SlotChange present) {
        return switch (slot.use()) {
            case SOLDERED -> SlotChange.FIXED;
            case DEAD -> SlotChange.DEAD;
            case SOCKET -> content.isEmpty() ? SlotChange.EMPTY
                    : content instanceof SlotContent.Unread ? SlotChange.UNREAD : present;
        };
    }

    private static SlotBox box(Slot slot, SlotContent content, SlotChange change, String way) {
        String place = Texts.with(Texts.slot_place, slot.channel(), slot.position());
        boolean sayNothing = slot.use() == SlotUse.DEAD && content.isEmpty();
        return new SlotBox(slot.row(), slot.column(), slot.label(), place,
                sayNothing ? List.of() : ContentLines.of(content), change, way);
    }

    private static String facts(Operation operation, Population population) {
        String installed = population.hasUnread()
                ? Texts.with(Texts.facts_at_least, operation.installed()) : operation.installed().toString();
        String usable = operation.usable().equals(operation.installed())
                ? "" : ", " + Texts.with(Texts.facts_usable, operation.usable());
        String rate = operation.rate().map(known -> ", " + known).orElse("");
        return installed + usable + ", " + operation.mode() + rate;
    }
}
