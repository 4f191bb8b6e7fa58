package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Population;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;

/** Checks that a finished plan keeps to what people decided. A plan that fails is a programming error. */
final class ChoicesAudit {

    private record LabKey(String room, BoardId board) {
    }

    private final Choices choices;

    ChoicesAudit(Choices choices) {
        this.choices = choices;
    }

    void check(Plan plan) {
        require(plan.choices().equals(choices), "The plan must name the choices it keeps to.");
        plan.purchases().forEach(line -> require(choices.forbids(line.offer()).isEmpty(),
                "The offer %s is forbidden and must not be used.", line.offer().id()));
        choices.mostOpened().ifPresent(most -> require(plan.work().size() <= most,
                "At most %s machines must be opened, but %s are.", most, plan.work().size()));
        choices.pins().forEach(pin -> checkPin(plan, pin));
        if (!choices.isEmpty()) {
            plan.work().forEach(this::checkKinds);
            checkRooms(plan);
        }
    }

    private static void checkPin(Plan plan, Pin pin) {
        Optional<MachinePlan> machine = plan.find(pin.machine());
        require(machine.isPresent() && machine.get().after().equals(pin.applied(machine.get().before())),
                "The machine %s must hold what it is pinned to.", pin.machine());
    }

    private void checkKinds(MachinePlan machine) {
        Map<Piece, Integer> more = contents(machine.after());
        contents(machine.before()).forEach((piece, count) -> more.merge(piece, -count, Integer::sum));
        more.forEach((piece, count) -> require(count <= 0 || !choices.forbids(piece),
                "The machine %s must not get a %s, which is forbidden.", machine.machine().tag(), piece));
    }

    /**
     * Where the machines of a room differ, none of them is opened, or nothing suits all of them; the plan says
     * which.
     */
    private void checkRooms(Plan plan) {
        Map<LabKey, List<MachinePlan>> labs = new LinkedHashMap<>();
        for (MachinePlan each : plan.machines()) {
            if (each.target().isPresent() && each.outcome() != Outcome.LEFT_ALONE) {
                choices.uniformRoom(each.machine()).ifPresent(room -> labs.computeIfAbsent(
                        new LabKey(room, each.machine().board()), unused -> new ArrayList<>()).add(each));
            }
        }
        labs.forEach((lab, machines) -> require(isUniform(machines) || isSaid(plan, machines),
                "The machines of board %s in %s must end alike, or the plan must say why not.",
                lab.board(), lab.room()));
    }

    private static boolean isUniform(List<MachinePlan> machines) {
        return machines.stream().map(machine -> contents(machine.after())).distinct().count() <= 1;
    }

    private static boolean isSaid(Plan plan, List<MachinePlan> machines) {
        return plan.remarks().stream()
                .filter(remark -> remark.code().startsWith(RoomRemarks.CODE))
                .flatMap((Finding remark) -> remark.machine().stream())
                .anyMatch(tag -> machines.stream().anyMatch(machine -> machine.machine().tag().equals(tag)));
    }

    private static Map<Piece, Integer> contents(Population population) {
        Map<Piece, Integer> contents = new HashMap<>();
        population.pieces().forEach(piece -> contents.merge(piece, 1, Integer::sum));
        return contents;
    }

    private static void require(boolean holds, String message, Object... values) {
        if (!holds) {
            throw new IllegalStateException(message.formatted(values) + " Maybe the planner has a fault.");
        }
    }
}
