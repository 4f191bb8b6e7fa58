package slotledger.model.difference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Target;
import slotledger.model.trade.Taste;

/** Lists what is different, such as what was wanted, allowed or decided differently for two plans. */
final class Terms {

    static final String NONE = "none";

    private final List<Term> terms = new ArrayList<>();

    Terms() {
    }

    List<Term> list() {
        return List.copyOf(terms);
    }

    static List<Term> of(Plan before, Plan after) {
        Terms terms = new Terms();
        terms.compare("day of the plan", before.date(), after.date());
        terms.policy(before.policy(), after.policy());
        terms.choices(before.choices(), after.choices());
        return terms.terms;
    }

    void policy(Policy before, Policy after) {
        compare("budget", text(before.budget()), text(after.budget()));
        compare("target of", before.targets().stream().collect(Collectors.toMap(Target::role, Terms::target)),
                after.targets().stream().collect(Collectors.toMap(Target::role, Terms::target)));
        compare("budget of cost centre", texts(before.costCentreBudgets()), texts(after.costCentreBudgets()));
        compare("labour per machine", before.perMachine(), after.perMachine());
        compare("labour per module", before.perModule(), after.perModule());
        compare("spares", spares(before), spares(after));
        compare("reuse pulled", word(before.reusePulled()), word(after.reusePulled()));
        compare("harvest", word(before.harvest()), word(after.harvest()));
        Policy.LeaveAlone then = before.leaveAlone();
        Policy.LeaveAlone now = after.leaveAlone();
        compare("machines left alone", then.tags(), now.tags());
        compare("rooms left alone", then.rooms(), now.rooms());
        compare("roles left alone", then.roles(), now.roles());
        compare("needed by", text(before.buying().neededBy()), text(after.buying().neededBy()));
        compare("exchange rate of", texts(before.buying().rates()), texts(after.buying().rates()));
        compare("tax", text(before.buying().tax().percent()), text(after.buying().tax().percent()));
        compare("budget includes tax", word(before.buying().tax().inBudgets()),
                word(after.buying().tax().inBudgets()));
        compare("prices after validity", validity(before), validity(after));
    }

    private void choices(Choices before, Choices after) {
        compare("pin of", before.pins().stream().collect(Collectors.toMap(pin -> pin.machine().value(), Terms::pin)),
                after.pins().stream().collect(Collectors.toMap(pin -> pin.machine().value(), Terms::pin)));
        Set<String> then = tastes(before);
        Set<String> now = tastes(after);
        then.stream().filter(taste -> !now.contains(taste))
                .forEach(taste -> terms.add(new Term("decided: " + taste, "yes", "no")));
        now.stream().filter(taste -> !then.contains(taste))
                .forEach(taste -> terms.add(new Term("decided: " + taste, "no", "yes")));
        compare("uniform rooms", before.uniform(), after.uniform());
        compare("most machines opened", text(before.mostOpened()), text(after.mostOpened()));
    }

    private static Set<String> tastes(Choices choices) {
        return choices.tastes().stream().map(Taste::toString).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Without the place it was read at and the machine, which stands before it. */
    private static String pin(Pin pin) {
        return pin.toString().substring(pin.machine().value().length() + 2);
    }

    private static String target(Target target) {
        return target.capacity() + (target.sameChannels() ? ", all channels together" : "")
                + (target.ecc() ? ", ECC" : "") + target.rate().map(rate -> ", at least " + rate).orElse("")
                + ", weight " + target.weight();
    }

    private static String spares(Policy policy) {
        return policy.sparePercent() + " %" + (policy.atLeastOneSpare() ? ", at least one" : "");
    }

    private static String validity(Policy policy) {
        return policy.buying().keepPrices() ? "keep" : "leave out";
    }

    private static String word(boolean is) {
        return is ? "yes" : "no";
    }

    static String text(Optional<?> value) {
        return value.map(Object::toString).orElse(NONE);
    }

    static String text(OptionalInt value) {
        return value.isPresent() ? String.valueOf(value.getAsInt()) : NONE;
    }

    private static Map<String, String> texts(Map<String, ?> values) {
        Map<String, String> texts = new LinkedHashMap<>();
        values.forEach((key, value) -> texts.put(key, value.toString()));
        return texts;
    }

    void compare(String what, Object before, Object after) {
        if (!before.equals(after)) {
            terms.add(new Term(what, before.toString(), after.toString()));
        }
    }

    private void compare(String what, Set<String> before, Set<String> after) {
        Function<Set<String>, String> text =
                set -> set.isEmpty() ? NONE : String.join(", ", new TreeSet<>(set));
        compare(what, (Object) text.apply(before), text.apply(after));
    }

    void compare(String what, Map<String, String> before, Map<String, String> after) {
        Set<String> names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        names.forEach(name -> compare(what + " " + name, (Object) before.getOrDefault(name, NONE),
                after.getOrDefault(name, NONE)));
    }
}
