package slotledger.model.work;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;

/**
 * One machine's job sheet for a small screen.
 *
 * @param machine   whose
 * @param plan      number of the plan it belongs to, counted from 1 within its project
 * @param number    its place on the way: "7 of 230"
 * @param place     site and room, or that they aren't known
 * @param board     name and form of its board
 * @param serial    serial number of the machine; may be empty
 * @param summary   memory now and after: "8 GB to 16 GB"
 * @param heed      what must be known before it is opened: other machines, doubts about the inventory
 * @param cautions  what to heed for people and parts
 * @param steps     what to do; the first is number 1
 * @param stepBack  how it is brought back to what it held before
 * @param before    its slots before the work
 * @param after     its slots after the work
 * @param slots     labels of all its slots, in the board's order
 * @param receiving slots that get a module, so that its serial number is asked for
 * @param expected  what results, and what the firmware should show
 */
public record JobCard(
        AssetTag machine,
        int plan,
        String number,
        String place,
        String board,
        String serial,
        String summary,
        List<String> heed,
        List<String> cautions,
        List<String> steps,
        String stepBack,
        Picture before,
        Picture after,
        List<String> slots,
        List<Receiving> receiving,
        List<String> expected) {

    public JobCard {
        Objects.requireNonNull(machine, "machine");
        if (plan < 1) {
            throw new IllegalArgumentException("The plan (%d) of a card must be at least 1.".formatted(plan));
        }
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(board, "board");
        Objects.requireNonNull(serial, "serial");
        Objects.requireNonNull(summary, "summary");
        heed = List.copyOf(heed);
        cautions = List.copyOf(cautions);
        steps = List.copyOf(steps);
        Objects.requireNonNull(stepBack, "stepBack");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        slots = List.copyOf(slots);
        receiving = List.copyOf(receiving);
        expected = List.copyOf(expected);
    }

    /**
     * The slots of a machine, drawn and in words.
     *
     * @param svg   a drawing in SVG 1.1 that takes its colours from the text around it; texts in it are escaped
     * @param words the same for who can't see it: a slot a line, in the board's order
     */
    public record Picture(String svg, List<String> words) {
        public Picture {
            Objects.requireNonNull(svg, "svg");
            words = List.copyOf(words);
        }
    }

    /**
     * A slot that gets a module.
     *
     * @param slot   its label
     * @param module what it gets, briefly
     */
    public record Receiving(String slot, String module) {
        public Receiving {
            Objects.requireNonNull(slot, "slot");
            Objects.requireNonNull(module, "module");
        }
    }
}
