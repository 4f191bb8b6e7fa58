package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class FirmwareCommandsTest {

    private final FakeDesk desk = new FakeDesk();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    private int run(String... arguments) {
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        return new Main(desk, new FakePhones()).run(arguments, new Console(stream, stream, false));
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void differencesAreShownWithBothPlacesAndWhoWasBelieved() {
        assertEquals(ExitCode.DIFFERS.number(), run("reconcile", "school"));
        assertTrue(out().contains("K-3"), out());
        assertTrue(out().contains("believed  firmware table (firmware/K-3.bin): 8 GB"), out());
        assertTrue(out().contains("spreadsheet (fleet.xlsx, sheet PCs, row 4): 4 GB"), out());
        assertFalse(out().contains("model: agree"), out());
        assertTrue(out().contains("1 machine: K-7"), out());
    }

    @Test
    void allFactsAreShownAndWrittenWhereAsked() {
        assertEquals(ExitCode.DIFFERS.number(), run("reconcile", "school", "--all", "--out", "c.csv", "--force"));
        assertTrue(out().contains("model: agree"), out());
        assertTrue(desk.calls().contains("compared c.csv true"), desk.calls().toString());
    }

    @Test
    void draftsAreListedWithWhatAPersonMustFindOut() {
        assertEquals(ExitCode.DIFFERS.number(), run("draft", "school", "--out", "drafts"));
        assertTrue(out().contains("kestrin-kb-930  Kestrin KB-930  (14 machines)"), out());
        assertTrue(out().contains("to find out: the largest total"), out());
        assertTrue(out().contains("One machine tells other slots."), out());
    }

    @Test
    void aKitNeedsNoProject() {
        assertEquals(ExitCode.OK.number(), run("kit", "--out", "kit"));
        assertTrue(desk.calls().contains("kit kit false"), desk.calls().toString());
        assertTrue(out().contains("README.txt"), out());
    }

    @Test
    void whatToLookAtIsNumberedWithMoneyAndMachinesThatAreAlike() {
        assertEquals(ExitCode.OK.number(), run("inspect", "school"));
        assertTrue(out().contains("  1. open one machine: Kestrin KB-510 (K-1, one of 2 alike)"), out());
        assertTrue(out().contains("At stake: EUR 60.00; waiting: Tallow/T-8"), out());
        assertTrue(out().contains("To open      1 machine"), out());
    }
}
