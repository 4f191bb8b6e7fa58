package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.machine.Machine;
import slotledger.model.trade.Target;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;

/** One machine in words: what is in it, how it runs, and what the rules say. */
final class MachineText {

    /** So many slots still have a line each. */
    private static final int FEW = 6;

    private static final int ROOM = Wrapped.WIDTH - Console.INDENT;

    private final Answer.Builder answer;
    private final Board board;
    private final Machine machine;

    MachineText(Answer.Builder answer, Board board, Machine machine) {
        this.answer = answer;
        this.board = board;
        this.machine = machine;
    }

    void machine() {
        answer.wrapped("Machine", machine.tag() + "  " + machine.where() + "  " + machine.role());
        answer.wrapped("Board", board.name() + "  (" + board.source() + ")");
        if (board.processorSockets() > 1 || !board.processors().isEmpty()) {
            answer.wrapped("Processor", machine.processor().orElse("not known")
                    + (board.processorSockets() > 1
                            ? ", " + machine.processors() + " of " + board.processorSockets() + " installed" : ""));
        }
        answer.wrapped("System", machine.operatingSystem().orElse("not known"));
        if (machine.redundancy() != Redundancy.NONE) {
            answer.wrapped("Memory kept", machine.redundancy().text());
        }
        slots();
        answer.fact("machine", machine.tag().value()).fact("board", board.id().value());
    }

    /** A line a slot; on a board with many, slots that hold the same stand together. */
    private void slots() {
        Map<String, List<String>> contents = new LinkedHashMap<>();
        for (Slot slot : board.slots()) {
            String key = board.slots().size() > FEW ? content(slot) : slot.label() + content(slot);
            contents.computeIfAbsent(key, one -> new ArrayList<>()).add(slot.label());
        }
        String word = "Slots";
        int width = board.slots().stream().mapToInt(slot -> slot.label().length()).max().orElse(0) + 2;
        for (List<String> labels : contents.values()) {
            String content = content(board.slot(labels.get(0)));
            answer.items(word, labels.size() == 1
                    ? Wrapped.behind(("%-" + width + "s").formatted(labels.get(0)), content, ROOM)
                    : Wrapped.lines(content + ": " + String.join(", ", labels), ROOM));
            word = "";
        }
    }

    private String content(Slot slot) {
        String content = machine.population().in(slot.label()).toString();
        return slot.use() == SlotUse.DEAD ? content + " (not wired)"
                : slot.use() == SlotUse.SOLDERED ? content + " (soldered to the board)" : content;
    }

    /** What the machine's role must reach, and what it lacks of that. */
    void target(List<String> lacks, Optional<Target> target) {
        target.ifPresent(wanted -> answer.wrapped("Target", wanted.capacity()
                + (lacks.isEmpty() ? ": reached" : ": not reached, " + String.join("; ", lacks))));
        answer.fact("lacks", lacks);
    }

    void runs(Operation runs, Arithmetic arithmetic) {
        answer.line("").wrapped("Runs", text(runs));
        if (runs.rate().isEmpty() && !runs.rateWhy().isEmpty()) {
            answer.wrapped("", runs.rateWhy());
        }
        ArithmeticText.lines(answer, arithmetic, runs.rate());
    }

    void verdict(Verdict verdict) {
        answer.line("").wrapped("Verdict", word(verdict));
        answer.items("", VerdictText.objections(verdict));
        List<String> passes = VerdictText.passes(verdict, true);
        if (!passes.isEmpty()) {
            answer.line("").items("Passes", passes);
        }
    }

    /** "blocks" and what that means. */
    static String word(Verdict verdict) {
        return verdict.weight().text() + ": " + switch (verdict.weight()) {
            case PASSES -> "no rule objects";
            case CAUTION -> "works; something to watch";
            case LOWERS -> "works, but slower or smaller than it could be";
            case UNKNOWN -> "a fact is missing, so nobody can say";
            case BLOCKS -> "not allowed";
        };
    }

    /** "8 GB installed, all usable, dual channel at 2400 MT/s, peak 38.4 GB/s". */
    static String text(Operation runs) {
        return runs.installed() + " installed, "
                + (runs.usable().equals(runs.installed()) ? "all" : runs.usable().toString()) + " usable, "
                + runs.mode()
                + runs.rate().map(rate -> " at " + rate + ", peak " + runs.peak()).orElse(", rate unknown")
                + (runs.ecc() ? ", errors corrected" : "");
    }
}
