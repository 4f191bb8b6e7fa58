package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;

class MainTest {

    private final FakeDesk desk = new FakeDesk();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void withoutACommandTheCommandsAreShown() {
        assertEquals(2, run());
        assertTrue(err().contains("plan") && err().contains("prove"), err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"template", "check", "plan", "print", "programme", "prove", "explain", "matrix", "boards",
        "label", "firmware", "curve", "alternatives", "project", "families", "rules", "exit-codes"})
    void everyCommandHasHelp(String command) {
        assertEquals(0, run(command, "--help"));
        assertTrue(out().contains("Usage: slotledger " + command), out());
        assertTrue(command.equals("exit-codes") || out().contains("Example"), out());
    }

    @Test
    void anUnknownOptionIsRefusedAndNothingDone() {
        assertEquals(2, run("plan", "school", "--out", "o", "--fast"));
        assertTrue(err().contains("--fast"), err());
        assertEquals(List.of(), desk.calls());
    }

    @Test
    void aSolverIsAskedForByName() {
        assertEquals(0, run("plan", "school", "--out", "o", "--solver", "ojAlgo"));
        assertTrue(desk.calls().contains("solver ojAlgo"), desk.calls().toString());
    }

    @Test
    void theProgrammeOfAPlanIsWrittenGoalByGoal() {
        assertEquals(0, run("programme", "school", "--form", "mps", "--out", "o"));
        assertTrue(desk.calls().contains("programmes mps o false"), desk.calls().toString());
        assertTrue(out().contains("first things: 3, not below 2"), out());
        assertTrue(out().contains("money: 7, proven"), out());
    }

    @Test
    void planSaysWhatItDidAndWhereTheFilesAre() {
        assertEquals(0, run("plan", "school", "--out", "o", "--date", "2026-11-20"));
        assertTrue(out().contains("Order") && out().contains("order.xlsx"), out());
        assertEquals(List.of("open school", "survey 2026-11-20", "plan", "export o false"), desk.calls());
    }

    @Test
    void jsonIsTheOnlyThingOnStandardOutput() throws Exception {
        assertEquals(0, run("plan", "school", "--out", "o", "--json"));
        JsonNode facts = new ObjectMapper().readTree(out());
        assertEquals(0, facts.get("opened").asInt());
        assertEquals("", err());
    }

    @Test
    void inAPipeThereIsNoProgressLine() {
        run("check", "school");
        assertEquals("", err());
        assertFalse(out().contains("\r"));
    }

    @Test
    void checkEndsWithOneWhereAFindingIsAnError() {
        assertEquals(0, run("check", "school"));
        desk.withError();
        assertEquals(1, run("check", "school"));
        assertTrue(out().contains("row 7"), out());
    }

    @Test
    void anIncompleteProofEndsWithOne() {
        assertEquals(0, run("prove", "school", "--plan", "p.json", "--after", "a.csv"));
        desk.withIncompleteProof();
        assertEquals(1, run("prove", "school", "--plan", "p.json", "--after", "a.csv"));
        assertTrue(out().contains("A1: not done"), out());
    }

    @ParameterizedTest
    @EnumSource(Trouble.class)
    void everyTroubleHasAnExitCodeOfItsOwnAndASentence(Trouble trouble) {
        desk.failWith(new DeskException(trouble, "The file x is not there."));
        int code = run("check", "school");
        assertTrue(code > 60 && code < 80, "exit code " + code);
        assertEquals("slotledger: The file x is not there." + System.lineSeparator(), err());
    }

    @Test
    void aMatrixIsMadeOfTheModulesNamedAndWrittenWhereAsked() {
        assertEquals(0, run("matrix", "school", "--board", "b", "--module", "one", "--module", "two", "--out", "m.xlsx",
                "--date", "2026-11-20"));
        assertEquals(List.of("open school", "survey 2026-11-20", "module one", "module two", "matrix b 2",
                "matrix to m.xlsx false"), desk.calls());
        assertTrue(out().contains("Tarn 210") && out().contains("m.xlsx"), out());
    }

    @Test
    void theSchemaOfTheMatrixIsPrintedWithoutAProject() throws Exception {
        assertEquals(0, run("matrix", "--schema"));
        assertEquals("object", new ObjectMapper().readTree(out()).get("type").asText());
        assertEquals(List.of(), desk.calls());
    }

