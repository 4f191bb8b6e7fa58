package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;

/** What can be in the sockets of a board as numbers, beside slots that nobody changes. */
final class SocketCodes {

    static final int EMPTY = 0;

    /**
     * What machines have in common whose populations differ in the sockets only.
     *
     * @param labels  of all slots named, in their order
     * @param sockets labels of the sockets that can be changed
     * @param fixed   what is in the other slots
     */
    record Frame(List<String> labels, List<String> sockets, Map<String, SlotContent> fixed) {

        static Frame of(Population population, List<String> sockets) {
            Map<String, SlotContent> fixed = new LinkedHashMap<>(population.contents());
            sockets.forEach(fixed::remove);
            return new Frame(List.copyOf(population.contents().keySet()), sockets, Map.copyOf(fixed));
        }
    }

    private final Frame frame;
    private final long fixedKibibytes;
    private final List<SlotContent> contents = new ArrayList<>(List.of(SlotContent.EMPTY));
    private final Map<SlotContent, Integer> codes = new HashMap<>(Map.of(SlotContent.EMPTY, EMPTY));

    SocketCodes(Frame frame) {
        this.frame = frame;
        fixedKibibytes =
                frame.fixed().values().stream().mapToLong(content -> content.capacity().kibibytes()).sum();
    }

    int count() {
        return frame.sockets().size();
    }

    List<String> sockets() {
        return frame.sockets();
    }

    /** The place of a socket in the order; negative where it isn't one of these. */
    int socket(String label) {
        return frame.sockets().indexOf(label);
    }

    int code(SlotContent content) {
        Integer known = codes.get(content);
        if (known == null) {
            known = contents.size();
            codes.put(content, known);
            contents.add(content);
        }
        return known;
    }

    /** What is in the sockets, one code each. */
    int[] codes(Population population) {
        int[] row = new int[count()];
        for (int socket = 0; socket < row.length; socket++) {
            row[socket] = code(population.in(sockets().get(socket)));
        }
        return row;
    }

    /** Codes are from 0 to below this. */
    int codeCount() {
        return contents.size();
    }

    SlotContent content(int code) {
        return contents.get(code);
    }

    Optional<Piece> piece(int code) {
        return contents.get(code).piece();
    }

    long kibibytes(int code) {
        return contents.get(code).capacity().kibibytes();
    }

    /** KiB in the slots that nobody changes. */
    long fixedKibibytes() {
        return fixedKibibytes;
    }

    /** The population with these codes; sockets the machines don't name appear only where they are filled. */
    Population population(int[] row) {
        Map<String, SlotContent> slots = new LinkedHashMap<>();
        for (String label : frame.labels()) {
            slots.put(label, frame.fixed().getOrDefault(label, SlotContent.EMPTY));
        }
        for (int socket = 0; socket < row.length; socket++) {
            String label = sockets().get(socket);
            if (row[socket] != EMPTY || slots.containsKey(label)) {
                slots.put(label, contents.get(row[socket]));
            }
        }
        return new Population(slots);
    }
}
