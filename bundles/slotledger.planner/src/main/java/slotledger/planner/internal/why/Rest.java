package slotledger.planner.internal.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;

/**
 * All machines of a plan with the populations they get, as one machine for each cost centre that needs and gives all
 * their modules. A programme for one more machine beside it is small, however large the fleet is.
 */
public final class Rest {

    private record Needs(SortedMap<Integer, Integer> used, SortedMap<Integer, Integer> freed) {

        private Needs() {
            this(new TreeMap<>(), new TreeMap<>());
        }

        private void add(Candidate candidate, int machines) {
            candidate.used().forEach((kind, count) -> used.merge(kind, count * machines, Integer::sum));
            candidate.freed().forEach((kind, count) -> freed.merge(kind, count * machines, Integer::sum));
        }
    }

    private final Map<String, Needs> needs = new TreeMap<>();
    private final Map<String, Options> patterns = new TreeMap<>();

    /** Everything. */
    public Rest(Choice choice) {
        this(choice, group -> true);
    }

    /** The classes with these numbers. */
    Rest(Choice choice, IntPredicate wanted) {
        for (int group = 0; group < choice.options().size(); group++) {
            if (!wanted.test(group)) {
                continue;
            }
            Options options = choice.options().get(group);
            patterns.putIfAbsent(options.group().costCentre(), options);
            for (int i = 0; i < options.candidates().size(); i++) {
                if (choice.count(group, i) > 0) {
                    needs(options).add(options.candidates().get(i), choice.count(group, i));
                }
            }
        }
    }

    private Needs needs(Options options) {
        return needs.computeIfAbsent(options.group().costCentre(), unused -> new Needs());
    }

    /** Everything but one machine of the class, which gets this candidate in the plan. */
    public Rest without(Options options, Candidate planned) {
        needs(options).add(planned, -1);
        return this;
    }

    /** The rest, and beside it one machine of the class that must get one of the candidates. */
    public List<Options> beside(Options options, List<Candidate> candidates) {
        return beside(List.of(options.of(options.group().machines().subList(0, 1), candidates)));
    }

    /** The rest, and beside it these classes. */
    List<Options> beside(List<Options> classes) {
        List<Options> all = new ArrayList<>();
        needs.forEach((centre, each) -> all.add(asOne(patterns.get(centre), each)));
        all.addAll(classes);
        return all;
    }

    private static Options asOne(Options pattern, Needs needs) {
        Candidate sum = pattern.unchanged().asRest(needs.used(), needs.freed());
        return new Options(pattern.group().asRest(), pattern.board(), List.of(sum), List.copyOf(needs.used().keySet()));
    }

    /** The candidates that open the machine and bring it on target. */
    public static List<Candidate> onTarget(Options options) {
        return options.candidates().stream().filter(each -> each.opens() && each.onTarget()).toList();
    }
}
