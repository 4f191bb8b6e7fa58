package slotledger.intake.internal.value;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ContactMetal;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ModuleFact;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** What is known of a module so far, from one cell or several; notices facts that contradict each other. */
public final class Facts {

    private final Map<ModuleFact, Object> values = new EnumMap<>(ModuleFact.class);
    private final Set<Voltage> voltages = new TreeSet<>();
    private final List<RawRate> rates = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();
    /** What was said, one entry a statement; not copied, since it serves only while a text is read. */
    private final List<String> told = new ArrayList<>();
    private OptionalInt pins = OptionalInt.empty();

    public void generation(Generation known) {
        put(ModuleFact.GENERATION, known);
    }

    public void form(Form known) {
        put(ModuleFact.FORM, known);
    }

    void capacity(Capacity known) {
        put(ModuleFact.CAPACITY, known);
    }

    void ranks(int known) {
        put(ModuleFact.RANKS, known);
    }

    void chipWidth(ChipWidth known) {
        put(ModuleFact.CHIP_WIDTH, known);
    }

    void chipSize(ChipSize known) {
        put(ModuleFact.CHIP_SIZE, known);
    }

    void errorCheck(ErrorCheck known) {
        put(ModuleFact.ERROR_CHECK, known);
    }

    void buffering(Buffering known) {
        put(ModuleFact.BUFFERING, known);
    }

    void casLatency(int known) {
        put(ModuleFact.CAS_LATENCY, known);
    }

    void stack(int known) {
        put(ModuleFact.STACK, known);
    }

    void checkBits(int known) {
        put(ModuleFact.CHECK_BITS, known);
    }

    void accessTime(AccessTime known) {
        put(ModuleFact.ACCESS_TIME, known);
    }

    void contacts(ContactMetal known) {
        put(ModuleFact.CONTACTS, known);
    }

    void voltage(Voltage known) {
        voltages.add(known);
        told.add("voltage " + known);
    }

    /** A number of pins; it tells the form only together with the generation. */
    void pins(int known) {
        pins = OptionalInt.of(known);
        told.add(known + " pins");
    }

    /** Says what a part of the text means that no fact stands for. */
    void tell(String meaning) {
        told.add(meaning);
    }

    List<String> told() {
        return Collections.unmodifiableList(told);
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
        told.add("rate " + written.number() + (written.megahertz() ? " MHz" : " MT/s"));
    }

    void rate(Rate known) {
        put(ModuleFact.RATE, known);
    }

    void doubt(Doubt doubt) {
        doubts.add(doubt);
    }

    public Optional<Generation> generation() {
        return Optional.ofNullable((Generation) values.get(ModuleFact.GENERATION));
    }

    public Optional<Form> form() {
        return Optional.ofNullable((Form) values.get(ModuleFact.FORM));
    }

    public Optional<Buffering> buffering() {
        return Optional.ofNullable((Buffering) values.get(ModuleFact.BUFFERING));
    }

    Optional<ErrorCheck> errorCheck() {
        return Optional.ofNullable((ErrorCheck) values.get(ModuleFact.ERROR_CHECK));
    }

    public Optional<Capacity> capacity() {
        return Optional.ofNullable((Capacity) values.get(ModuleFact.CAPACITY));
    }

    /** Whether nothing at all is known. */
    public boolean isEmpty() {
        return values.isEmpty() && voltages.isEmpty() && rates.isEmpty();
    }

    private void put(ModuleFact fact, Object known) {
        told.add(fact.text() + " " + text(known));
        Object before = values.putIfAbsent(fact, known);
        if (before != null && !before.equals(known)) {
            doubts.add(Doubt.warning("contradiction", "Two %s are given: %s and %s; the first is used."
                    .formatted(fact.plural(), text(before), text(known)), "one of them",
                    "Look at the label of the module."));
        }
    }

    public Facts copy() {
        Facts copy = new Facts();
        copy.values.putAll(values);
        copy.voltages.addAll(voltages);
        copy.rates.addAll(rates);
        copy.doubts.addAll(doubts);
        copy.pins = pins;
        return copy;
    }

    /** Adds what other text says of the same module. */
    public Facts and(Facts other) {
        Facts both = copy();
        other.values.forEach(both::put);
        both.voltages.addAll(other.voltages);
        both.rates.addAll(other.rates);
        both.doubts.addAll(other.doubts);
        both.pins = both.pins.isPresent() ? both.pins : other.pins;
        return both;
    }

