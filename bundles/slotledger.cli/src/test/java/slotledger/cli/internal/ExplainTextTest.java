package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import slotledger.app.Trial;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.source.Source;
import slotledger.model.trade.Target;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Arithmetic.BoundBy;
import slotledger.model.verdict.Arithmetic.CapacityStep;
import slotledger.model.verdict.Arithmetic.Part;
import slotledger.model.verdict.Arithmetic.RateBound;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

class ExplainTextTest {

    private static final Source MANUAL = Source.document("Manual", "page 3");
    private static final Capacity EIGHT = Capacity.ofGiB(8);
    private static final Operation RUNS = new Operation(EIGHT, EIGHT, Capacity.ofGiB(4),
            new ChannelMode(2, EIGHT, Capacity.NONE), Optional.of(Rate.of(2400)), "So it is.",
            new Bandwidth(38_400_000), false);
    private static final Arithmetic SUMS = new Arithmetic(
            List.of(new Part(1, 2, EIGHT, new Bandwidth(38_400_000), "2 x 4 GB = 8 GB.")),
            List.of(new RateBound(BoundBy.PROCESSOR, Rate.of(2133), false, "It may hold."),
                    new RateBound(BoundBy.MODULE, Rate.of(2400), true, "They are rated 2400 MT/s."),
                    new RateBound(BoundBy.BOARD, Rate.of(2666), true, "The board runs no faster.")),
            List.of(new CapacityStep("installed", EIGHT, "2 modules hold 8 GB."),
                    new CapacityStep("operating system uses", Capacity.ofGiB(4), "It uses 4 GB.")));

    @Test
    void theArithmeticSaysWhatSetsTheRateAndHowTheUsableMemoryComesAbout() {
        String text = text(answer -> ArithmeticText.lines(answer, SUMS, Optional.of(Rate.of(2400))));
        assertEquals("""
                Channels     8 GB at 38.4 GB/s  2 x 4 GB = 8 GB.
                Rate         2133 MT/s ?        processor: It may hold.
                             2400 MT/s          module, sets it: They are rated 2400 MT/s.
                             2666 MT/s          board: The board runs no faster.
                Memory       8 GB               installed: 2 modules hold 8 GB.
                             4 GB               operating system uses: It uses 4 GB.
                """, text);
    }

