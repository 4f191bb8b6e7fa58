package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slotledger.export.internal.text.Words;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.board.SlotUse;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Generation;
import slotledger.model.plan.MachinePlan;
import slotledger.model.verdict.Operation;

/** What the firmware of a machine should show after the work, and what to do where it doesn't. */
final class Firmware {

    private Firmware() {
    }

    static List<String> lines(MachinePlan plan, Board board, List<SlotState> after) {
        List<String> lines = new ArrayList<>();
        Operation runs = plan.runsAfter();
        lines.add("Memory in all: " + Words.bothUnits(runs.installed())
                + (plan.machine().redundancy() != Redundancy.NONE && !runs.usable().equals(runs.installed())
                        ? ", or what is usable of it, " + Words.bothUnits(runs.usable()) : "") + ".");
        lines.add("By slot: " + after.stream()
                .filter(state -> state.slot().use() != SlotUse.DEAD)
                .map(state -> state.slot().label() + ": " + seen(state.content()))
                .collect(Collectors.joining(", ")) + ". Firmware may name slots otherwise than the board's print.");
        after.stream()
                .map(SlotState::content)
                .filter(SlotContent.Filled.class::isInstance)
                .distinct()
                .forEach(filler -> lines.add("It shows a slot with %s as empty: nothing on it can be read."
                        .formatted(Words.one(filler.toString()))));
        runs.rate().ifPresent(rate -> lines.add(isSingleRate(plan)
                ? "Rate: %1$d MT/s; firmware prints it as %1$d MHz.".formatted(rate.megatransfers())
                : "Rate: %1$d MT/s; some firmware prints it as %1$d MHz, or the clock, %2$d MHz."
                        .formatted(rate.megatransfers(), rate.megatransfers() / 2)));
        lines.add("At the first start it may say that the amount of memory has changed: that is expected.");
        lines.add("If it shows less, or doesn't start: power off and unplug, seat every new module again, "
                + oneByOne(board) + "; if that doesn't help, put the old modules back and report it.");
        return lines;
    }

    private static boolean isSingleRate(MachinePlan plan) {
        return plan.after().modules().stream()
                .anyMatch(kind -> kind.generation().filter(Generation.SDR::equals).isPresent());
    }

    private static String seen(SlotContent content) {
        if (content.module().isPresent()) {
            return content.capacity().toString();
        }
        return content instanceof SlotContent.Filled ? SlotContent.EMPTY.toString() : content.toString();
    }

    /** Half a bank doesn't start, and a broken chain of RIMM sockets neither. */
    private static String oneByOne(Board board) {
        boolean byBank = !board.banks().isEmpty() || board.fill().setSize() > 1;
        String what = byBank ? "try one bank or set at a time" : "try one at a time";
        return board.fill().blank()
                .map(filler -> what + " with " + Words.one(filler.text()) + " in every other slot")
                .orElse(what);
    }
}
