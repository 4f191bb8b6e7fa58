package slotledger.export.internal.job;

import java.util.List;
import slotledger.model.board.Board;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;

/**
 * One machine's instructions, before they are given a form.
 *
 * @param plan      what becomes of the machine
 * @param board     its board
 * @param orderOf   number on the round: "7 of 230"
 * @param before    slots before the work
 * @param after     slots after the work
 * @param channels  names of channels, in the board's order; a picture gives each a pattern of its own
 * @param heed      machines that come before and after, doubts about the inventory
 * @param cautions  what to heed for people and parts
 * @param steps     what to do, in order
 * @param stepBack  how it is brought back to what it held before
 * @param expected  name and value of what results
 * @param firmware  what the firmware should show
 * @param received  slots that get a module, for its serial number
 * @param notes     the board's notes for technicians
 * @param sources   where the facts about the board are from
 */
public record JobSheet(
        MachinePlan plan,
        Board board,
        String orderOf,
        List<SlotState> before,
        List<SlotState> after,
        List<String> channels,
        List<Line> heed,
        List<String> cautions,
        List<Line> steps,
        Line stepBack,
        List<Line> expected,
        List<String> firmware,
        List<SlotState> received,
        List<String> notes,
        List<String> sources) {

    public JobSheet {
        before = List.copyOf(before);
        after = List.copyOf(after);
        channels = List.copyOf(channels);
        heed = List.copyOf(heed);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
        expected = List.copyOf(expected);
        firmware = List.copyOf(firmware);
        received = List.copyOf(received);
        notes = List.copyOf(notes);
        sources = List.copyOf(sources);
    }

    public Machine machine() {
        return plan.machine();
    }

    /** "Main / Lab 1", or that it isn't known. */
    public String place() {
        String where = machine().where().toString();
        return where.isBlank() ? "place not known" : where;
    }
}
