package slotledger.model.module;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
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
 * @param chipSize   capacity of one chip
 * @param errorCheck parity or ECC bits
 * @param buffering  unbuffered, registered, load-reduced, fully buffered
 * @param rate       the highest rate the module is rated for
 * @param casLatency CAS latency in clock cycles at that rate
 * @param voltages   supply voltages the module works at; empty means unknown
 */
public record ModuleKind(
        Optional<Generation> generation,
        Optional<Form> form,
        Capacity capacity,
        OptionalInt ranks,
        Optional<ChipWidth> chipWidth,
        Optional<ChipSize> chipSize,
        Optional<ErrorCheck> errorCheck,
        Optional<Buffering> buffering,
        Optional<Rate> rate,
        OptionalInt casLatency,
        Set<Voltage> voltages) {

    public ModuleKind {
        Objects.requireNonNull(generation, "generation");
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(ranks, "ranks");
        Objects.requireNonNull(chipWidth, "chipWidth");
        Objects.requireNonNull(chipSize, "chipSize");
        Objects.requireNonNull(errorCheck, "errorCheck");
        Objects.requireNonNull(buffering, "buffering");
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(casLatency, "casLatency");
        voltages = Set.copyOf(voltages);
        if (capacity.isNone()) {
            throw new IllegalArgumentException(
                    "The capacity of a module must be more than none. Maybe the slot is empty.");
        }
        if (ranks.isPresent() && ranks.getAsInt() < 1) {
            throw new IllegalArgumentException("The ranks (%d) must be at least 1.".formatted(ranks.getAsInt()));
        }
    }

    /** A kind of which only the capacity is known. */
    public static ModuleKind ofCapacity(Capacity capacity) {
        return new ModuleKind(
                Optional.empty(),
                Optional.empty(),
                capacity,
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                Set.of());
    }

    public static ModuleKind of(Generation generation, Form form, Capacity capacity) {
        return ofCapacity(capacity).with(generation).with(form);
    }

    public ModuleKind with(Generation known) {
        return new ModuleKind(Optional.of(known), form, capacity, ranks, chipWidth, chipSize, errorCheck, buffering,
                rate, casLatency, voltages);
    }

    public ModuleKind with(Form known) {
        return new ModuleKind(generation, Optional.of(known), capacity, ranks, chipWidth, chipSize, errorCheck,
                buffering, rate, casLatency, voltages);
    }

    public ModuleKind withRanks(int known) {
        return new ModuleKind(generation, form, capacity, OptionalInt.of(known), chipWidth, chipSize, errorCheck,
                buffering, rate, casLatency, voltages);
    }

    public ModuleKind with(ChipWidth known) {
        return new ModuleKind(generation, form, capacity, ranks, Optional.of(known), chipSize, errorCheck, buffering,
                rate, casLatency, voltages);
    }

    public ModuleKind with(ChipSize known) {
        return new ModuleKind(generation, form, capacity, ranks, chipWidth, Optional.of(known), errorCheck, buffering,
                rate, casLatency, voltages);
    }

    public ModuleKind with(ErrorCheck known) {
        return new ModuleKind(generation, form, capacity, ranks, chipWidth, chipSize, Optional.of(known), buffering,
                rate, casLatency, voltages);
    }

    public ModuleKind with(Buffering known) {
        return new ModuleKind(generation, form, capacity, ranks, chipWidth, chipSize, errorCheck, Optional.of(known),
                rate, casLatency, voltages);
    }

    public ModuleKind with(Rate known) {
        return new ModuleKind(generation, form, capacity, ranks, chipWidth, chipSize, errorCheck, buffering,
                Optional.of(known), casLatency, voltages);
    }

    public ModuleKind withCasLatency(int known) {
        return new ModuleKind(generation, form, capacity, ranks, chipWidth, chipSize, errorCheck, buffering, rate,
                OptionalInt.of(known), voltages);
    }

    public ModuleKind with(Voltage... known) {
        return new ModuleKind(generation, form, capacity, ranks, chipWidth, chipSize, errorCheck, buffering, rate,
                casLatency, Set.of(known));
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
        errorCheck.ifPresent(known -> append(line, known.text()));
        buffering.ifPresent(known -> append(line, known.text()));
        casLatency.ifPresent(known -> append(line, "CL" + known));
        if (!voltages.isEmpty()) {
            append(line, String.join("/", new TreeSet<>(voltages).stream().map(Voltage::toString).toList()));
        }
        return line.toString();
    }

    private static void append(StringBuilder line, String part) {
        if (!part.isEmpty()) {
            line.append(", ").append(part);
        }
    }
}
