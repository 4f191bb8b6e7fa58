package slotledger.catalog.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.catalog.Catalog;
import slotledger.catalog.FleetResolver;
import slotledger.catalog.ResolvedFleet;
import slotledger.catalog.internal.resolve.Blanks;
import slotledger.catalog.internal.resolve.MachineResolver;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;

/** Resolves the machines of a fleet one by one, in inventory order. */
@Component
public final class DefaultFleetResolver implements FleetResolver {

    @Activate
    public DefaultFleetResolver() {
    }

    @Override
    public ResolvedFleet resolve(ObservedFleet observed, Catalog catalog) {
        Blanks blanks = new Blanks();
        MachineResolver resolver = new MachineResolver(catalog, blanks);
        List<Machine> machines = new ArrayList<>();
        Map<BoardId, Board> boards = new LinkedHashMap<>();
        List<ObservedMachine> unresolved = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Set<AssetTag> seen = new HashSet<>();
        for (ObservedMachine machine : observed.machines()) {
            if (!seen.add(machine.tag())) {
                unresolved.add(machine);
                findings.add(twice(machine));
                continue;
            }
            MachineResolver.Resolution resolution = resolver.resolve(machine);
            findings.addAll(resolution.findings());
            if (resolution.machine().isPresent()) {
                machines.add(resolution.machine().get());
                resolution.board().ifPresent(board -> boards.put(board.id(), board));
            } else {
                unresolved.add(machine);
            }
        }
        findings.addAll(blanks.findings());
        return new ResolvedFleet(new Fleet(machines, boards), unresolved, findings);
    }

    private static Finding twice(ObservedMachine machine) {
        return new Finding(Severity.ERROR, "duplicate-asset-tag", machine.place(), Optional.of(machine.tag()),
                machine.tag().value(), "A machine with this asset tag is in the inventory already.",
                "each asset tag once", "Correct the tag, or delete one of the rows.");
    }
}
