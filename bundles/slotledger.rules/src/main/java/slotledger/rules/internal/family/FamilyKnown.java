package slotledger.rules.internal.family;

import java.util.EnumSet;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Families;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** There are rules for the family of the board. */
@Component(service = MemoryRule.class)
@RuleId("family")
public final class FamilyKnown extends Rule {

    public FamilyKnown() {
        super(new RulePage(
                "family",
                "A board is judged only where there are rules for its family of memory.",
                Source.of(Ground.PRACTICE),
                "See which family the board takes: its manual names it.",
                "Plan this machine by hand with the board's manual.",
                "A board of 1996 takes 72-pin SIMMs of the EDO family. There are no rules for this family, so no "
                        + "population of it is called allowed or forbidden."));
    }

    @Override
    public Set<Generation> families() {
        Set<Generation> others = EnumSet.allOf(Generation.class);
        others.removeAll(Families.DDR_ON);
        return others;
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        collector.report(Weight.UNKNOWN, () -> Statement.of("There are no rules for this family (%s).".formatted(
                String.join(", ", situation.generations().stream().map(Generation::text).toList()))));
    }
}
