package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** The whole job through the door that command line and workbench use. */
class FullRunTest {

    @TempDir
    Path top;

    @Test
    void theDemoFleetIsSurveyedPlannedExportedAndReadAgain() throws Exception {
        FleetDesk desk = Demo.desk();
        Survey survey = desk.survey(Demo.open(Demo.folder()), Progress.NONE);
        assertFalse(survey.fleet().machines().isEmpty());
        Plan plan = desk.plan(survey, Progress.NONE);
        List<Path> files = desk.export(survey, plan, top.resolve("out"), false, Progress.NONE);
        for (Path file : files) {
            assertTrue(Files.size(file) > 0, file.toString());
        }
        Plan again = desk.reopen(top.resolve("out/plan.json"), survey);
        assertEquals(plan, again);
    }
}
