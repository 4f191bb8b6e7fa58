package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.ExportException;
import slotledger.export.internal.fixture.InsightPlan;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.json.PlanJson;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;

class PlanFilesTest {

    @TempDir
    private Path folder;

    private final DefaultPlanFiles files = new DefaultPlanFiles();

    private Path written(Plan plan) throws ExportException {
        Path file = folder.resolve("plan.json");
        files.writePlan(plan, file);
        return file;
    }

    @Test
    void aPlanReadBackEqualsThePlanWritten() throws ExportException {
        Plan plan = SchoolPlan.book().plan();
        assertEquals(plan, files.readPlan(written(plan)));
        Plan empty = SchoolPlan.emptyBook().plan();
        assertEquals(empty, files.readPlan(written(empty)));
    }

    @Test
    void insightsGoRoundAndObeyTheSchema() throws Exception {
        Plan plan = InsightPlan.of(SchoolPlan.book().plan());
        Path file = written(plan);
        assertEquals(plan, files.readPlan(file));
        assertEquals(Set.of(), problems(Files.readString(file)));
    }

    @Test
    void slotsKeepTheOrderOfTheBoard() throws ExportException {
        Plan plan = SchoolPlan.book().plan();
        List<MachinePlan> read = files.readPlan(written(plan)).machines();
        for (int i = 0; i < read.size(); i++) {
            assertEquals(List.copyOf(plan.machines().get(i).after().contents().keySet()),
                    List.copyOf(read.get(i).after().contents().keySet()));
        }
    }

    @Test
    void thePlanFileObeysItsPublishedSchema() throws Exception {
        assertEquals(Set.of(), problems(Files.readString(written(SchoolPlan.book().plan()))));
    }

    @Test
    void whatPeopleDecidedIsKeptInThePlanFile() throws Exception {
        Plan plan = SchoolPlan.decided();
        Path file = written(plan);
        assertEquals(plan, files.readPlan(file));
        assertEquals(Set.of(), problems(Files.readString(file)));
    }

    @Test
    void theSchemaRefusesWhatThePlanFileNeverHolds() throws Exception {
        String good = Files.readString(written(SchoolPlan.book().plan()));
        assertTrue(!problems(good.replace("\"outcome\" : \"donor\"", "\"outcome\" : \"giver\"")).isEmpty());
        assertTrue(!problems(good.replaceFirst("\"workOrder\"", "\"workorder\"")).isEmpty());
        assertTrue(!problems(good.replaceFirst("\"kibibytes\" : \\d+", "\"kibibytes\" : 1.5")).isEmpty());
    }

    private static Set<ValidationMessage> problems(String json) throws Exception {
        try (InputStream in = PlanJson.class.getResourceAsStream(PlanJson.SCHEMA)) {
            JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in);
            return schema.validate(new ObjectMapper().readTree(json));
        }
    }

    @Test
    void writingTwiceGivesTheSameBytes() throws Exception {
        byte[] first = Files.readAllBytes(written(SchoolPlan.book().plan()));
        assertArrayEquals(first, Files.readAllBytes(written(SchoolPlan.book().plan())));
    }

    @Test
    void aFileCutShortIsRefusedWithItsName() throws Exception {
        Path file = written(SchoolPlan.book().plan());
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.length() / 2));
        assertRefused(file, "plan.json", "cut short");
    }

    @Test
    void somethingElseIsRefused() throws Exception {
        assertRefused(Files.writeString(folder.resolve("a.json"), "[1, 2]"), "is not a plan");
        assertRefused(Files.writeString(folder.resolve("b.json"), ""), "is not a plan");
        assertRefused(Files.writeString(folder.resolve("c.json"), "{\"format\": \"slotledger-plan\", \"version\": 1}"),
                "version 1");
        assertRefused(folder.resolve("missing.json"), "can't be read");
    }

    @Test
    void aChangedMemberIsRefusedWithItsPath() throws Exception {
        String text = Files.readString(written(SchoolPlan.book().plan()));
        assertRefused(changed(text.replaceFirst("\"minor\" : \\d+", "\"minor\" : \"much\"")),
                "plan.policy", "whole number");
        assertRefused(changed(text.replaceFirst("\"title\"", "\"titel\"")), "plan.title", "missing");
        assertRefused(changed(text.replaceFirst("\"donor\"", "\"giver\"")), "outcome", "giver");
        assertRefused(changed(text.replaceFirst("2026-08-03", "3 August")), "plan.date");
        assertRefused(changed(text.replaceFirst("(\"version\" : \\d+,)", "$1 $1")),
                "not a plan");
    }

    private Path changed(String text) throws Exception {
        return Files.writeString(folder.resolve("changed.json"), text);
    }

    private void assertRefused(Path file, String... parts) {
        String message = assertThrows(ExportException.class, () -> files.readPlan(file)).getMessage();
        for (String part : parts) {
            assertTrue(message.contains(part), message);
        }
    }

    @Test
    void nothingIsLeftBehindWhereAFileCantBeWritten() throws Exception {
        Path taken = Files.createDirectories(folder.resolve("out").resolve("plan.json").resolve("x")).getParent();
        assertThrows(ExportException.class, () -> files.writePlan(SchoolPlan.book().plan(), taken));
        try (Stream<Path> left = Files.list(folder.resolve("out"))) {
            assertEquals(List.of(taken), left.toList());
        }
    }
}
