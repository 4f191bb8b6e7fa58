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
        "unpack", "compare", "team prepare", "team create", "team join", "team admit"})
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
        return new Main(desk).run(arguments, console());
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
