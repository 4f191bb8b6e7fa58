package slotledger.app.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.app.DeskException;
import slotledger.app.Project;
import slotledger.firmware.FirmwareReading;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.Plan;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.Proof;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.rules.MemoryRules;

/** Reads what was seen after the work, and compares it with a plan and its jobs. */
final class ProofRun {

    private final Surveyor surveyor;
    private final MemoryRules rules;
    private final List<Path> inventories;
    private final List<FirmwareReading> firmware;
    private final Project files;

    ProofRun(Surveyor surveyor, MemoryRules rules, List<Path> inventories, List<FirmwareReading> firmware,
            Project files) {
        this.surveyor = surveyor;
        this.rules = rules;
        this.inventories = inventories;
        this.firmware = firmware;
        this.files = files;
    }

    ClosingProof prove(Plan plan, Map<AssetTag, Job> jobs, Progress progress) throws DeskException {
        List<Finding> findings = new ArrayList<>();
        Surveyor.Inventory after = surveyor.inventory(inventories, files, findings, progress);
        Proof proof = new ProofMaker(rules).prove(plan, after.fleet(), after.namingFillers(), findings, files.date());
        Map<AssetTag, ObservedMachine> observed = new HashMap<>();
        after.observed().machines().forEach(machine -> observed.put(machine.tag(), machine));
        Map<AssetTag, AfterFacts> facts = new HashMap<>();
        after.fleet().fleet().machines().forEach(machine -> facts.put(machine.tag(),
                AfterFacts.of(machine, Optional.ofNullable(observed.get(machine.tag())), firmware)));
        return new DeviationFinder(rules, after.fleet().fleet(), facts, jobs).find(proof);
    }
}