    /** Adds only what is not known yet, without comparing. */
    public Facts or(Facts other) {
        Facts both = copy();
        other.values.forEach(both.values::putIfAbsent);
        if (both.voltages.isEmpty()) {
            both.voltages.addAll(other.voltages);
        }
        if (both.rates.isEmpty() && !values.containsKey(ModuleFact.RATE)) {
            both.rates.addAll(other.rates);
        }
        return both;
    }

    /** The same module with its generation, where that is known from elsewhere. */
    public Facts ofGeneration(Generation known) {
        Facts all = copy();
        all.values.putIfAbsent(ModuleFact.GENERATION, known);
        return all;
    }

    /** What holds for any module of the same make. */
    public Facts withoutCapacity() {
        Facts all = copy();
        all.values.remove(ModuleFact.CAPACITY);
        return all;
    }

    /**
     * The same facts with rates made grades, and with what follows of the number of pins.
     *
     * @param notices takes what is doubtful
     */
    public Facts settled(List<Doubt> notices) {
        notices.addAll(doubts);
        Facts settled = copy();
        settled.doubts.clear();
        settled.rates.clear();
        for (RawRate rate : rates) {
            rate.resolve(generation(), notices).ifPresent(settled::rate);
        }
        FamilyCheck.of(settled, pins, notices);
        notices.addAll(settled.doubts);
        settled.doubts.clear();
        return settled;
    }

    /**
     * The module kind; empty where not even the capacity is known.
     *
     * @param notices takes what is doubtful
     */
    public Optional<ModuleKind> kind(List<Doubt> notices) {
        Facts settled = settled(notices);
        Optional<Capacity> capacity = capacity();
        if (capacity.isEmpty() || capacity.get().isNone()) {
            return Optional.empty();
        }
        return Optional.of(settled.build(capacity.get()));
    }

    /** Everything known, as text. */
    public Map<ModuleFact, String> named() {
        Map<ModuleFact, String> named = new EnumMap<>(ModuleFact.class);
        values.forEach((fact, value) -> named.put(fact, text(value)));
        if (!voltages.isEmpty()) {
            named.put(ModuleFact.VOLTAGE, String.join(", ", voltages.stream().map(Voltage::toString).toList()));
        }
        return named;
    }

    private static String text(Object value) {
        if (value instanceof Generation generation) {
            return generation.text();
        } else if (value instanceof Form form) {
            return form.text();
        } else if (value instanceof Buffering buffering) {
            return buffering.text();
        } else if (value instanceof ErrorCheck check) {
            return check.text();
        } else if (value instanceof ChipWidth width) {
            return width.text();
        } else if (value instanceof ContactMetal metal) {
            return metal.text();
        }
        return value.toString();
    }

    private ModuleKind build(Capacity capacity) {
        ModuleKind kind = ModuleKind.ofCapacity(capacity);
        for (Map.Entry<ModuleFact, Object> entry : values.entrySet()) {
            kind = switch (entry.getKey()) {
                case CAPACITY, VOLTAGE -> kind;
                case GENERATION -> kind.with((Generation) entry.getValue());
                case FORM -> kind.with((Form) entry.getValue());
                case RANKS -> kind.withRanks((Integer) entry.getValue());
                case CHIP_WIDTH -> kind.with((ChipWidth) entry.getValue());
                case CHIP_SIZE -> kind.with((ChipSize) entry.getValue());
                case ERROR_CHECK -> kind.with((ErrorCheck) entry.getValue());
                case BUFFERING -> kind.with((Buffering) entry.getValue());
                case STACK -> kind.withStack((Integer) entry.getValue());
                case CHECK_BITS -> kind.withCheckBits((Integer) entry.getValue());
                case ACCESS_TIME -> kind.with((AccessTime) entry.getValue());
                case CONTACTS -> kind.with((ContactMetal) entry.getValue());
                case CAS_LATENCY -> kind.withCasLatency((Integer) entry.getValue());
                case RATE -> kind.with((Rate) entry.getValue());
            };
        }
        return voltages.isEmpty() ? kind : kind.with(voltages.toArray(new Voltage[0]));
    }
}
