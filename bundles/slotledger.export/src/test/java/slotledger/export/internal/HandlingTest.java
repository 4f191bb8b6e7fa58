package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.internal.fixture.CellarPlan;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.JobSheets;
import slotledger.export.internal.job.Line;
import slotledger.export.internal.json.PlanJson;
import slotledger.export.internal.round.Bag;
import slotledger.export.internal.round.Round;
import slotledger.export.internal.round.Tasks;
import slotledger.model.plan.MachinePlan;

/** What a technician reads who handles RIMMs, continuity modules, SIMMs and CAMM2 modules. */
class HandlingTest {

    @TempDir
    private Path folder;

    private static JobSheet sheet(String tag) {
        return new JobSheets(CellarPlan.book()).all().stream()
                .filter(sheet -> sheet.machine().tag().value().equals(tag)).findFirst().orElseThrow();
    }

    private static boolean warns(String tag, String words) {
        return sheet(tag).cautions().stream().anyMatch(line -> line.contains(words));
    }

    @Test
    void continuityModulesAreTakenOutAndPutInLikeModules() {
        assertEquals(List.of(
                "Take the 184-pin continuity module out of slot RIMM3. Put it into the bag for machine RD-2 "
                        + "(slot RIMM3).",
                "Take the 184-pin continuity module out of slot RIMM4. Put it into a bag for the shelf; write this "
                        + "machine's tag on the bag.",
                "Put one 256 MB RDRAM-800 into slot RIMM3. It comes from the shelf, in this machine's bag.",
                "Put one 256 MB RDRAM-800 into slot RIMM4. It comes from the shelf, in this machine's bag.",
                "Check that all latches are closed and that no RIMM socket is empty, put back what you took off, "
                        + "close the machine."),
                sheet("RD-1").steps().stream().map(Line::toString).toList());
        assertEquals("Put one 184-pin continuity module into slot RIMM4. It is new: order from Dunmarsk, part CR.",
                sheet("RD-2").steps().get(3).toString());
    }

    @Test
    void rimmsAreHotAndTheirSocketsNeverEmpty() {
        assertTrue(warns("RD-1", "VERY hot"));
        assertTrue(warns("RD-2", "Every RIMM socket must hold a module or a continuity module before power-on."));
        assertFalse(warns("SI-1", "RIMM"));
    }

    @Test
    void simmsAreTiltedAndCammsAreScrewed() {
        assertTrue(warns("SI-1", "set the module in at an angle"));
        assertTrue(warns("SI-1", "Never force it"));
        assertFalse(warns("SI-1", "until the latches close"));
        assertTrue(warns("NB-1", "never touch the land grid"));
        assertTrue(warns("NB-1", "as the maker's manual says") || warns("NB-1", "as the maker's manual"));
        assertEquals("Check that all screws are tight, put back what you took off, close the machine.",
                sheet("NB-1").steps().get(1).toString());
        assertTrue(warns("NB-1", "The maker's manual, local rules"));
    }

    @Test
    void firmwareShowsNoFiller() {
        List<String> lines = sheet("RD-2").firmware();
        assertTrue(lines.get(1).startsWith("By slot: RIMM1: 256 MB, RIMM2: 256 MB, RIMM3: empty, RIMM4: empty."));
        assertEquals("It shows a slot with a 184-pin continuity module as empty: nothing on it can be read.",
                lines.get(2));
        assertTrue(lines.get(4).contains(
                "try one bank or set at a time with a 184-pin continuity module in every other slot"));
    }

    @Test
    void mirroredMemoryIsToldAsInstalledAndUsable() {
        assertEquals("Usable: 8 GB; memory is mirrored: the rest holds a copy", expected("MI-1").get(1));
        List<String> lines = sheet("MI-1").firmware();
        assertEquals("Memory in all: 16 GB (16384 MB), or what is usable of it, 8 GB (8192 MB).", lines.get(0));
        assertEquals("It shows a slot with an airflow blank as empty: nothing on it can be read.", lines.get(2));
        assertEquals("Usable: 64 MB; hardware may keep a small share", expected("SI-1").get(1));
    }

    @Test
    void anAccessTimeIsNotARateThatNobodyKnows() {
        assertEquals("No rate but an access time: 60 ns.", expected("SI-1").get(3));
        assertEquals("Rate: not known", expected("RD-1").get(3));
    }

    private static List<String> expected(String tag) {
        return sheet(tag).expected().stream().map(Line::toString).toList();
    }

    @Test
    void aFillerHasNoSerialNumber() {
        assertEquals(List.of(), sheet("RD-2").received());
        assertEquals(2, sheet("RD-1").received().size());
    }

    @Test
    void bagsAndRoundCountFillers() {
        List<Bag> bags = Bag.of(CellarPlan.book(), Round.of(CellarPlan.book().plan()));
        Bag bag = bags.stream().filter(each -> each.plan().machine().tag().value().equals("RD-2")).findFirst()
                .orElseThrow();
        assertEquals(List.of("1 x 184-pin continuity module from machine RD-1, slot RIMM3",
                        "1 x 184-pin continuity module from order from Dunmarsk, part CR"),
                bag.items().stream().map(item -> item.count() + " x " + item.content() + " from " + item.from())
                        .toList());
        MachinePlan plan = CellarPlan.book().plan().machines().get(0);
        assertEquals("take out 2 x 184-pin continuity module, put in 2 x 256 MB RDRAM-800", Tasks.of(plan));
    }

    @Test
    void anOrderOfFillersIsWrittenAndReadAgain() throws Exception {
        Path file = folder.resolve("plan.json");
        new PlanJson().write(CellarPlan.book().plan(), file);
        assertEquals(CellarPlan.book().plan(), new PlanJson().read(file));
    }
}
