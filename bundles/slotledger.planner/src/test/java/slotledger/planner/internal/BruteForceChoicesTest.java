package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.plan.Plan;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Taste;
import slotledger.model.trade.Taste.About;
import slotledger.model.trade.Taste.Attitude;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;

class BruteForceChoicesTest {

    @Test
    void smallFleetsWithDecisionsGetTheBestPlanOfAll() throws PlannerException {
        int uniform = 0;
        int refused = 0;
        int limited = 0;
        for (int seed = 5001; seed < 5101; seed++) {
            PlanRequest plain = BruteForceTest.fleet(new Random(seed));
            PlanRequest request = decided(plain, new Random(seed));
            BruteForce.Best best = new BruteForce(request, new PlainRules()).solve();
            try {
                Plan plan = new Planning(new PlainRules(), new ScipSolver()).plan(request, Progress.NONE);
                long moves = plan.machines().stream().mapToLong(machine -> machine.moves().size()).sum();
                assertEquals(best, new BruteForce.Best(
                        plan.optimality().weightOnTarget(), plan.spending().total().minor(), moves), "fleet " + seed);
                uniform += plan.choices().uniform().isEmpty() || plan.work().isEmpty() ? 0 : 1;
                limited += plan.choices().mostOpened().orElse(-1) == plan.work().size() ? 1 : 0;
            } catch (PlannerException refusal) {
                assertTrue(best.weight() < 0, "fleet " + seed + ": " + refusal.getMessage());
                assertTrue(refusal.getMessage().contains("pin"), refusal.getMessage());
                refused++;
            }
        }
        System.out.printf("%d with work in a uniform room, %d with as many opened as may be, %d refused%n",
                uniform, limited, refused);
        assertTrue(uniform > 15 && limited > 5 && refused > 5);
    }

    static PlanRequest decided(PlanRequest plain, Random random) {
        List<Pin> pins = new ArrayList<>();
        List<Taste> tastes = new ArrayList<>();
        List<ModuleKind> kinds = plain.market().offers().stream().map(offer -> (ModuleKind) offer.piece()).toList();
        if (random.nextInt(3) == 0) {
            Piece piece = kinds.get(random.nextInt(kinds.size()));
            SlotContent content = random.nextInt(3) == 0 ? SlotContent.EMPTY : SlotContent.of(piece);
            pins.add(new Pin(new AssetTag("M" + random.nextInt(3)), Map.of("B1", content), Place.NOWHERE));
        }
        if (random.nextInt(3) == 0) {
            tastes.add(new Taste(Attitude.FORBID, About.SUPPLIER, "S" + random.nextInt(2), List.of(), 0,
                    Place.NOWHERE));
        }
        if (random.nextInt(3) == 0) {
            tastes.add(new Taste(Attitude.FORBID, About.KIND, "some", List.of(kinds.get(0)), 0, Place.NOWHERE));
        }
        Set<String> rooms = random.nextInt(3) > 0 ? Set.of("Room M") : Set.of();
        OptionalInt most = random.nextInt(3) == 0 ? OptionalInt.of(random.nextInt(4)) : OptionalInt.empty();
        return new PlanRequest(plain.title(), plain.fleet(), plain.market(), plain.shelf(), plain.policy(),
                plain.date(), new Choices(pins, tastes, rooms, most), plain.before());
    }
}
