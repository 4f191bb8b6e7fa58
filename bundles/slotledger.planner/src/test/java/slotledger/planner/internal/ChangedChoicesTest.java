package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.difference.Difference;
import slotledger.model.difference.DifferenceText;
import slotledger.model.difference.LineChange;
import slotledger.model.difference.MachineChange;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Plan;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Taste;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlannerException;
import slotledger.rules.standard.StandardRules;

class ChangedChoicesTest {

    private final Fixtures fixtures = new Fixtures();
    private Plan before;

    @BeforeEach
    void planThreeMachines() throws PlannerException {
        Board board = fixtures.board("b", 2, 16, 32, 1);
        for (String tag : List.of("M1", "M2", "M3")) {
            fixtures.machine(tag, board, "office", Fixtures.kind(4), null);
        }
        fixtures.target("office", 12, 1);
        fixtures.offer("Alder", Fixtures.kind(8), 1, -1, 1, 2000);
        fixtures.offer("Birch", Fixtures.kind(8), 1, 2, 1, 2500);
        before = plan();
    }

    private Plan plan() throws PlannerException {
        return new Planning(StandardRules.create(), new ScipSolver()).plan(fixtures.request(), Progress.NONE);
    }

    private Difference replanned() throws PlannerException {
        fixtures.before = Optional.of(before);
        return Difference.of(before, plan());
    }

    private static String why(Difference difference, String tag) {
        return difference.machines().stream().filter(change -> change.machine().tag().value().equals(tag))
                .map(MachineChange::why).findFirst().orElse("unchanged");
    }

    @Test
    void theSamePlanIsNoDifference() throws PlannerException {
        Difference difference = replanned();
        assertTrue(difference.isNone());
        assertEquals(List.of(), difference.terms());
        assertEquals(List.of(), difference.machines());
    }

    @Test
    void aSupplierForbiddenSinceIsNamedWithItsLineAndWithTheMachineThatGoesWithout() throws PlannerException {
        fixtures.choices = new Choices(List.of(), List.of(new Taste(Taste.Attitude.FORBID, Taste.About.SUPPLIER,
                "Alder", List.of(), 0, Place.NOWHERE)), Set.of(), OptionalInt.empty());
        Difference difference = replanned();
        assertEquals("[Term[what=decided: no supplier Alder, before=no, after=yes]]", difference.terms().toString());
        assertEquals(List.of("dropped: 3 packs, EUR 60.00 less", "added: 2 packs, EUR 50.00 more"),
                difference.lines().stream().map(DifferenceText::line).toList());
        assertEquals(LineChange.Kind.DROPPED, difference.lines().get(0).kind());
        assertEquals(1, difference.machines().size());
        MachineChange without = difference.machines().get(0);
        assertEquals("reaches its target, with 1 x 4 GB DDR4-2666 and 1 x 8 GB DDR4-2666",
                DifferenceText.before(without));
        assertEquals("not helped, with 1 x 4 GB DDR4-2666", DifferenceText.after(without));
        assertEquals(without.after().orElseThrow().obstacle().orElseThrow().message(), without.why());
        DifferenceText text = new DifferenceText(difference);
        assertEquals("EUR 10.00 less", text.money().get(0).words());
        assertEquals("1 fewer", text.counts().get(0).words());
    }

    @Test
    void aPinSetSinceIsTheReasonForItsMachine() throws PlannerException {
        fixtures.choices = new Choices(List.of(new Pin(new AssetTag("M2"), Map.of(), Place.NOWHERE)), List.of(),
                Set.of(), OptionalInt.empty());
        Difference difference = replanned();
        assertEquals("It is pinned now: M2: stays as it is.", why(difference, "M2"));
        assertEquals(1, difference.machines().size());
        assertEquals("pin of M2", difference.terms().get(0).what());
        assertEquals("other quantity: 2 packs instead of 3, EUR 20.00 less",
                DifferenceText.line(difference.lines().get(0)));
    }

    @Test
    void aMachineThatHoldsSomethingElseNowSaysBoth() throws PlannerException {
        Board board = fixtures.boards.values().iterator().next();
        fixtures.machines.remove(2);
        fixtures.machine("M3", board, "office", Fixtures.kind(8), Fixtures.kind(8));
        fixtures.machine("M4", board, "office", Fixtures.kind(16), null);
        Difference difference = replanned();
        assertEquals("The machine held 1 x 4 GB DDR4-2666 when the earlier plan was made, and holds"
                + " 2 x 8 GB DDR4-2666 now.", why(difference, "M3"));
        assertEquals("The machine was not in the earlier plan.", why(difference, "M4"));
        assertEquals("not planned", DifferenceText.before(difference.machines().get(1)));
    }

    @Test
    void aBudgetCutSinceStandsAmongTheTerms() throws PlannerException {
        fixtures.budget = Optional.of(Fixtures.eur(2000));
        Difference difference = replanned();
        assertEquals("[Term[what=budget, before=none, after=EUR 20.00]]", difference.terms().toString());
        assertEquals(2, difference.machines().size());
        assertFalse(difference.isNone());
    }

    @Test
    void amongEqualPlansTheEarlierOneIsKept() throws PlannerException {
        fixtures.budget = Optional.of(Fixtures.eur(2000));
        fixtures.choices = new Choices(List.of(new Pin(new AssetTag("M3"), Map.of("B1",
                SlotContent.of(Fixtures.kind(8))), Place.NOWHERE)), List.of(), Set.of(), OptionalInt.empty());
        before = plan();
        fixtures.choices = Choices.NONE;
        assertEquals(List.of(), replanned().machines(), "M3 is as good as M1 and M2, and was chosen before");
        fixtures.before = Optional.empty();
        assertFalse(Difference.of(before, plan()).machines().isEmpty(), "without it the first machine is chosen");
    }

    @Test
    void plansInTwoCurrenciesAreNotCompared() {
        Policy policy = before.policy();
        Policy other = new Policy(Currency.getInstance("USD"), policy.targets(), Optional.empty(), Map.of(),
                policy.perMachine(), policy.perModule(), 0, false, true, false, policy.leaveAlone());
        Plan foreign = new Plan("x", before.date(), other, List.of(), List.of(), List.of(), before.spending(),
                before.optimality(), List.of());
        assertThrows(IllegalArgumentException.class, () -> Difference.of(before, foreign));
    }
}
