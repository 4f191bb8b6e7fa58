package slotledger.rules.internal;

import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import slotledger.model.board.Takes;
import slotledger.model.module.Piece;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.LookAlike;
import slotledger.rules.MemoryRules;
import slotledger.rules.RulePage;
import slotledger.rules.Setup;
import slotledger.rules.internal.alike.LookAlikes;
import slotledger.rules.internal.family.FamilyKnown;
import slotledger.rules.internal.operation.Running;
import slotledger.rules.internal.operation.WorkedOut;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Situations;

/**
 * Asks every rule that speaks of the board's family, by id. Where a board allows several ways of filling, the
 * population is judged by the way that suits it best.
 *
 * <p>The reference is static: a rule that comes or goes makes a new component, so that one plan never sees the rules
 * change. The smallest count keeps the service away until all rules of this bundle are there.
 */
@Component(property = "rules.cardinality.minimum:Integer=" + StandardRuleList.COUNT)
public final class DefaultMemoryRules implements MemoryRules {

    private final Situations situations = new Situations();
    private final Lineup lineup;

    /** The place of the rule that last said no: the next population is mostly like the last one. A race is harmless. */
    private int lastNo;

    /** Fails where two rules have the same id. */
    @Activate
    public DefaultMemoryRules(
            @Reference(name = "rules", policyOption = ReferencePolicyOption.GREEDY) List<MemoryRule> rules) {
        lineup = new Lineup(rules);
    }

    @Override
    public Weight weigh(Setup setup) {
        Weight best = Weight.BLOCKS;
        for (Situation situation : situations.of(setup)) {
            Weight weight = worst(situation);
            best = weight.compareTo(best) < 0 ? weight : best;
        }
        return best;
    }

    @Override
    public Operation operate(Setup setup) {
        return Running.of(best(situations.of(setup)));
    }

    @Override
    public Arithmetic workOut(Setup setup) {
        return WorkedOut.of(best(situations.of(setup)));
    }

    @Override
    public Verdict judge(Setup setup) {
        List<Situation> ways = situations.of(setup);
        Situation best = best(ways);
        List<Reason> reasons = reasons(best);
        if (ways.size() > 1 && reasons.stream().anyMatch(reason -> reason.weight() == Weight.BLOCKS)) {
            reasons = withOtherWays(reasons, ways, best);
        }
        Weight weight = reasons.stream().map(Reason::weight).reduce(Weight.PASSES, Weight::worse);
        return new Verdict(weight, Running.of(best), reasons);
    }

    @Override
    public int objections(Setup setup) {
        return ask(best(situations.of(setup))).objections;
    }

    @Override
    public List<RulePage> pages() {
        return lineup.pages();
    }

    @Override
    public List<LookAlike> lookAlikes() {
        return LookAlikes.all();
    }

    @Override
    public List<LookAlike> lookAlikes(Piece one, Piece other) {
        return LookAlikes.between(one, other);
    }

    @Override
    public List<LookAlike> lookAlikes(Piece one) {
        return LookAlikes.of(one);
    }

    @Override
    public List<LookAlike> wrongFor(Piece piece, Takes takes) {
        return LookAlikes.wrongFor(piece, takes);
    }

    private Situation best(List<Situation> ways) {
        if (ways.size() == 1) {
            return ways.get(0);
        }
        Situation best = null;
        Tally lightest = null;
        for (Situation situation : ways) {
            Tally tally = ask(situation);
            if (lightest == null || tally.compareTo(lightest) < 0) {
                best = situation;
                lightest = tally;
            }
        }
        return best;
    }

    private Tally ask(Situation situation) {
        Tally tally = new Tally();
        if (FamilyKnown.judge(situation, lineup.lawful(), tally)) {
            for (MemoryRule rule : lineup.of(situation.generations())) {
                rule.judge(situation, tally);
            }
        }
        return tally;
    }

    /** Stops at the first no. */
    private Weight worst(Situation situation) {
        Tally tally = new Tally();
        if (!FamilyKnown.judge(situation, lineup.lawful(), tally)) {
            return tally.worst;
        }
        MemoryRule[] asked = lineup.of(situation.generations());
        int first = lastNo < asked.length ? lastNo : 0;
        for (int i = 0; i < asked.length; i++) {
            int place = i == 0 ? first : i <= first ? i - 1 : i;
            asked[place].judge(situation, tally);
            if (tally.worst == Weight.BLOCKS) {
                lastNo = place;
                return tally.worst;
            }
        }
        return tally.worst;
    }

    private List<Reason> reasons(Situation situation) {
        Reasons collector = new Reasons(situation);
        if (FamilyKnown.judge(situation, lineup.lawful(), collector.of(FamilyKnown.PAGE))) {
            for (MemoryRule rule : lineup.of(situation.generations())) {
                rule.judge(situation, collector.of(rule.page()));
            }
        }
        return collector.worstFirst();
    }

    /** The objections of the other ways hang below the worst reason, so that nobody takes one way for all there is. */
    private List<Reason> withOtherWays(List<Reason> reasons, List<Situation> ways, Situation best) {
        List<Reason> others = new ArrayList<>(reasons.get(0).because());
        for (Situation way : ways) {
            if (way != best) {
                reasons(way).stream().filter(reason -> reason.weight() == Weight.BLOCKS).forEach(others::add);
            }
        }
        List<Reason> joined = new ArrayList<>(reasons);
        Reason worst = joined.get(0);
        String sentence = worst.sentence() + " The document allows " + ways.size()
                + " ways of filling; the modules follow none of them, and this one is the nearest.";
        joined.set(0, new Reason(worst.rule(), worst.weight(), sentence, worst.slots(), worst.source(), worst.remedy(),
                others, worst.missing()));
        return joined;
    }
}
