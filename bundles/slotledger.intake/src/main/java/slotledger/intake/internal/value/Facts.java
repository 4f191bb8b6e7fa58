package slotledger.intake.internal.value;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** What is known of a module so far, from one cell or several; notices facts that contradict each other. */
public final class Facts {

    private enum Fact {
        GENERATION("generations"),
        FORM("forms"),
        CAPACITY("capacities"),
        RANKS("rank counts"),
        CHIP_WIDTH("chip widths"),
        CHIP_SIZE("chip sizes"),
        ERROR_CHECK("statements about ECC"),
        BUFFERING("kinds of buffering"),
        CAS_LATENCY("CAS latencies"),
        RATE("rates");

        private final String plural;

        Fact(String plural) {
            this.plural = plural;
        }
    }

    private final Map<Fact, Object> values = new EnumMap<>(Fact.class);
    private final Set<Voltage> voltages = new TreeSet<>();
    private final List<RawRate> rates = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();

    void generation(Generation known) {
        put(Fact.GENERATION, known);
    }

    void form(Form known) {
        put(Fact.FORM, known);
    }

    void capacity(Capacity known) {
        put(Fact.CAPACITY, known);
    }

    void ranks(int known) {
        put(Fact.RANKS, known);
    }

    void chipWidth(ChipWidth known) {
        put(Fact.CHIP_WIDTH, known);
    }

    void chipSize(ChipSize known) {
        put(Fact.CHIP_SIZE, known);
    }

    void errorCheck(ErrorCheck known) {
        put(Fact.ERROR_CHECK, known);
    }

    void buffering(Buffering known) {
        put(Fact.BUFFERING, known);
    }

    void casLatency(int known) {
        put(Fact.CAS_LATENCY, known);
    }

    void voltage(Voltage known) {
        voltages.add(known);
    }

    /** A rate in MT/s, as a column of rates gives it. */
    public static Facts ofRate(int number) {
        Facts facts = new Facts();
        facts.rate(new RawRate(number, false));
        return facts;
    }

    public static Facts ofSize(Capacity size) {
        Facts facts = new Facts();
        facts.capacity(size);
        return facts;
    }

    void rate(RawRate written) {
        rates.add(written);
    }

    void rate(Rate known) {
        put(Fact.RATE, known);
    }

    void doubt(Doubt doubt) {
        doubts.add(doubt);
    }

    public Optional<Generation> generation() {
        return Optional.ofNullable((Generation) values.get(Fact.GENERATION));
    }

    public Optional<Capacity> capacity() {
        return Optional.ofNullable((Capacity) values.get(Fact.CAPACITY));
    }

    /** Whether nothing at all is known. */
    public boolean isEmpty() {
        return values.isEmpty() && voltages.isEmpty() && rates.isEmpty();
    }

    private void put(Fact fact, Object known) {
        Object before = values.putIfAbsent(fact, known);
        if (before != null && !before.equals(known)) {
            doubts.add(Doubt.warning("contradiction", "Two %s are given: %s and %s; the first is used."
                    .formatted(fact.plural, before, known), "one of them", "Look at the label of the module."));
        }
    }

    public Facts copy() {
        Facts copy = new Facts();
        copy.values.putAll(values);
        copy.voltages.addAll(voltages);
        copy.rates.addAll(rates);
        copy.doubts.addAll(doubts);
        return copy;
    }

    /** Adds what other text says of the same module. */
    public Facts and(Facts other) {
        Facts both = copy();
        other.values.forEach(both::put);
        both.voltages.addAll(other.voltages);
        both.rates.addAll(other.rates);
        both.doubts.addAll(other.doubts);
        return both;
    }

    /** Adds only what is not known yet, without comparing. */
    public Facts or(Facts other) {
        Facts both = copy();
        other.values.forEach(both.values::putIfAbsent);
        if (both.voltages.isEmpty()) {
            both.voltages.addAll(other.voltages);
        }
        if (both.rates.isEmpty() && !values.containsKey(Fact.RATE)) {
            both.rates.addAll(other.rates);
        }
        return both;
    }

    /** The same module with its generation, where that is known from elsewhere. */
    public Facts ofGeneration(Generation known) {
        Facts all = copy();
        all.values.putIfAbsent(Fact.GENERATION, known);
        return all;
    }

    /** What holds for any module of the same make. */
    public Facts withoutCapacity() {
        Facts all = copy();
        all.values.remove(Fact.CAPACITY);
        return all;
    }

    /**
     * The module kind; empty where not even the capacity is known.
     *
     * @param notices takes what is doubtful
     */
    public Optional<ModuleKind> kind(List<Doubt> notices) {
        notices.addAll(doubts);
        Facts settled = copy();
        settled.doubts.clear();
        for (RawRate rate : rates) {
            rate.resolve(generation(), notices).ifPresent(settled::rate);
        }
        notices.addAll(settled.doubts);
        Optional<Capacity> capacity = capacity();
        if (capacity.isEmpty() || capacity.get().isNone()) {
            return Optional.empty();
        }
        return Optional.of(settled.build(capacity.get()));
    }

    private ModuleKind build(Capacity capacity) {
        ModuleKind kind = ModuleKind.ofCapacity(capacity);
        for (Map.Entry<Fact, Object> entry : values.entrySet()) {
            kind = switch (entry.getKey()) {
                case CAPACITY -> kind;
                case GENERATION -> kind.with((Generation) entry.getValue());
                case FORM -> kind.with((Form) entry.getValue());
                case RANKS -> kind.withRanks((Integer) entry.getValue());
                case CHIP_WIDTH -> kind.with((ChipWidth) entry.getValue());
                case CHIP_SIZE -> kind.with((ChipSize) entry.getValue());
                case ERROR_CHECK -> kind.with((ErrorCheck) entry.getValue());
                case BUFFERING -> kind.with((Buffering) entry.getValue());
                case CAS_LATENCY -> kind.withCasLatency((Integer) entry.getValue());
                case RATE -> kind.with((Rate) entry.getValue());
            };
        }
        return voltages.isEmpty() ? kind : kind.with(voltages.toArray(new Voltage[0]));
    }
}