    @Test
    void aFaultOfTheProgramSaysSo() {
        desk.failWith(new IllegalStateException("The x must be y."));
        assertEquals(70, run("check", "school"));
        assertTrue(err().contains("A fault in Slotledger itself"), err());
    }

    @Test
    void theTableOfFamiliesFitsAWindowAndOneFamilySaysWhoSaysSo() {
        assertEquals(0, run("families"));
        assertTrue(out().lines().allMatch(line -> line.length() <= 100 && !line.contains("...")), out());
        for (Family family : Families.all()) {
            assertTrue(out().contains(family.id() + " "), family.id());
            run("families", family.id());
            assertTrue(out().lines().allMatch(line -> line.length() <= 100), out());
            assertTrue(family.sources().values().stream().map(Source::ground).map(Ground::text)
                    .filter(ground -> !ground.equals("document")).allMatch(out()::contains), out());
            run("families");
        }
        assertEquals(0, run("families", "72-pin", "--json"));
        assertEquals(65, run("families", "DDR9"));
    }

    @Test
    void theRulesAreListedAndOneIsShownWhole() throws Exception {
        assertEquals(0, run("rules"));
        assertTrue(out().contains("notch  A module goes in only past its own notch.") && out().contains("2 rules"),
                out());
        assertEquals(0, run("rules", "pairs"));
        for (String part : List.of("Manual, page 3", "Count them.", "Add one.", "1 becomes 2.")) {
            assertTrue(out().contains(part), out());
        }
        assertEquals(0, run("rules", "pairs", "--json"));
        assertEquals("Add one.", new ObjectMapper().readTree(out()).at("/rules/0/whatToDo").asText());
        assertEquals(65, run("rules", "notches"));
        assertTrue(err().contains("notch"), err());
    }

    @Test
    void aLabelEndsWithOneWhereAPartIsMissingAndWithAnErrorWhereNothingIsUnderstood() throws Exception {
        assertEquals(0, run("label", "8GB", "PC4"));
        assertTrue(out().contains("Label        8GB PC4") && out().contains("the ranks of a module")
                && out().contains("288 pins  [common practice, no source]")
                && out().contains("easily taken for a DDR5 DIMM"), out());
        assertEquals(1, run("label", "PC4"));
        assertTrue(out().contains("the capacity is not told"), out());
        assertEquals(65, run("label", "nonsense"));
        assertEquals(0, run("label", "8GB PC4", "--json"));
        JsonNode label = new ObjectMapper().readTree(out()).get("label");
        assertEquals("RANKS", label.at("/missing/0/fact").asText());
        assertEquals("DDR4", label.at("/facts/generation").asText());
    }

    @Test
    void firmwareShowsSlotsAndModulesAndEndsWithOneWhereSomethingIsDamaged() throws Exception {
        assertEquals(0, run("firmware", "table.bin"));
        assertEquals(List.of("firmware [table.bin]"), desk.calls());
        assertTrue(out().contains("Array        2 slots, at most 32 GB, error correction None")
                && out().contains("Slots        DIMM A: 8 GB, DDR4, DIMM, 2400 MT/s; PART-8")
                && out().contains("             DIMM B: empty"), out());
        assertEquals(0, run("firmware", "table.bin", "--json"));
        JsonNode device = new ObjectMapper().readTree(out()).at("/readings/0/structures/1");
        assertEquals(17, device.get("type").asInt());
        assertTrue(device.toString().contains("{\"fact\":\"Size\",\"raw\":\"0x2000\",\"value\":8589934592}"), out());
        desk.cutFirmwareAt(40);
        assertEquals(1, run("firmware", "table.bin"));
        assertTrue(out().contains("Problems     ") && out().contains("expected"), out());
    }

    @Test
    void exitCodesAreDocumentedByTheProgram() {
        assertEquals(0, run("exit-codes"));
        for (ExitCode code : ExitCode.values()) {
            assertTrue(out().contains(code.number() + " "), out());
        }
    }

