package slotledger.intake.internal.value;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
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
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** What is known of a module so far, from one cell or several; notices facts that contradict each other. */
public final class Facts {

    private enum Fact {
        CAPACITY("capacity", "capacities"),
        GENERATION("generation", "generations"),
        FORM("form", "forms"),
        BUFFERING("buffering", "kinds of buffering"),
        RATE("rate", "rates"),
        ACCESS_TIME("access time", "access times"),
        RANKS("ranks", "rank counts"),
        CHIP_WIDTH("chip width", "chip widths"),
        CHIP_SIZE("chip size", "chip sizes"),
        STACK("dies stacked in a chip", "stacks"),
        ERROR_CHECK("check bits", "statements about ECC"),
        CHECK_BITS("check bits beside each data word", "numbers of check bits"),
        CAS_LATENCY("CAS latency", "CAS latencies"),
        CONTACTS("contacts", "metals of contacts");

        private final String word;
        private final String plural;

        Fact(String word, String plural) {
            this.word = word;
            this.plural = plural;
        }
    }

    private final Map<Fact, Object> values = new EnumMap<>(Fact.class);
    private final Set<Voltage> voltages = new TreeSet<>();
    private final List<RawRate> rates = new ArrayList<>();
    private final List<Doubt> doubts = new ArrayList<>();
    /** What was said, one entry a statement; not copied, since it serves only while a text is read. */
    private final List<String> told = new ArrayList<>();
    private OptionalInt pins = OptionalInt.empty();

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

    void stack(int known) {
        put(Fact.STACK, known);
    }

    void checkBits(int known) {
        put(Fact.CHECK_BITS, known);
    }

    void accessTime(AccessTime known) {
        put(Fact.ACCESS_TIME, known);
    }

    void contacts(ContactMetal known) {
        put(Fact.CONTACTS, known);
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
        put(Fact.RATE, known);
    }

    void doubt(Doubt doubt) {
        doubts.add(doubt);
    }

    public Optional<Generation> generation() {
        return Optional.ofNullable((Generation) values.get(Fact.GENERATION));
    }

    public Optional<Form> form() {
        return Optional.ofNullable((Form) values.get(Fact.FORM));
    }

    public Optional<Buffering> buffering() {
        return Optional.ofNullable((Buffering) values.get(Fact.BUFFERING));
    }

    Optional<ErrorCheck> errorCheck() {
        return Optional.ofNullable((ErrorCheck) values.get(Fact.ERROR_CHECK));
    }

    public Optional<Capacity> capacity() {
        return Optional.ofNullable((Capacity) values.get(Fact.CAPACITY));
    }

    /** Whether nothing at all is known. */
    public boolean isEmpty() {
        return values.isEmpty() && voltages.isEmpty() && rates.isEmpty();
    }

    private void put(Fact fact, Object known) {
        told.add(fact.word + " " + text(known));
        Object before = values.putIfAbsent(fact, known);
        if (before != null && !before.equals(known)) {
            doubts.add(Doubt.warning("contradiction", "Two %s are given: %s and %s; the first is used."
                    .formatted(fact.plural, text(before), text(known)), "one of them", "Look at the label of the module."));
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

    /** Everything known, by the name of the fact, in the order a person asks. */
    public Map<String, String> named() {
        Map<String, String> named = new LinkedHashMap<>();
        for (Map.Entry<Fact, Object> entry : values.entrySet()) {
            named.put(entry.getKey().word, text(entry.getValue()));
        }
        if (!voltages.isEmpty()) {
            named.put("voltage", String.join(", ", voltages.stream().map(Voltage::toString).toList()));
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
