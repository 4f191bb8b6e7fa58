package slotledger.rules.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.rules.RulePage;
import slotledger.rules.internal.family.FamilyKnown;
import slotledger.rules.spi.MemoryRule;

/**
 * Which rules are asked for which generations: those that name one of them, and the general ones, which name none.
 * A generation that no rule names has no law, so that the general rules alone don't make a verdict of it.
 */
final class Lineup {

    private final MemoryRule[] rules;
    private final Set<Generation> lawful = EnumSet.noneOf(Generation.class);
    private final MemoryRule[][] byGeneration = new MemoryRule[Generation.values().length][];

    /** Fails where two rules have the same id. */
    Lineup(List<MemoryRule> rules) {
        this.rules = rules.stream().sorted(Comparator.comparing(MemoryRule::id)).toArray(MemoryRule[]::new);
        for (int i = 0; i < this.rules.length; i++) {
            String id = this.rules[i].id();
            if (id.equals(FamilyKnown.PAGE.id()) || i > 0 && id.equals(this.rules[i - 1].id())) {
                throw new IllegalArgumentException(
                        "The rule id %s must not occur twice. Maybe a dropped-in bundle takes the id of another rule."
                                .formatted(id));
            }
            lawful.addAll(this.rules[i].families());
        }
        for (Generation generation : Generation.values()) {
            byGeneration[generation.ordinal()] = choose(EnumSet.of(generation));
        }
    }

    /** The generations some rule names. */
    Set<Generation> lawful() {
        return lawful;
    }

    /** The rules asked for a board of these generations, by id. */
    MemoryRule[] of(Set<Generation> generations) {
        return generations.size() == 1
                ? byGeneration[generations.iterator().next().ordinal()]
                : choose(generations);
    }

    /** What a person can read, by id. */
    List<RulePage> pages() {
        List<RulePage> pages = new ArrayList<>(Arrays.stream(rules).map(MemoryRule::page).toList());
        pages.add(FamilyKnown.PAGE);
        pages.sort(Comparator.comparing(RulePage::id));
        return pages;
    }

    private MemoryRule[] choose(Set<Generation> generations) {
        return Arrays.stream(rules).filter(rule -> speaksOf(rule, generations)).toArray(MemoryRule[]::new);
    }

    private static boolean speaksOf(MemoryRule rule, Set<Generation> generations) {
        return rule.families().isEmpty() || rule.families().stream().anyMatch(generations::contains);
    }
}
