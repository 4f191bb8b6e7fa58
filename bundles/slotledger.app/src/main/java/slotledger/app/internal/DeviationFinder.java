package slotledger.app.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.ModuleKind;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.Deviation;
import slotledger.model.proof.Deviation.Kind;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Operation;
import slotledger.model.work.Job;
import slotledger.model.work.JobState;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** Says of every machine of a proof what is other than planned, and which jobs end because nothing is. */
final class DeviationFinder {

    /** Hardware and firmware keep a small share of memory; more than a sixteenth is worth a look (common practice). */
    private static final int SMALL_SHARE = 16;

    private final MemoryRules rules;
    private final Fleet after;
    private final Map<AssetTag, Machine> found = new HashMap<>();
    private final Map<AssetTag, AfterFacts> facts;
    private final Map<AssetTag, Job> jobs;
    private final Map<String, String> places = new HashMap<>();
    private final List<Deviation> deviations = new ArrayList<>();
    private int serials;

    /**
     * A search to make.
     *
     * @param after the fleet after the work
     * @param facts what else is known of its machines
     * @param jobs  of the plan
     */
    DeviationFinder(MemoryRules rules, Fleet after, Map<AssetTag, AfterFacts> facts, Map<AssetTag, Job> jobs) {
        this.rules = rules;
        this.after = after;
        this.facts = facts;
        this.jobs = jobs;
        after.machines().forEach(machine -> found.put(machine.tag(), machine));
        facts.forEach((tag, known) -> known.serials()
                .forEach((slot, serial) -> places.put(plain(serial), tag + ", " + slot)));
    }

    ClosingProof find(Proof proof) {
        Repairs repairs = new Repairs(proof, found);
        List<AssetTag> closed = new ArrayList<>();
        for (MachineProof machine : proof.machines()) {
            AssetTag tag = machine.plan().machine().tag();
            int before = deviations.size();
            if (found.containsKey(tag)) {
                look(machine, found.get(tag), repairs);
            }
            Job job = jobs.get(tag);
            if (deviations.size() == before && machine.outcome() == ProofOutcome.DONE && machine.plan().isOpened()
                    && job != null && job.state() != JobState.DONE) {
                closed.add(tag);
            }
        }
        return new ClosingProof(proof, deviations, closed, serials);
    }

    private void look(MachineProof proof, Machine machine, Repairs repairs) {
        AssetTag tag = machine.tag();
        if (proof.outcome() == ProofOutcome.NOT_SEEN) {
            return;
        }
        if (proof.outcome() == ProofOutcome.NOT_DONE) {
            Job job = jobs.get(tag);
            add(tag, Kind.NOT_DONE, "", "opened and changed", "as before", job != null
                    && job.state() == JobState.PUT_BACK ? "It was put back (" + job.reason() + "); find the cause."
                            : "Do its job as planned; its bag must still be there.");
            return;
        }
        boolean otherSlots = new KindMatch(proof.plan().runsAfter().rate())
                .sameModules(proof.plan().after(), machine.population());
        for (MachineProof.Difference each : proof.differences()) {
            if (machine.population().contents().containsKey(each.where())) {
                boolean isEmpty = machine.population().in(each.where()).isEmpty();
                Kind kind = otherSlots ? Kind.WRONG_SLOT : isEmpty ? Kind.MISSING : Kind.OTHER_MODULE;
                add(tag, kind, each.where(), each.planned(), each.found(), repairs.of(proof, each.where()));
            }
        }
        if (proof.plan().isOpened()) {
            operation(proof, machine);
        }
        serials(proof, machine);
    }

    private void operation(MachineProof proof, Machine machine) {
        AfterFacts known = facts.getOrDefault(machine.tag(), AfterFacts.NONE);
        Operation planned = proof.plan().runsAfter();
        Operation runs = rules.operate(Setup.of(after, machine));
        OptionalInt rate = known.rate().isPresent() ? known.rate() : listed(machine.population());
        if (planned.rate().isPresent() && rate.isPresent()
                && rate.getAsInt() < planned.rate().get().megatransfers()) {
            add(machine.tag(), Kind.RATE, "", planned.rate().get().toString(), rate.getAsInt() + " MT/s", "");
        }
        if (runs.mode().channels() < planned.mode().channels()) {
            add(machine.tag(), Kind.MODE, "", planned.mode().toString(), runs.mode().toString(), "");
        }
        if (planned.ecc() && (known.ecc().filter(on -> !on).isPresent() || hasUnchecked(machine.population()))) {
            add(machine.tag(), Kind.ECC, "", "errors are checked and corrected",
                    known.ecc().filter(on -> !on).isPresent() ? "firmware says that they are not"
                            : "a module without ECC is in the machine", "");
        }
        known.total().ifPresent(total -> total(machine, total));
    }

    private void total(Machine machine, Capacity total) {
        Capacity slots = machine.population().total();
        long gap = slots.kibibytes() - total.kibibytes();
        long smallest = machine.population().modules().stream().mapToLong(kind -> kind.capacity().kibibytes()).min()
                .orElse(Long.MAX_VALUE);
        if (gap >= smallest) {
            add(machine.tag(), Kind.MISSING, "", slots.toString(), total.toString(), "");
        } else if (gap * SMALL_SHARE > slots.kibibytes()) {
            add(machine.tag(), Kind.REMAPPED, "", slots.toString(), total.toString(), "");
        }
    }

    /** The least rate the inventory lists of the machine's modules, where it lists one of each. */
    private static OptionalInt listed(Population population) {
        List<ModuleKind> modules = population.modules();
        return modules.stream().anyMatch(kind -> kind.rate().isEmpty()) ? OptionalInt.empty()
                : modules.stream().mapToInt(kind -> kind.rate().orElseThrow().megatransfers()).min();
    }

    private static boolean hasUnchecked(Population population) {
        return population.modules().stream().map(ModuleKind::errorCheck).flatMap(Optional::stream)
                .anyMatch(check -> check == ErrorCheck.NONE);
    }

    private void serials(MachineProof proof, Machine machine) {
        Job job = jobs.get(machine.tag());
        if (job == null) {
            return;
        }
        AfterFacts known = facts.getOrDefault(machine.tag(), AfterFacts.NONE);
        job.serials().forEach((slot, put) -> {
            String now = known.serial(slot);
            if (now.isEmpty()) {
                return;
            }
            if (plain(now).equals(plain(put))) {
                serials++;
                return;
            }
            String elsewhere = places.get(plain(put));
            add(proof.plan().machine().tag(), Kind.SERIAL, slot, "serial number " + put, "serial number " + now,
                    elsewhere == null ? "The module that was put in is in no machine of the inventory; look for it."
                            : "The module that was put in is in " + elsewhere + ". Swap the two, or note the swap if "
                                    + "both are of one kind.");
        });
    }

    /** Listings write serial numbers with or without leading zeros, in either case. */
    private static String plain(String serial) {
        return serial.strip().toUpperCase(Locale.ROOT).replaceFirst("^(0X|0)+(?=.)", "");
    }

    private void add(AssetTag tag, Kind kind, String where, String planned, String seen, String repair) {
        deviations.add(new Deviation(tag, kind, where, planned, seen, repair));
    }
}
