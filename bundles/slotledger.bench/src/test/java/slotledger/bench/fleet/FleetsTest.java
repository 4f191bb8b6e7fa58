package slotledger.bench.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.verdict.Weight;
import slotledger.planner.PlanRequest;
import slotledger.planner.Targets;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.standard.StandardRules;

class FleetsTest {

    private static final Set<Weight> ALLOWED = EnumSet.of(Weight.PASSES, Weight.CAUTION, Weight.LOWERS);

    private final MemoryRules rules = StandardRules.create();

    @ParameterizedTest
    @EnumSource(value = FleetCase.class, names = "ALL_DIFFERENT", mode = EnumSource.Mode.EXCLUDE)
    void theRulesAllowEveryMachineAsItIs(FleetCase of) {
        PlanRequest request = Fleets.request(of, 800, 1);
        assertEquals(800, request.fleet().machines().size());
        Set<List<Object>> asked = new HashSet<>();
        for (Machine machine : request.fleet().machines()) {
            if (asked.add(List.of(machine.board(), machine.population()))) {
                Weight weight = rules.weigh(Setup.of(request.fleet(), machine));
                assertTrue(ALLOWED.contains(weight), () -> machine + ": " + weight);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(value = FleetCase.class, names = "ALL_DIFFERENT", mode = EnumSource.Mode.EXCLUDE)
    void aPartOfTheMachinesIsBelowItsTarget(FleetCase of) {
        PlanRequest request = Fleets.request(of, 800, 2);
        long below = request.fleet().machines().stream().filter(machine -> {
            Setup setup = Setup.of(request.fleet(), machine);
            return !Targets.meets(request.policy().target(machine.role()).orElseThrow(), setup, rules.operate(setup));
        }).count();
        assertTrue(below > 200 && below < 790, below + " of 800 below their target");
    }

    @ParameterizedTest
    @EnumSource(value = FleetCase.class, names = {"OFFICE", "TIGHT", "SERVERS"})
    void theSameNumberGivesTheSameRequest(FleetCase of) {
        assertEquals(Fleets.request(of, 300, 7), Fleets.request(of, 300, 7));
        assertNotEquals(Fleets.request(of, 300, 7), Fleets.request(of, 300, 8));
    }

    @ParameterizedTest
    @EnumSource(value = FleetCase.class, names = {"OFFICE", "PULLED", "SERVERS"})
    void varietyDoesNotHangOnTheNumberOfMachines(FleetCase of) {
        PlanRequest few = Fleets.request(of, 100, 3);
        PlanRequest many = Fleets.request(of, 5_000, 3);
        assertEquals(few.fleet().boards(), many.fleet().boards());
        assertTrue(populations(many).containsAll(populations(few)));
        assertEquals(few.market().offers().stream().map(offer -> offer.id() + offer.piece()).toList(),
                many.market().offers().stream().map(offer -> offer.id() + offer.piece()).toList());
    }

    @Test
    void machinesShareTheirPopulations() {
        Set<Population> different = Collections.newSetFromMap(new IdentityHashMap<>());
        Fleets.request(FleetCase.OFFICE, 20_000, 1).fleet().machines()
                .forEach(each -> different.add(each.population()));
        assertTrue(different.size() < 400, different.size() + " populations");
    }

    private static Set<Population> populations(PlanRequest request) {
        Set<Population> populations = new HashSet<>();
        request.fleet().machines().forEach(machine -> populations.add(machine.population()));
        return populations;
    }
}
