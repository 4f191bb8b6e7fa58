package slotledger.workbench.internal.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.model.board.Board;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Opened;

/**
 * One machine as a line of the fleet's grid.
 *
 * @param tag    asset tag
 * @param where  site and room
 * @param role   role
 * @param board  the board's name, or maker and model as the inventory writes them
 * @param slots  what is in the slots now, in the board's order
 * @param total  installed now; empty means not known
 * @param target capacity wanted; empty means none
 * @param after  installed after the plan; empty before a plan is made, or where it can't be told
 * @param state  how it stands
 */
public record FleetRow(
        AssetTag tag,
        Whereabouts where,
        String role,
        String board,
        String slots,
        Optional<Capacity> total,
        Optional<Capacity> target,
        Optional<Capacity> after,
        FleetState state) {

    public FleetRow {
        Objects.requireNonNull(tag, "tag");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(board, "board");
        Objects.requireNonNull(slots, "slots");
        Objects.requireNonNull(total, "total");
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(state, "state");
    }

    /** All machines: those of known boards, then those that can't be judged. */
    public static List<FleetRow> of(Opened opened, Optional<Plan> plan) {
        List<FleetRow> rows = new ArrayList<>();
        Map<AssetTag, MachinePlan> planned = plan.map(Plan::machines).orElse(List.of()).stream()
                .collect(Collectors.toMap(made -> made.machine().tag(), Function.identity()));
        opened.survey().fleet().machines().forEach(machine ->
                rows.add(of(opened, Optional.ofNullable(planned.get(machine.tag())), machine)));
        opened.survey().unresolved().forEach(machine -> rows.add(unresolved(opened, machine)));
        return List.copyOf(rows);
    }

    private static FleetRow of(Opened opened, Optional<MachinePlan> plan, Machine machine) {
        Board board = opened.survey().fleet().boardOf(machine);
        Optional<Target> target = target(opened, machine.role());
        FleetState state = plan.map(made -> FleetState.planned(made.outcome()))
                .orElseGet(() -> FleetState.now(machine, target, opened.lacks(machine.tag())));
        Optional<Capacity> total = machine.population().hasUnread()
                ? Optional.empty() : Optional.of(machine.population().total());
        return new FleetRow(machine.tag(), machine.where(), machine.role(), board.name(),
                inShort(board.slots().stream().map(slot -> machine.population().in(slot.label()))), total,
                target.map(Target::capacity),
                plan.map(MachinePlan::after).filter(after -> !after.hasUnread()).map(Population::total), state);
    }

    private static FleetRow unresolved(Opened opened, ObservedMachine machine) {
        return new FleetRow(machine.tag(), machine.where(), machine.role(),
                (machine.maker() + " " + machine.model()).strip(),
                inShort(machine.slots().stream().map(ObservedSlot::content)), machine.total(),
                target(opened, machine.role()).map(Target::capacity), Optional.empty(), FleetState.unresolved());
    }

    private static Optional<Target> target(Opened opened, String role) {
        return opened.survey().policy().flatMap(policy -> policy.target(role));
    }

    /** "8 GB · 4 GB · – · ?". */
    private static String inShort(Stream<SlotContent> contents) {
        return contents.map(FleetRow::inShort).collect(Collectors.joining(" · "));
    }

    private static String inShort(SlotContent content) {
        if (content instanceof SlotContent.Holds holds) {
            return holds.kind().capacity().toString();
        }
        if (content instanceof SlotContent.Filled) {
            return Texts.slot_filler;
        }
        return content.isEmpty() ? "–" : "?";
    }
}
