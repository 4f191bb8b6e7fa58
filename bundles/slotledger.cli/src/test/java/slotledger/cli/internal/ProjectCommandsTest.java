package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ProjectCommandsTest {

    private final FakeDesk desk = new FakeDesk();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @ParameterizedTest
    @ValueSource(strings = {"create", "import", "history", "undo", "redo", "correct", "pin", "mute", "files", "pack",
        "unpack", "rounds", "job", "prove", "close", "compare", "team prepare", "team create", "team join",
        "team admit"})
    void everyCommandHasHelpWithAnExample(String command) {
        List<String> words = new ArrayList<>(List.of(("project " + command + " --help").split(" ")));
        assertEquals(0, run(words.toArray(String[]::new)));
        assertTrue(out().contains("Usage: slotledger project " + command) && out().contains("Example"), out());
    }

    @Test
    void aProjectIsMadeByWhoeverIsNamed() {
        assertEquals(0, run("project", "create", "p", "--from", "demo", "--as", "anna"));
        assertEquals(List.of("create p from demo by anna"), desk.calls());
    }

    @Test
    void twoEntriesOrVersionsAreCompared() {
        assertEquals(1, run("project", "compare", "p", "fleet-1", "plan-1"));
        assertTrue(desk.calls().contains("compare 2 with OptionalLong[6]"), desk.calls().toString());
        assertTrue(out().contains("Fleet        machine K-2: new, Kestrin KB-510"), out());
        assertTrue(out().contains("             role of K-1: office instead of ofice"), out());
        assertTrue(out().contains("Offers       offer N/1: gone, was 8 GB"), out());
        assertEquals(65, run("project", "compare", "p", "fleet-9"));
    }

    @Test
    void aTeamsProjectIsMadeJoinedAndSharedWithPeople() {
        String url = "jdbc:postgresql://db/school";
        assertEquals(0, run("project", "team", "prepare", "--url", url, "--user", "owner"));
        assertTrue(out().contains("technician   may write what happens at the machines; read everything"), out());
        assertEquals(0, run("project", "team", "create", "p", "--url", url, "--from", "demo", "--as", "anna"));
        assertEquals(0, run("project", "team", "join", "q", "--url", url, "--user", "ben"));
        assertEquals(0, run("project", "team", "admit", "p", "--user", "ben", "--role", "reader"));
        assertTrue(out().contains("ben is reader now and may read everything."), out());
        assertEquals(65, run("project", "team", "admit", "p", "--user", "ben", "--role", "boss"));
        assertEquals(List.of("prepare " + url + " owner", "team create " + url + " - p demo anna",
                "join " + url + " ben q -", "admit p ben reader"), desk.calls());
    }

    @Test
    void theHistoryNumbersVersionsAndShowsWhatWasTakenBack() {
        Answer.Builder answer = new Answer.Builder();
        HistoryText text = new HistoryText(FakeProjects.journal(), ZoneOffset.UTC);
        text.report(answer);
        out.reset();
        answer.end(ExitCode.OK).lines().forEach(line -> line.accept(console()));
        assertEquals("""
                   1  2026-11-28 12:00  anna  made the project "school"
                   2  2026-11-28 12:00  anna  brought in fleet 1 (fleet.xlsx)
                   3  2026-11-28 12:00  ben  brought in fleet 2 (2 files) [taken back]
                                             why: count of March
                   4  2026-11-28 12:00  anna  took back entry 3
                   5  2026-11-28 12:00  anna  corrected the role of K-1 from "ofice" to "office"
                   6  2026-11-28 12:00  anna  kept plan 1 of "school" for 2026-11-24, made from the files of entry 5

                Now          fleet 1
                             1 plan, 1 decision
                """.lines().toList(), out().lines().toList());
    }

    @Test
    void anImportSaysWhatItBroughtAndWhyItWasMade() {
        assertEquals(0, run("project", "import", "p", "fleet.xlsx", "boards", "--why", "count"));
        assertTrue(desk.calls().contains("import [fleet.xlsx, boards] because of count"), desk.calls().toString());
        assertTrue(out().contains("brought in fleet 1 (fleet.xlsx)"), out());
    }

    @Test
    void undoTakesTheLastChangeOrTheOneThatIsNamed() {
        assertEquals(0, run("project", "undo", "p"));
        assertEquals(0, run("project", "redo", "p", "--entry", "7"));
        assertEquals(List.of("undo OptionalLong.empty", "redo OptionalLong[7]"), desk.calls());
    }

    @Test
    void aPinNeedsSlotsOrSaysThatAllStays() {
        assertEquals(65, run("project", "pin", "p", "--machine", "K-1"));
        assertEquals(65, run("project", "pin", "p", "--machine", "K-1", "--as-now", "--slot", "A=empty"));
        assertEquals(0, run("project", "pin", "p", "--machine", "K-1", "--slot", "A=8 GB", "--slot", "B=empty"));
        assertTrue(desk.calls().contains("pin K-1 {A=8 GB, B=empty}"), desk.calls().toString());
    }

    @Test
    void roundsAreShownWithWhatComesBeforeAndWhatToFetch() {
        assertEquals(0, run("project", "rounds", "p", "--round", "main-02"));
        assertTrue(out().contains("main-02  Ben, Main / 101"), out());
        assertTrue(out().contains("round main-01, because"), out());
        assertTrue(out().contains("1 x 8 GB DDR4 DIMM") && out().contains("from order A-1"), out());
        assertTrue(out().contains("out of K-9, S1, for DIMM2"), out());
        assertTrue(out().contains("2 planned"), out());
        assertEquals(65, run("project", "rounds", "p", "--round", "other"));
    }

    @Test
    void roundsAreMadeForTechniciansAndTheirTimes() {
        assertEquals(0, run("project", "rounds", "p", "--technician", "Ben", "--as", "anna", "--window",
                "Main / 101=2026-12-01 08:00-12:00"));
        assertEquals(List.of("rounds [Ben] [OpenTime[place=Main / 101, window=Window[from=2026-12-01T08:00, "
                + "until=2026-12-01T12:00]]] by anna"), desk.calls());
        assertEquals(65, run("project", "rounds", "p", "--technician", "Ben", "--window", "tomorrow"));
        assertTrue(err().contains("2026-12-01 08:00-12:00"), err());
        assertEquals(65, run("project", "rounds", "p", "--technician", "Ben", "--window",
                "2026-12-01 12:00-08:00"));
    }

    @Test
    void whatHappenedToJobsIsWrittenDown() {
        assertEquals(0, run("project", "job", "p", "K-1", "K-2", "--as", "ben", "--step", "2", "--serial",
                "DIMM1=00A1", "--other", "DIMM2=dusty", "--state", "done-differently"));
        assertEquals(8, desk.calls().size());
        assertEquals("K-2 Became[state=DONE_DIFFERENTLY, reason=] by ben", desk.calls().get(7));
        assertTrue(out().contains("done differently"), out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"show", "approve", "sent", "confirmed", "received", "draw", "allot"})
    void everyCommandAboutTheOrderHasHelpWithAnExample(String command) {
        assertEquals(0, run("project", "order", command, "--help"));
        assertTrue(out().contains("Usage: slotledger project order " + command) && out().contains("Example"), out());
    }

    @Test
    void anOrderIsApprovedAndSaysSo() {
        assertEquals(0, run("project", "order", "show", "p"));
        assertTrue(out().contains("not yet"), out());
        assertEquals(0, run("project", "order", "approve", "p", "--by", "Head", "--as", "anna"));
        assertEquals(List.of("Approved[plan=1, by=Head] by anna"), desk.calls());
        assertTrue(out().contains("by Head (entry 9)"), out());
        assertEquals(65, run("project", "order", "approve", "p", "--by", " "));
    }

    @Test
    void aPartThatIsNotOrderedIsRefused() {
        assertEquals(65, run("project", "order", "received", "p", "--part", "X", "--good", "1"));
        assertTrue(err().contains("\"X\" is no part of the order"), err());
        assertEquals(List.of(), desk.calls());
    }

    @Test
    void aProofNamesCausesInOrderOfEffortAndTheJobsItEnds() {
        assertEquals(1, run("project", "prove", "p", "--after", "a.xlsx", "--firmware", "dumps"));
        assertTrue(desk.calls().contains("prove [a.xlsx] [dumps]"), desk.calls().toString());
        assertTrue(out().contains("runs slower than planned; planned 2400 MT/s; found 2133 MT/s."), out());
        assertTrue(out().indexOf("1.  ") < out().indexOf("set memory to automatic"), out());
        assertTrue(out().contains("1 job, because all agrees: K-2"), out());
        assertTrue(out().contains("3 slots with the serial number"), out());
    }

    @Test
    void aCloseOutIsWrittenWithItsOpenPoints() {
        assertEquals(1, run("project", "close", "p", "--out", "end"));
        assertTrue(desk.calls().contains("close to end"), desk.calls().toString());
        assertTrue(out().contains("nothing is proved"), out());
    }

    @Test
    void aJobThatFailedMustSayWhyAndAStateThatIsNoneIsRefused() {
        assertEquals(65, run("project", "job", "p", "K-1", "--state", "failed"));
        assertEquals(65, run("project", "job", "p", "K-1", "--state", "lost"));
        assertTrue(err().contains("put-back"), err());
        assertEquals(List.of(), desk.calls());
    }

    @Test
    void aFactThatCannotBeCorrectedIsRefusedWithThoseThatCan() {
        assertEquals(65, run("project", "correct", "p", "--machine", "K-1", "--fact", "colour", "--value", "red"));
        assertTrue(err().contains("cost-centre"), err());
    }

    @Test
    void aPlanOrTheFilesAreTakenOut() {
        assertEquals(0, run("project", "files", "p", "--plan", "2", "--out", "plan.json"));
        assertEquals(0, run("project", "files", "p", "--entry", "3", "--out", "o"));
        assertEquals(List.of("plan 2 plan.json", "files OptionalLong[3] o"), desk.calls());
    }

    private Console console() {
        return new Console(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), false);
    }

    private int run(String... arguments) {
        return new Main(desk, new FakePhones()).run(arguments, console());
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
