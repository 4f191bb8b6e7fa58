package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.BoardId;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Target;
import slotledger.planner.PlanRequest;
import slotledger.rules.Setup;

/** Groups the machines of a fleet that are alike for every decision. */
public final class FleetClasses {

    private record Key(
            BoardId board,
            int processors,
            Optional<String> processor,
            Optional<String> operatingSystem,
            Redundancy redundancy,
            Population population,
            Optional<Target> target,
            boolean leaveAlone,
            String costCentre) {
    }

    private FleetClasses() {
    }

    /** The classes, in the order of their first machine's asset tag. */
    public static List<MachineClass> of(PlanRequest request) {
        Policy policy = request.policy();
        List<Machine> machines = new ArrayList<>(request.fleet().machines());
        machines.sort(Comparator.comparing(Machine::tag));
        Map<String, Optional<Target>> targets = new HashMap<>();
        Map<String, String> centres = new HashMap<>();
        boolean anyLeftAlone = !policy.leaveAlone().equals(Policy.LeaveAlone.NONE);
        Map<Key, List<Machine>> groups = new LinkedHashMap<>();
        for (Machine machine : machines) {
            Key key = new Key(
                    machine.board(),
                    machine.processors(),
                    machine.processor(),
                    machine.operatingSystem(),
                    machine.redundancy(),
                    machine.population(),
                    targets.computeIfAbsent(machine.role(), role -> policy.target(role).map(FleetClasses::withoutRole)),
                    anyLeftAlone && policy.leaveAlone().covers(machine),
                    centres.computeIfAbsent(machine.costCentre(), name -> costCentre(policy, name)));
            groups.computeIfAbsent(key, unused -> new ArrayList<>()).add(machine);
        }
        return groups.entrySet().stream()
                .map(group -> new MachineClass(
                        Setup.of(request.fleet(), group.getValue().get(0)),
                        group.getKey().target(),
                        group.getKey().leaveAlone(),
                        group.getKey().costCentre(),
                        group.getValue()))
                .toList();
    }

    private static Target withoutRole(Target target) {
        return new Target(
                "", target.capacity(), target.sameChannels(), target.ecc(), target.rate(), target.weight());
    }

    /** The name of the budget that limits the machine; empty where none does. */
    private static String costCentre(Policy policy, String costCentre) {
        String wanted = key(costCentre);
        return policy.costCentreBudgets().keySet().stream()
                .filter(name -> key(name).equals(wanted))
                .findFirst()
                .orElse("");
    }

    private static String key(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
