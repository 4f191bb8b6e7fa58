package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.ProjectDesk;
import slotledger.app.Survey;
import slotledger.model.difference.ProjectDifference;
import slotledger.model.difference.Term;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.project.Fact;
import slotledger.model.task.Progress;

/** A project with a history, through the door that command line and workbench use. */
class StoredProjectTest {

    private static final Author ANNA = new Author("anna", "a test");
    /** Stands in the fourth row of the night college's list. */
    private static final AssetTag MACHINE = new AssetTag("N-1004");
    private static final String INVENTORY = "fleet-night-college.csv";

    @TempDir
    Path top;

    private final FleetDesk desk = Demo.desk();
    private final ProjectDesk projects = desk.projects();
    private Path project;

    @BeforeEach
    void makeAProjectOfTheDemoFleet() throws Exception {
        project = top.resolve("school");
        projects.create(project, Optional.of(Demo.folder()), ANNA);
    }

    @Test
    void aProjectGivesThePlanOfItsPlainFilesByteForByteAndKeepsIt() throws Exception {
        byte[] plain = plan(Demo.folder(), "plain");
        assertArrayEquals(plain, plan(project, "stored"));
        Survey survey = desk.survey(Demo.open(project), Progress.NONE);
        assertEquals(3, projects.keepPlan(survey, top.resolve("stored/plan.json"), ANNA).orElseThrow().number());
        projects.writePlan(project, 1, top.resolve("kept.json"), false);
        assertArrayEquals(plain, Files.readAllBytes(top.resolve("kept.json")));
    }

    @Test
    void aPackedProjectIsSurveyedAsItIsAndWhenUnpacked() throws Exception {
        Path packed = top.resolve("school.slotledger");
        projects.pack(project, packed, false);
        projects.unpack(packed, top.resolve("again"));
        Survey survey = desk.survey(desk.open(project), Progress.NONE);
        for (Path other : List.of(packed, top.resolve("again"))) {
            Survey again = desk.survey(desk.open(other), Progress.NONE);
            assertEquals(survey.fleet(), again.fleet());
            assertEquals(survey.market(), again.market());
            assertEquals(survey.findings(), again.findings());
        }
    }

    @Test
    void decisionsHoldForANewInventoryAndConflictsAreShown() throws Exception {
        projects.correct(survey(), MACHINE, Fact.ROLE, "Workshop", ANNA);
        projects.pin(survey(), MACHINE, Map.of(), ANNA);
        projects.mute(survey(), "odd-size", Optional.of(new AssetTag("U-1032")), ANNA);
        assertEquals("Workshop", machine(survey()).role());
        assertTrue(survey().choices().pin(MACHINE).isPresent());
        assertEquals(List.of(), conflicts(survey()));
        assertTrue(survey().findings().stream().anyMatch(finding -> finding.message().contains("Muted: anna")));

        projects.bringIn(project, List.of(newInventory()), ANNA);

        assertEquals("Workshop", machine(survey()).role());
        assertTrue(survey().choices().pin(MACHINE).isPresent());
        assertEquals(List.of("correction-conflict", "pin-conflict"), conflicts(survey()));

        projects.undo(project, OptionalLong.empty(), ANNA);
        assertEquals(List.of(), conflicts(survey()));
    }

    @Test
    void filesThatAreThereAlreadyAreNoEntry() throws Exception {
        assertFalse(projects.bringIn(project, List.of(Demo.folder()), ANNA).isPresent());
        assertEquals(2, projects.history(project).last().number());
    }

    @Test
    void ofTwoPeopleWhoCorrectTheSameMachineTheSecondIsToldAndOfOthersBothHold() throws Exception {
        Author ben = new Author("ben", "");
        Survey ofBen = survey();
        projects.correct(survey(), MACHINE, Fact.ROLE, "Workshop", ANNA);
        DeskException said = assertThrows(DeskException.class,
                () -> projects.correct(ofBen, MACHINE, Fact.ROOM, "9", ben));
        assertTrue(said.getMessage().contains("anna corrected the role of " + MACHINE), said.getMessage());
        projects.correct(ofBen, new AssetTag("H-1001"), Fact.ROOM, "9", ben);
        projects.correct(survey(), MACHINE, Fact.ROOM, "9", ben);
        assertEquals(5, projects.history(project).last().number());
    }

    @Test
    void whatChangedBetweenTwoEntriesIsTold() throws Exception {
        Path policy = Files.writeString(Files.createDirectory(top.resolve("p")).resolve("policy.yaml"),
                Files.readString(Demo.folder().resolve("policy.yaml")).replace("\nbudget: 7500", "\nbudget: 9000"));
        projects.bringIn(project, List.of(newInventory(), policy), ANNA);
        projects.correct(survey(), new AssetTag("H-1001"), Fact.ROOM, "9", ANNA);
        ProjectDifference difference = projects.compare(project, 2, OptionalLong.empty(), Progress.NONE);
        assertEquals(List.of(new Term("budget", "EUR 7500.00", "EUR 9000.00")), difference.policy());
        Set<String> facts = difference.fleet().stream().map(Term::what).collect(Collectors.toSet());
        assertTrue(facts.contains("role of " + MACHINE) && facts.contains("place of H-1001"), facts.toString());
        assertTrue(facts.stream().allMatch(fact -> fact.endsWith(" of " + MACHINE) || fact.endsWith("of H-1001")),
                facts.toString());
        assertEquals(1, difference.decisions().size());
        assertEquals(List.of(), difference.offers());
        assertTrue(projects.compare(project, 4, OptionalLong.of(4), Progress.NONE).isNone());
    }

    /** The whole fleet, with another role and another module in the fourth machine. */
    private Path newInventory() throws Exception {
        Path folder = Files.createDirectory(top.resolve("new"));
        for (String name : List.of("fleet.xlsx", "fleet-workshop.csv", INVENTORY)) {
            Files.copy(Demo.folder().resolve(name), folder.resolve(name));
        }
        String text = Files.readString(folder.resolve(INVENTORY), StandardCharsets.ISO_8859_1);
        String line = text.lines().filter(each -> each.startsWith(MACHINE.value())).findFirst().orElseThrow();
        String changed = line.replace("Lab PC", "Office").replace("8 GB", "16 GB");
        assertFalse(changed.equals(line), line);
        Files.writeString(folder.resolve(INVENTORY), text.replace(line, changed), StandardCharsets.ISO_8859_1);
        return folder;
    }

    private byte[] plan(Path place, String out) throws Exception {
        Survey survey = desk.survey(Demo.open(place), Progress.NONE);
        Plan plan = desk.plan(survey, Progress.NONE);
        desk.export(survey, plan, top.resolve(out), false, Progress.NONE);
        return Files.readAllBytes(top.resolve(out).resolve("plan.json"));
    }

    private Survey survey() throws Exception {
        return desk.survey(desk.open(project), Progress.NONE);
    }

    private static Machine machine(Survey survey) {
        return survey.fleet().machines().stream().filter(each -> each.tag().equals(MACHINE)).findFirst().orElseThrow();
    }

    private static List<String> conflicts(Survey survey) {
        return survey.findings().stream().map(Finding::code).filter(code -> code.endsWith("-conflict")).toList();
    }
}