    private int run(String... arguments) {
        out.reset();
        err.reset();
        Console console = new Console(stream(out), stream(err), false);
        return new Main(desk, new FakePhones()).run(arguments, console);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aCurveShowsEachBudgetAsABarAndMarksThatOfThePolicy() throws Exception {
        assertEquals(0, run("curve", "school", "--out", "c.xlsx", "--date", "2026-11-20"));
        assertEquals(List.of("open school", "survey 2026-11-20", "curve of 12", "plan", "curve to c.xlsx false"),
                desk.calls());
        List<String> lines = out().lines().toList();
        assertEquals("   Budget, EUR   on target  by weight    at most          to pay", lines.get(0));
        assertEquals("         10.00           2          2          3           10.00  "
                + "#".repeat(20) + ".".repeat(10)
                + " <- the budget of the policy", lines.get(2));
        assertEquals("         20.00           4          4          4           20.00  "
                + "#".repeat(40), lines.get(3));
    }

    @Test
    void anExactCurveAsksThePlan() throws Exception {
        assertEquals(0, run("curve", "school", "--exact", "--date", "2026-11-20"));
        assertEquals(List.of("open school", "survey 2026-11-20", "ask no budget", "plan"), desk.calls());
        assertTrue(out().replaceAll("\\s+", " ").contains("More than the last budget brings no more."), out());
    }

    @Test
    void aCurveOfOnePointIsRefused() {
        assertEquals(ExitCode.INPUT.number(), run("curve", "school", "--points", "1"));
        assertTrue(err().contains("must be from 2 to 200"), err());
    }

    @Test
    void insightsSayWhatMoreAndLessMoneyWouldDo() throws Exception {
        assertEquals(0, run("plan", "school", "--insights", "--out", "o"));
        assertTrue(out().contains("More money   EUR 20.00, EUR 20.00 more than to pay now: 1 machines"), out());
        assertTrue(out().contains("Do without   S/P1: EUR 5.00 more"), out());
        assertTrue(out().contains("Decisions    without to open at most 3 machines: 1 more"), out());
    }

    @Test
    void plansAreComparedAndTheWorkbookIsWrittenWhereAsked() throws Exception {
        assertEquals(0, run("compare", "old", "new/plan.json", "--out", "c.xlsx"));
        assertTrue(desk.calls().containsAll(List.of("earlier old", "earlier new/plan.json",
                "difference to c.xlsx false")), desk.calls().toString());
        assertTrue(out().contains("Nothing is bought or done differently."), out());
        assertEquals(0, run("compare", "old", "new", "--json"));
        assertTrue(new ObjectMapper().readTree(out()).get("same").asBoolean());
    }

    @Test
    void aPlanMadeAfterAnEarlierOneSaysWhatChanged() throws Exception {
        assertEquals(0, run("plan", "school", "--out", "o", "--before", "old"));
        assertTrue(desk.calls().containsAll(List.of("earlier old", "compare")), desk.calls().toString());
        assertTrue(out().contains("What changed against the earlier plan"), out());
        assertEquals(0, run("plan", "school", "--out", "o", "--before", "old", "--json"));
        assertTrue(new ObjectMapper().readTree(out()).at("/changes/same").asBoolean());
    }

    @Test
    void anEndedOrderIsSettledAndItsChangesAreSaid() throws Exception {
        assertEquals(0, run("arrived", "school", "--plan", "p.json", "--received", "r.csv", "--final", "--out", "o"));
        assertTrue(desk.calls().contains("settle [r.csv] Optional.empty"), desk.calls().toString());
        assertTrue(desk.calls().contains("exportWork settled o"), desk.calls().toString());
        assertTrue(out().contains("What changed against the plan") && out().contains("stays spent"), out());
    }

    @Test
    void aBudgetForWavesIsRefusedAndEachWaveHasFactsOfItsOwn() throws Exception {
        desk.withWaves("This year", "Next year");
        assertEquals(ExitCode.INPUT.number(), run("plan", "school", "--budget", "5", "--out", "o"));
        assertTrue(err().contains("each wave has a budget of its own"), err());
        assertEquals(0, run("plan", "school", "--out", "o", "--json"));
        JsonNode facts = new ObjectMapper().readTree(out());
        assertEquals("This year", facts.at("/waves/0/name").asText());
        assertTrue(facts.at("/waves/0/files/0").asText().contains("1-this-year"), out());
        assertTrue(facts.at("/waves/1/files/0").asText().contains("2-next-year"), out());
        assertEquals("0.00", facts.get("total").asText());
    }
}
