package slotledger.app.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.catalog.ResolvedFleet;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.source.Place;
import slotledger.rules.MemoryRules;

/** Compares an inventory taken after the work with a plan. */
final class ProofMaker {

    /** The code by which the catalog says that modules were put into slots the inventory did not name. */
    private static final String ASSUMED = "slots-assumed";

    private final MemoryRules rules;

    ProofMaker(MemoryRules rules) {
        this.rules = rules;
    }

    /**
     * Compares them.
     *
     * @param namingFillers machines of which the inventory names fillers
     */
    Proof prove(
            Plan plan, ResolvedFleet after, Set<AssetTag> namingFillers, List<Finding> findings, LocalDate date) {
        Map<AssetTag, Machine> seen = new HashMap<>();
        after.fleet().machines().forEach(machine -> seen.put(machine.tag(), machine));
        Map<AssetTag, ObservedMachine> unresolved = new HashMap<>();
        after.unresolved().forEach(machine -> unresolved.put(machine.tag(), machine));
        Set<AssetTag> assumed = new HashSet<>();
        findings.stream().filter(finding -> finding.code().equals(ASSUMED))
                .forEach(finding -> finding.machine().ifPresent(assumed::add));

        List<MachineProof> proofs = new ArrayList<>();
        for (MachinePlan planned : plan.machines()) {
            AssetTag tag = planned.machine().tag();
            Machine found = seen.remove(tag);
            if (found == null) {
                proofs.add(notSeen(planned, unresolved.containsKey(tag)));
            } else {
                proofs.add(new MachineComparison(rules, after.fleet(), planned, found, assumed.contains(tag),
                        namingFillers.contains(tag)).prove());
            }
        }
        List<Finding> all = new ArrayList<>(findings);
        after.fleet().machines().stream().filter(machine -> seen.containsKey(machine.tag()))
                .forEach(machine -> all.add(notPlanned(machine)));
        return new Proof(plan.title(), date, proofs, all);
    }

    private static MachineProof notSeen(MachinePlan planned, boolean listed) {
        String remark = listed
                ? "The inventory lists the machine, but its memory could not be read; see the findings."
                : "The inventory does not list the machine. Look at it and list it again.";
        return new MachineProof(planned, ProofOutcome.NOT_SEEN, List.of(), remark);
    }

    private static Finding notPlanned(Machine machine) {
        Place place = machine.place();
        return new Finding(Severity.NOTE, "machine-not-in-plan", place, Optional.of(machine.tag()), "",
                "Machine " + machine.tag() + " is in the inventory, but not in the plan.", "",
                "If it is new, plan it next time; if its asset tag was changed, correct it here.");
    }
}