    @Test
    void aMachineSaysWhatIsInItAndWhatItLacks() {
        Board board = SmallMatrix.of("S1", "S2").board();
        ModuleKind kind = ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(4));
        Machine machine = new Machine(new AssetTag("PC-1"), "", new Whereabouts("North", "Lab 1"), "", "lab",
                board.id(), 1, Optional.empty(), Optional.of("Debian 12"), Redundancy.NONE,
                Population.empty(board).with("S2", kind), Place.NOWHERE);
        String text = text(answer -> {
            MachineText lines = new MachineText(answer, board, machine);
            lines.machine();
            lines.target(List.of("8 GB instead of 16 GB"), Optional.of(Target.of("lab", Capacity.ofGiB(16))));
            lines.runs(RUNS, SUMS);
        });
        assertTrue(text.contains("""
                Slots        Chips  4 GB DDR4 soldered (soldered to the board)
                             X      empty (not wired)
                             S1     empty
                             S2     4 GB DDR4 DIMM
                Target       16 GB: not reached, 8 GB instead of 16 GB

                Runs         8 GB installed, 4 GB usable, dual channel at 2400 MT/s, peak 38.4 GB/s
                """), text);
    }

    @Test
    void theSameObjectionToSeveralSlotsStandsOnce() {
        Verdict verdict = new Verdict(Weight.BLOCKS, RUNS, List.of(
                reason("generation", Weight.BLOCKS, "The module in slot S1 is DDR3.", "S1"),
                reason("generation", Weight.BLOCKS, "The module in slot S2 is DDR3.", "S2"),
                reason("ranks", Weight.UNKNOWN, "Nobody knows.", "S1"),
                reason("form", Weight.PASSES, "It fits.", "")));
        assertEquals("""
                blocks   The module in slot S1 is DDR3. Likewise in S2.
                         [generation; Manual, page 3]
                         To do: Do it.
                besides  unknown by ranks.
                """, String.join("\n", VerdictText.objections(verdict)) + "\n");
    }

    @Test
    void finerReasonsHangBelowTheirReason() {
        Reason finer = reason("look-alike", Weight.BLOCKS, "Its notch sits elsewhere.", "");
        Reason reason = new Reason("generation", Weight.BLOCKS, "It is DDR3.", List.of(), MANUAL, "", List.of(finer),
                Optional.empty());
        assertEquals("""
                blocks   It is DDR3.
                         [generation; Manual, page 3]
                         - blocks   Its notch sits elsewhere.
                                    [look-alike; Manual, page 3]
                                    To do: Do it.
                """, String.join("\n",
                VerdictText.objections(new Verdict(Weight.BLOCKS, RUNS, List.of(reason)))) + "\n");
    }

    @Test
    void whatPassesStandsByWhoSaysSo() {
        Verdict verdict = new Verdict(Weight.PASSES, RUNS, List.of(
                new Reason("memory", Weight.PASSES, "It fits.", List.of(), Source.of(Ground.MEMORY), "", List.of(),
                        Optional.empty()),
                reason("form", Weight.PASSES, "It is a DIMM.", ""), reason("voltage", Weight.PASSES, "1.2 V.", "")));
        assertEquals(List.of("by Manual, page 3: form, voltage", "from memory: memory"),
                VerdictText.passes(verdict, false));
        assertEquals(List.of("by Manual, page 3:", "  form     It is a DIMM.", "  voltage  1.2 V.", "from memory:",
                "  memory  It fits."), VerdictText.passes(verdict, true));
    }

    @Test
    void whatMostVerdictsHangOnIsToBeFoundFirst() {
        Verdict open = new Verdict(Weight.UNKNOWN, RUNS, List.of(missing(MissingFact.FORM, "S1"),
                missing(MissingFact.RANKS, "S1"), missing(MissingFact.RANKS, "S2")));
        Verdict no = new Verdict(Weight.BLOCKS, RUNS, List.of(
                reason("generation", Weight.BLOCKS, "It is DDR3.", "S1"), missing(MissingFact.BUFFERING, "S1")));
        String text = text(answer -> ToFindOut.lines(answer, List.of(open, no), SUMS, Optional.empty()));
        int ranks = text.indexOf("   1. the ranks of a module in S1, S2 (for 2 verdicts of ranks).");
        int form = text.indexOf("   2. the form of a module in S1 (for 1 verdict of form).");
        int processor = text.indexOf("   3. which processor is installed (for 1 verdict of the rate).");
        assertTrue(ranks >= 0 && form > ranks && processor > form, text);
        assertFalse(text.contains("buffering"), "a no hangs on nothing: " + text);
        String known = text(answer -> ToFindOut.lines(answer, List.of(no), SUMS, Optional.of(Rate.of(2400))));
        assertEquals("", known);
    }

    @Test
    void socketsWhereItComesToTheSameStandTogether() {
        String text = text(answer -> new TrialText(answer).report(List.of(
                trial(List.of("S1"), List.of("S1"), true, "generation"),
                trial(List.of("S2"), List.of("S2"), true, "generation"),
                trial(List.of("S3"), List.of("S3"), true, "form"),
                trial(List.of("S4", "S5"), List.of("S4", "S5", "S6"), false, "form"))));
        assertTrue(text.contains("\nIn S1 or S2 (said here of S1)\nVerdict      blocks: not allowed\n"), text);
        assertTrue(text.contains("\nIn S3\n"), text);
        assertTrue(text.contains(
                "\nIn S4, S5, with the same module in S6 too, and all other modules taken out\n"), text);
    }

    private static Trial trial(List<String> slots, List<String> filled, boolean othersStay, String rule) {
        Reason reason = reason(rule, Weight.BLOCKS, "The module in slot " + slots.get(0) + " is not good.",
                slots.get(0));
        Board board = SmallMatrix.of("S1").board();
        return new Trial(slots, filled, othersStay, Population.empty(board),
                new Verdict(Weight.BLOCKS, RUNS, List.of(reason)));
    }

    private static Reason missing(MissingFact fact, String slot) {
        return new Reason(fact.name().toLowerCase(Locale.ROOT), Weight.UNKNOWN, "Nobody knows.",
                List.of(slot), MANUAL, fact.cheapestWay(), List.of(), Optional.of(fact));
    }

    private static Reason reason(String rule, Weight weight, String sentence, String slot) {
        return new Reason(rule, weight, sentence, slot.isEmpty() ? List.of() : List.of(slot), MANUAL, "Do it.",
                List.of(), Optional.empty());
    }

    private static String text(Consumer<Answer.Builder> fill) {
        Answer.Builder answer = new Answer.Builder();
        fill.accept(answer);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        Console console = new Console(out, out, false);
        answer.end(ExitCode.OK).lines().forEach(line -> line.accept(console));
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
