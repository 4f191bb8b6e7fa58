package slotledger.model.family;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * All families, from families.txt. A family is found by generation, form and, where two share both, by buffering; pins
 * never identify one. Rules ask very often, so that every answer is worked out beforehand.
 */
public final class Families {

    private static final List<Family> ALL = FamilyFile.read("families.txt");
    private static final int GENERATIONS = Generation.values().length;
    private static final int FORMS = Form.values().length;
    private static final int BUFFERINGS = Buffering.values().length;

    /** By generation, form and buffering; behind the last buffering what holds where nobody has said it. */
    private static final List<Optional<Family>> INDEX = index();
    private static final OptionalInt[] PINS = agreed(Family::pins);
    private static final OptionalInt[] DATA_BITS = agreed(Family::dataBits);
    private static final OptionalInt[] CHANNEL_BITS = agreed(Family::channelBits);
    private static final List<Set<Voltage>> SURE_VOLTAGES = sure();
    private static final List<List<Grade>> GRADES = grades();

    private Families() {
    }

    /** In the order of the file: oldest first, soldered chips last. */
    public static List<Family> all() {
        return ALL;
    }

    /** The family of a module; empty where too little is known of the module, or nobody makes such a module. */
    public static Optional<Family> of(ModuleKind kind) {
        return kind.generation().isEmpty() || kind.form().isEmpty()
                ? Optional.empty()
                : of(kind.generation().get(), kind.form().get(), kind.buffering());
    }

    /** The family; empty where two differ by the buffering that nobody has said (DDR2 and FB-DIMM). */
    public static Optional<Family> of(Generation generation, Form form, Optional<Buffering> buffering) {
        int last = buffering.isPresent() ? buffering.get().ordinal() : BUFFERINGS;
        return INDEX.get(place(generation, form) * (BUFFERINGS + 1) + last);
    }

    /** All families of a generation and form. */
    public static List<Family> of(Generation generation, Form form) {
        return ALL.stream().filter(family -> family.form() == form && family.generations().contains(generation))
                .toList();
    }

    /** Contacts of a module, where all families of a generation and form have as many. */
    public static OptionalInt pins(Generation generation, Form form) {
        return PINS[place(generation, form)];
    }

    /** Data bits of a module, where all families of a generation and form agree. */
    public static OptionalInt dataBits(Generation generation, Form form) {
        return DATA_BITS[place(generation, form)];
    }

    /** Data bits of a module towards one memory channel, where all families of a generation and form agree. */
    public static OptionalInt channelBits(Generation generation, Form form) {
        return CHANNEL_BITS[place(generation, form)];
    }

    /** The voltages at which every module of a generation works, in whatever form; empty where there is none. */
    public static Set<Voltage> sureVoltages(Generation generation) {
        return SURE_VOLTAGES.get(generation.ordinal());
    }

    /** The grades of a generation in whatever form, one for each rate, ascending. */
    public static List<Grade> grades(Generation generation) {
        return GRADES.get(generation.ordinal());
    }

    /** The families a person may mean: one by its id, else all whose name or id holds each word of the text. */
    public static List<Family> find(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        List<Family> exact = ALL.stream()
                .filter(family -> family.id().equals(wanted) || family.name().toLowerCase(Locale.ROOT).equals(wanted))
                .toList();
        return exact.isEmpty() ? ALL.stream().filter(family -> holds(family, wanted)).toList() : exact;
    }

    private static boolean holds(Family family, String wanted) {
        String name = (family.name() + " " + family.id()).toLowerCase(Locale.ROOT);
        String plain = name.replace("-", "");
        for (String word : wanted.split("\\s+")) {
            if (!name.contains(word) && !plain.contains(word.replace("-", ""))) {
                return false;
            }
        }
        return !wanted.isEmpty();
    }

    private static int place(Generation generation, Form form) {
        return generation.ordinal() * FORMS + form.ordinal();
    }

    private static List<Optional<Family>> index() {
        List<Optional<Family>> index = new ArrayList<>();
        for (Generation generation : Generation.values()) {
            for (Form form : Form.values()) {
                List<Family> families = of(generation, form);
                for (Buffering buffering : Buffering.values()) {
                    index.add(only(families.stream()
                            .filter(each -> each.bufferings().isEmpty() || each.bufferings().contains(buffering))
                            .toList()));
                }
                index.add(only(families));
            }
        }
        return List.copyOf(index);
    }

    private static Optional<Family> only(List<Family> families) {
        return families.size() == 1 ? Optional.of(families.get(0)) : Optional.empty();
    }

    private static OptionalInt[] agreed(Function<Family, OptionalInt> number) {
        OptionalInt[] agreed = new OptionalInt[GENERATIONS * FORMS];
        for (Generation generation : Generation.values()) {
            for (Form form : Form.values()) {
                List<OptionalInt> numbers = of(generation, form).stream().map(number).distinct().toList();
                agreed[place(generation, form)] = numbers.size() == 1 ? numbers.get(0) : OptionalInt.empty();
            }
        }
        return agreed;
    }

    private static List<Set<Voltage>> sure() {
        List<Set<Voltage>> all = new ArrayList<>();
        for (Generation generation : Generation.values()) {
            Set<Voltage> sure = null;
            for (Family family : ALL) {
                if (family.generations().contains(generation)) {
                    sure = sure == null ? new LinkedHashSet<>(family.sureVoltages()) : sure;
                    sure.retainAll(family.sureVoltages());
                }
            }
            all.add(sure == null ? Set.of() : Set.copyOf(sure));
        }
        return List.copyOf(all);
    }

    private static List<List<Grade>> grades() {
        List<List<Grade>> all = new ArrayList<>();
        for (Generation generation : Generation.values()) {
            Map<Rate, Grade> grades = new TreeMap<>();
            for (Family family : ALL) {
                if (family.generations().contains(generation)) {
                    family.grades().forEach(grade -> grades.putIfAbsent(grade.rate(), grade));
                }
            }
            all.add(List.copyOf(grades.values()));
        }
        return List.copyOf(all);
    }
}
