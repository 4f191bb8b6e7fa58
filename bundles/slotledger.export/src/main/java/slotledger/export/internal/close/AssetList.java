package slotledger.export.internal.close;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.export.ExportException;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.work.Job;
import slotledger.model.work.JobState;

/**
 * What each machine holds after the work, as a list that inventories take in, ours too. What was proved goes before
 * what technicians said; of what nobody knows the memory stays empty and the remark says so.
 */
public final class AssetList {

    private static final List<String> HEADINGS = List.of("Asset tag", "Serial number", "Model", "Site", "Room",
            "Cost centre", "Role", "Operating system", "Memory", "Module serial numbers", "Remarks");

    private final CloseOut close;
    private final Map<AssetTag, MachineProof> proofs = new HashMap<>();
    private final Map<AssetTag, Job> jobs = new HashMap<>();

    public AssetList(CloseOut close) {
        this.close = close;
        close.closing().ifPresent(closing -> closing.proof().machines()
                .forEach(machine -> proofs.put(machine.plan().machine().tag(), machine)));
        close.jobs().forEach(job -> jobs.put(job.machine(), job));
    }

    public void write(Path file) throws ExportException {
        StringBuilder text = new StringBuilder(line(HEADINGS));
        close.plan().machines().forEach(machine -> text.append(line(cells(machine))));
        WholeFile.write(file, text.toString());
    }

    private List<String> cells(MachinePlan plan) {
        Machine machine = plan.machine();
        List<String> cells = new ArrayList<>(List.of(machine.tag().value(), machine.serial(), machine.board().value(),
                machine.where().site(), machine.where().room(), machine.costCentre(), machine.role(),
                machine.operatingSystem().orElse("")));
        MachineProof proof = proofs.get(machine.tag());
        Job job = jobs.get(machine.tag());
        cells.add(memory(plan, proof, job));
        cells.add(job == null ? "" : job.serials().entrySet().stream()
                .map(each -> each.getKey() + ": " + each.getValue()).collect(Collectors.joining("; ")));
        cells.add(proof != null ? "proof: " + proof.outcome().text()
                : job != null ? "job: " + job.state().text() : "not opened");
        return cells;
    }

    private static String memory(MachinePlan plan, MachineProof proof, Job job) {
        if (proof == null) {
            boolean done = job != null && job.state() == JobState.DONE;
            boolean unknown = job != null && (job.state() == JobState.FAILED || job.state() == JobState.IN_WORK
                    || job.state() == JobState.DONE_DIFFERENTLY);
            return unknown ? "" : memory(done ? plan.after() : plan.before(), Map.of());
        }
        Map<String, String> found = new HashMap<>();
        proof.differences().forEach(each -> found.put(each.where(), each.found()));
        return proof.outcome() == ProofOutcome.NOT_SEEN || found.containsKey("board") ? ""
                : memory(plan.after(), found);
    }

    /** "DIMM1: 8 GB DDR4-2400 DIMM 1Rx8, DIMM2: empty". */
    private static String memory(Population population, Map<String, String> found) {
        return population.contents().entrySet().stream().map(slot -> slot.getKey() + ": "
                + found.getOrDefault(slot.getKey(), text(slot.getValue())).replace(",", ""))
                .collect(Collectors.joining(", "));
    }

    /** What could not be read is written again as it was. */
    private static String text(SlotContent content) {
        return content instanceof SlotContent.Unread unread ? unread.text() : content.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(AssetList::cell).collect(Collectors.joining(",")) + "\r\n";
    }

    /** Quoted as RFC 4180 says; a spreadsheet must not take a text for a formula. */
    private static String cell(String text) {
        String clean = text.replaceAll("[\\r\\n\\t]+", " ");
        String safe = !clean.isEmpty() && "=+-@".indexOf(clean.charAt(0)) >= 0 ? "'" + clean : clean;
        return "\"" + safe.replace("\"", "\"\"") + "\"";
    }
}
