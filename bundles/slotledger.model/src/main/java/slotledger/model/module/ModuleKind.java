package slotledger.model.module;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * All that matters of a memory module for fitting and running. Two modules of equal kind can stand for each other.
 * An empty component means unknown, which is a value: rules say which missing fact keeps them from a verdict.
 *
 * @param generation memory technology
 * @param form       mechanical form
 * @param capacity   what the module holds, without check bits; more than none
 * @param ranks      sides the board selects one at a time (package ranks)
 * @param chipWidth  data bits a chip
 * @param chipSize   capacity of one chip; of one die where dies are stacked
 * @param stack      dies a chip that are stacked behind one load (3DS); 1 for plain chips
 * @param errorCheck parity or ECC bits
 * @param checkBits  check bits beside each data word: 8 for 64 bits, 4 or 8 for each half channel of DDR5
 * @param buffering  unbuffered, registered, load-reduced, fully buffered
 * @param rate       the highest rate the module is rated for
 * @param casLatency CAS latency in clock cycles at that rate
 * @param voltages   supply voltages the module works at; empty means unknown
 * @param accessTime grade of a SIMM
 * @param contacts   metal of the contacts
 */
public record ModuleKind(
        Optional<Generation> generation,
        Optional<Form> form,
        Capacity capacity,
        OptionalInt ranks,
        Optional<ChipWidth> chipWidth,
        Optional<ChipSize> chipSize,
        OptionalInt stack,
        Optional<ErrorCheck> errorCheck,
        OptionalInt checkBits,
        Optional<Buffering> buffering,
        Optional<Rate> rate,
        OptionalInt casLatency,
        Set<Voltage> voltages,
        Optional<AccessTime> accessTime,
        Optional<ContactMetal> contacts)
        implements Piece {

    public ModuleKind {
        Objects.requireNonNull(generation, "generation");
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(ranks, "ranks");
        Objects.requireNonNull(chipWidth, "chipWidth");
        Objects.requireNonNull(chipSize, "chipSize");
        Objects.requireNonNull(stack, "stack");
        Objects.requireNonNull(errorCheck, "errorCheck");
        Objects.requireNonNull(checkBits, "checkBits");
        Objects.requireNonNull(buffering, "buffering");
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(casLatency, "casLatency");
        voltages = Set.copyOf(voltages);
        Objects.requireNonNull(accessTime, "accessTime");
        Objects.requireNonNull(contacts, "contacts");
        if (capacity.isNone()) {
            throw new IllegalArgumentException(
                    "The capacity of a module must be more than none. Maybe the slot is empty.");
        }
        checkCount("ranks", ranks);
        checkCount("dies of a stack", stack);
        checkCount("check bits", checkBits);
    }

    private static void checkCount(String what, OptionalInt count) {
        if (count.isPresent() && count.getAsInt() < 1) {
            throw new IllegalArgumentException("The %s (%d) must be at least 1.".formatted(what, count.getAsInt()));
        }
    }

    /** A kind of which only the capacity is known. */
    public static ModuleKind ofCapacity(Capacity capacity) {
        return new Draft(capacity).kind();
    }

    public static ModuleKind of(Generation generation, Form form, Capacity capacity) {
        return ofCapacity(capacity).with(generation).with(form);
    }

    public ModuleKind with(Generation known) {
        return change(draft -> draft.generation = Optional.of(known));
    }

    public ModuleKind with(Form known) {
        return change(draft -> draft.form = Optional.of(known));
    }

    public ModuleKind withRanks(int known) {
        return change(draft -> draft.ranks = OptionalInt.of(known));
    }

    public ModuleKind with(ChipWidth known) {
        return change(draft -> draft.chipWidth = Optional.of(known));
    }

    public ModuleKind with(ChipSize known) {
        return change(draft -> draft.chipSize = Optional.of(known));
    }

    public ModuleKind withStack(int known) {
        return change(draft -> draft.stack = OptionalInt.of(known));
    }

    public ModuleKind with(ErrorCheck known) {
        return change(draft -> draft.errorCheck = Optional.of(known));
    }

    public ModuleKind withCheckBits(int known) {
        return change(draft -> draft.checkBits = OptionalInt.of(known));
    }

    public ModuleKind with(Buffering known) {
        return change(draft -> draft.buffering = Optional.of(known));
    }

    public ModuleKind with(Rate known) {
        return change(draft -> draft.rate = Optional.of(known));
    }

    public ModuleKind withCasLatency(int known) {
        return change(draft -> draft.casLatency = OptionalInt.of(known));
    }

    public ModuleKind with(Voltage... known) {
        return change(draft -> draft.voltages = Set.of(known));
    }

    public ModuleKind with(AccessTime known) {
        return change(draft -> draft.accessTime = Optional.of(known));
    }

    public ModuleKind with(ContactMetal known) {
        return change(draft -> draft.contacts = Optional.of(known));
    }

    private ModuleKind change(Consumer<Draft> change) {
        Draft draft = new Draft(this);
        change.accept(draft);
        return draft.kind();
    }

    /** Whether every fact a description gives holds for this kind; what the description leaves out doesn't matter. */
    public boolean isDescribedBy(ModuleKind description) {
        return capacity.equals(description.capacity)
                && says(description.generation, generation)
                && says(description.form, form)
                && says(description.ranks, ranks)
                && says(description.chipWidth, chipWidth)
                && says(description.chipSize, chipSize)
                && says(description.stack, stack)
                && says(description.errorCheck, errorCheck)
                && says(description.checkBits, checkBits)
                && says(description.buffering, buffering)
                && says(description.rate, rate)
                && says(description.casLatency, casLatency)
                && (description.voltages.isEmpty() || description.voltages.equals(voltages))
                && says(description.accessTime, accessTime)
                && says(description.contacts, contacts);
    }

    private static boolean says(Optional<?> described, Optional<?> known) {
        return described.isEmpty() || described.equals(known);
    }

    private static boolean says(OptionalInt described, OptionalInt known) {
        return described.isEmpty() || described.equals(known);
    }

    /** "8 GB DDR4-2666", "16 MB EDO 60 ns": enough to tell modules of one order apart at a glance. */
    public String brief() {
        StringBuilder line = new StringBuilder(capacity.toString());
        generation.ifPresent(known -> line.append(' ').append(known.text()));
        rate.ifPresent(known -> line.append(generation.isPresent() ? "-" + known.megatransfers() : " " + known));
        if (rate.isEmpty()) {
            accessTime.ifPresent(known -> line.append(' ').append(known));
        }
        return line.toString();
    }

    /**
     * One line for people, unknown facts left out: "8 GB DDR4-2666 SO-DIMM, 1Rx8, 8 Gbit chips, non-ECC, unbuffered,
     * 1.2 V".
     */
    @Override
    public String toString() {
        StringBuilder line = new StringBuilder(capacity.toString());
        generation.ifPresent(known -> line.append(' ').append(known.text()));
        rate.ifPresent(known -> line.append(generation.isPresent() ? "-" + known.megatransfers() : " " + known));
        form.ifPresent(known -> line.append(' ').append(known.text()));
        String organisation = (ranks.isPresent() ? ranks.getAsInt() + "R" : "")
                + chipWidth.map(ChipWidth::text).orElse("");
        append(line, organisation);
        chipSize.ifPresent(known -> append(line, known + " chips"));
        stack.ifPresent(dies -> append(line, dies == 1 ? "" : dies + " dies stacked"));
        errorCheck.ifPresent(known -> append(line, known.text()));
        checkBits.ifPresent(bits -> append(line, bits + " check bits"));
        buffering.ifPresent(known -> append(line, known.text()));
        accessTime.ifPresent(known -> append(line, known.toString()));
        casLatency.ifPresent(known -> append(line, "CL" + known));
        if (!voltages.isEmpty()) {
            append(line, String.join("/", new TreeSet<>(voltages).stream().map(Voltage::toString).toList()));
        }
        contacts.ifPresent(known -> append(line, known.text() + " contacts"));
        return line.toString();
    }

    private static void append(StringBuilder line, String part) {
        if (!part.isEmpty()) {
            line.append(", ").append(part);
        }
    }

    /** The components while one of them changes. */
    private static final class Draft {

        private Optional<Generation> generation = Optional.empty();
        private Optional<Form> form = Optional.empty();
        private final Capacity capacity;
        private OptionalInt ranks = OptionalInt.empty();
        private Optional<ChipWidth> chipWidth = Optional.empty();
        private Optional<ChipSize> chipSize = Optional.empty();
        private OptionalInt stack = OptionalInt.empty();
        private Optional<ErrorCheck> errorCheck = Optional.empty();
        private OptionalInt checkBits = OptionalInt.empty();
        private Optional<Buffering> buffering = Optional.empty();
        private Optional<Rate> rate = Optional.empty();
        private OptionalInt casLatency = OptionalInt.empty();
        private Set<Voltage> voltages = Set.of();
        private Optional<AccessTime> accessTime = Optional.empty();
        private Optional<ContactMetal> contacts = Optional.empty();

        private Draft(Capacity capacity) {
            this.capacity = capacity;
        }

        private Draft(ModuleKind kind) {
            generation = kind.generation;
            form = kind.form;
            capacity = kind.capacity;
            ranks = kind.ranks;
            chipWidth = kind.chipWidth;
            chipSize = kind.chipSize;
            stack = kind.stack;
            errorCheck = kind.errorCheck;
            checkBits = kind.checkBits;
            buffering = kind.buffering;
            rate = kind.rate;
            casLatency = kind.casLatency;
            voltages = kind.voltages;
            accessTime = kind.accessTime;
            contacts = kind.contacts;
        }

        private ModuleKind kind() {
            return new ModuleKind(generation, form, capacity, ranks, chipWidth, chipSize, stack, errorCheck, checkBits,
                    buffering, rate, casLatency, voltages, accessTime, contacts);
        }
    }
}
