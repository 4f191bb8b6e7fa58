package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.source.Place;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceStep;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;

class PlanTextTest {

    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));
    private static final ModuleKind RIMM =
            ModuleKind.of(Generation.RDRAM, Form.RIMM_184, Capacity.ofMiB(256));

    @Test
    void whatIsBoughtWithoutGivingMemoryIsCountedByItself() {
        Map<String, Object> mixed = facts(bought(RIMM, 4), bought(Filler.CONTINUITY_184, 2));
        assertEquals(4, mixed.get("modulesBought"));
        assertEquals(2, mixed.get("fillersBought"));
        assertEquals("4 modules and 2 continuity modules or blanks",
                text(bought(RIMM, 4), bought(Filler.CONTINUITY_184, 2)).pieces());
        assertEquals("0 modules and 1 continuity module or blank", text(bought(Filler.AIR_BLANK, 1)).pieces());
        assertEquals("1 module", text(bought(RIMM, 1)).pieces());
    }

    private static Map<String, Object> facts(Purchase... purchases) {
        Answer.Builder answer = new Answer.Builder();
        text(purchases).report(answer, List.of());
        return answer.end(ExitCode.OK).facts();
    }

    private static PlanText text(Purchase... purchases) {
        Policy policy = new Policy(NOTHING.currency(), List.of(), Optional.empty(), Map.of(), NOTHING, NOTHING, 0,
                false, true, false, Policy.LeaveAlone.NONE);
        return new PlanText(new Plan("school", LocalDate.of(2026, 11, 20), policy, List.of(), List.of(purchases),
                List.of(), new Spending(NOTHING, Map.of(), NOTHING, Map.of()),
                new Optimality(0, 0, NOTHING, NOTHING, "none", List.of(), false), List.of()));
    }

    private static Purchase bought(Piece piece, int count) {
        Offer offer = new Offer("o", "s", "p", piece, 1, List.of(new PriceStep(1, NOTHING)), OptionalInt.empty(),
                OptionalInt.empty(), Optional.empty(), Optional.empty(), Place.NOWHERE);
        return new Purchase(offer, count, List.of(), count, 0);
    }
}
