package slotledger.model.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.board.BoardId;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.Whereabouts;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;

class PolicyTest {

    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));

    @Test
    void aRoleIsFoundWhateverItsCaseAndBlanks() {
        Policy policy = policy(List.of(Target.of("Lab PC", Capacity.ofGiB(16))), Policy.LeaveAlone.NONE);
        assertEquals(Capacity.ofGiB(16), policy.target(" lab pc ").orElseThrow().capacity());
        assertEquals(Optional.empty(), policy.target("Office"));
    }

    @Test
    void aTargetForAnyRoleServesWhereNoOtherDoes() {
        Policy policy = policy(
                List.of(Target.of("*", Capacity.ofGiB(8)), Target.of("lab", Capacity.ofGiB(16))),
                Policy.LeaveAlone.NONE);
        assertEquals(Capacity.ofGiB(8), policy.target("office").orElseThrow().capacity());
        assertEquals(Capacity.ofGiB(16), policy.target("lab").orElseThrow().capacity());
    }

    @Test
    void twoTargetsForOneRoleAreRefused() {
        List<Target> targets = List.of(Target.of("lab", Capacity.ofGiB(8)), Target.of("LAB", Capacity.ofGiB(16)));
        assertThrows(IllegalArgumentException.class, () -> policy(targets, Policy.LeaveAlone.NONE));
    }

    @Test
    void machinesAreLeftAloneByTagRoomOrRole() {
        Policy policy = policy(List.of(), new Policy.LeaveAlone(Set.of("a-1"), Set.of("North / R2"), Set.of("exam")));
        assertTrue(policy.leaveAlone().covers(machine("A-1", "R9", "lab")));
        assertTrue(policy.leaveAlone().covers(machine("A-2", "R2", "lab")));
        assertTrue(policy.leaveAlone().covers(machine("A-3", "R9", "Exam")));
        assertFalse(policy.leaveAlone().covers(machine("A-4", "R9", "lab")));
    }

    private static Machine machine(String tag, String room, String role) {
        return new Machine(new AssetTag(tag), "", new Whereabouts("North", room), "", role, new BoardId("b"), 1,
                Optional.empty(), Optional.empty(), Redundancy.NONE, new Population(Map.of()), Place.NOWHERE);
    }

    private static Policy policy(List<Target> targets, Policy.LeaveAlone leaveAlone) {
        return new Policy(NOTHING.currency(), targets, Optional.empty(), Map.of(), NOTHING, NOTHING, 0, false, true,
                false, leaveAlone);
    }
}
