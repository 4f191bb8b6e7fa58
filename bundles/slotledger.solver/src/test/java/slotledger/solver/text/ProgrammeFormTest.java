package slotledger.solver.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

class ProgrammeFormTest {

    private static IntegerProgramme programme() {
        IntegerProgramme programme = new IntegerProgramme();
        int packs = programme.variable("packs of QF/D4U8 from 10", 0, 7);
        int order = programme.choice("order: Müller & Söhne", 3);
        programme.variable("e1 left over", -2, -2);
        programme.atMost("budget <= all", new Linear().add(packs, 12_345_678_901L).add(order, -7), 99);
        programme.atLeast("need", new Linear().add(packs, 2), 3);
        programme.equal("", new Linear(), 0);
        return programme;
    }

    private static final Linear GOAL = new Linear().add(0, 5).add(1, -1);

    @Test
    void anLpFileIsWrittenWithSafeNamesAndNumbersInFull() {
        assertEquals("""
                \\ Goal: least money?
                Minimize
                 goal: + 5 x0_packs_of_QF_D4U8_from_10 - 1 x1_order_M_ller_S_hne
                Subject To
                 hr0_budget_all: + 12345678901 x0_packs_of_QF_D4U8_from_10 - 7 x1_order_M_ller_S_hne <= 99
                 lr1_need: + 2 x0_packs_of_QF_D4U8_from_10 >= 3
                 r2_: 0 x0_packs_of_QF_D4U8_from_10 = 0
                Bounds
                 0 <= x0_packs_of_QF_D4U8_from_10 <= 7
                 0 <= x1_order_M_ller_S_hne <= 1
                 -2 <= x2_e1_left_over <= -2
                General
                 x0_packs_of_QF_D4U8_from_10
                 x1_order_M_ller_S_hne
                 x2_e1_left_over
                End
                """, ProgrammeForm.LP.text(programme(), GOAL, "Goal: least money€"));
    }

    @Test
    void anMpsFileSaysBothLimitsOfEveryVariable() {
        assertEquals("""
                * Goal
                NAME slotledger
                ROWS
                 N goal
                 L hr0_budget_all
                 G lr1_need
                 E r2_
                COLUMNS
                 MARK0 'MARKER' 'INTORG'
                 x0_packs_of_QF_D4U8_from_10 goal 5
                 x0_packs_of_QF_D4U8_from_10 hr0_budget_all 12345678901
                 x0_packs_of_QF_D4U8_from_10 lr1_need 2
                 x1_order_M_ller_S_hne goal -1
                 x1_order_M_ller_S_hne hr0_budget_all -7
                 x2_e1_left_over goal 0
                 MARK1 'MARKER' 'INTEND'
                RHS
                 RHS hr0_budget_all 99
                 RHS lr1_need 3
                BOUNDS
                 LO BOUND x0_packs_of_QF_D4U8_from_10 0
                 UP BOUND x0_packs_of_QF_D4U8_from_10 7
                 LO BOUND x1_order_M_ller_S_hne 0
                 UP BOUND x1_order_M_ller_S_hne 1
                 FX BOUND x2_e1_left_over -2
                ENDATA
                """, ProgrammeForm.MPS.text(programme(), GOAL, "Goal"));
    }

    @Test
    void longNamesStayUniqueAndShort() {
        IntegerProgramme programme = new IntegerProgramme();
        String name = "machines of a class ".repeat(20);
        programme.variable(name, 0, 1);
        programme.variable(name, 0, 1);
        String text = ProgrammeForm.LP.text(programme, new Linear().add(0, 1).add(1, 1), "two");
        assertTrue(text.contains(" x0_") && text.contains(" x1_"), text);
        assertTrue(text.lines().allMatch(line -> line.length() <= 130), text);
    }

    @Test
    void aFormIsKnownByTheEndingOfAFileName() {
        assertEquals(Optional.of(ProgrammeForm.MPS), ProgrammeForm.of("Plan.MPS"));
        assertEquals(Optional.of(ProgrammeForm.LP), ProgrammeForm.of("plan.lp"));
        assertEquals(Optional.empty(), ProgrammeForm.of("plan.xlsx"));
    }

    @Test
    void aProgrammeWithoutVariablesIsRefused() {
        assertThrows(IllegalArgumentException.class,
                () -> ProgrammeForm.LP.text(new IntegerProgramme(), new Linear(), "nothing"));
    }
}
