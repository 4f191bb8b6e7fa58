package slotledger.app.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.MachineProof.Difference;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.planner.Targets;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** One machine of an inventory taken after the work beside its plan. */
final class MachineComparison {

    private final MemoryRules rules;
    private final Fleet fleet;
    private final MachinePlan planned;
    private final Machine found;
    private final boolean slotsAssumed;
    private final boolean fillersNamed;
    private final KindMatch match;

    /**
     * A comparison to make.
     *
     * @param slotsAssumed whether the inventory left open which module is in which slot
     * @param fillersNamed whether the inventory names the fillers of the machine
     */
    MachineComparison(
            MemoryRules rules,
            Fleet fleet,
            MachinePlan planned,
            Machine found,
            boolean slotsAssumed,
            boolean fillersNamed) {
        this.rules = rules;
        this.fleet = fleet;
        this.planned = planned;
        this.found = found;
        this.slotsAssumed = slotsAssumed;
        this.fillersNamed = fillersNamed;
        this.match = new KindMatch(planned.runsAfter().rate());
    }

    MachineProof prove() {
        if (!found.board().equals(planned.machine().board())) {
            return proof(ProofOutcome.WORSE, List.of(new Difference("board", planned.machine().board().value(),
                    found.board().value())), "The machine has another board than when it was planned.");
        }
        List<Difference> differences = differences(planned.after());
        if (differences.isEmpty()) {
            return proof(ProofOutcome.DONE, List.of(), planned.isOpened() ? unseen() : "Unchanged, as planned.");
        }
        if (slotsAssumed && sameModules(planned.after())) {
            return proof(ProofOutcome.DONE, List.of(),
                    ("The modules are as planned; the inventory does not say in which slots they are. " + unseen())
                            .strip());
        }
        if (planned.isOpened() && (differences(planned.before()).isEmpty()
                || slotsAssumed && sameModules(planned.before()))) {
            return proof(ProofOutcome.NOT_DONE, differences, "The machine is as it was before the work.");
        }
        return changed(differences);
    }

    /** Which planned fillers nobody has reported: no program can see one. */
    private String unseen() {
        Map<String, List<String>> slots = new LinkedHashMap<>();
        planned.after().contents().forEach((slot, content) -> {
            if (content instanceof SlotContent.Filled && !fillersNamed) {
                slots.computeIfAbsent(content.toString(), unused -> new ArrayList<>()).add(slot);
            }
        });
        return slots.isEmpty() ? "" : slots.entrySet().stream()
                .map(each -> each.getKey() + " in " + String.join(", ", each.getValue()))
                .collect(Collectors.joining("; ", "Not seen by firmware, check by eye: ", "."));
    }

    private MachineProof changed(List<Difference> differences) {
        Setup setup = Setup.of(fleet, found);
        Verdict verdict = rules.judge(setup);
        if (verdict.blocks()) {
            return proof(ProofOutcome.WORSE, differences,
                    "What was found is not allowed: " + verdict.reasons(Weight.BLOCKS).get(0).sentence());
        }
        if (found.population().hasUnread()) {
            return proof(ProofOutcome.NOT_SEEN, differences,
                    "What is in a slot could not be read; look at the machine.");
        }
        boolean enough = found.population().total().atLeast(planned.after().total()) || reachesTarget(setup);
        boolean lost = !found.population().total().atLeast(planned.before().total()) && !planned.isOpened();
        if (enough && !lost) {
            return proof(ProofOutcome.DONE_DIFFERENTLY, differences, sameModules(planned.after())
                    ? "The planned modules are in other slots than planned."
                    : "Other modules than planned, but enough.");
        }
        return proof(ProofOutcome.WORSE, differences, "The machine holds " + found.population().total()
                + " instead of " + planned.after().total() + ".");
    }

    private boolean reachesTarget(Setup setup) {
        return planned.target().filter(target -> Targets.meets(target, setup, rules.operate(setup))).isPresent();
    }

    private List<Difference> differences(Population wanted) {
        Set<String> slots = new LinkedHashSet<>(wanted.contents().keySet());
        slots.addAll(found.population().contents().keySet());
        List<Difference> differences = new ArrayList<>();
        for (String slot : slots) {
            SlotContent want = wanted.in(slot);
            SlotContent have = found.population().in(slot);
            if (!match.matches(want, have)) {
                differences.add(new Difference(slot, want.toString(), have.toString()));
            }
        }
        return differences;
    }

    private boolean sameModules(Population wanted) {
        return match.sameModules(wanted, found.population());
    }

    private MachineProof proof(ProofOutcome outcome, List<Difference> differences, String remark) {
        return new MachineProof(planned, outcome, differences, remark);
    }
}
