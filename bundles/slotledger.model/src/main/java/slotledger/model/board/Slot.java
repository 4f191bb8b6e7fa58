package slotledger.model.board;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.module.ModuleKind;

/**
 * One socket of a board, or its soldered memory.
 *
 * @param label    as printed on the board or in its document, unique in the board
 * @param channel  name of its channel; a fact of the board, never read out of the label
 * @param position place in the channel, 1 for the one the document calls first
 * @param use      socket, soldered, dead
 * @param row      row in the picture, 0 at the top
 * @param column   column in the picture, 0 at the left
 * @param colour   printed colour of the socket, a word for people
 * @param soldered what is soldered here, where the document fixes it; empty for sockets
 */
public record Slot(
        String label,
        String channel,
        int position,
        SlotUse use,
        int row,
        int column,
        Optional<String> colour,
        Optional<ModuleKind> soldered) {

    public Slot {
        Objects.requireNonNull(channel, "channel");
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(colour, "colour");
        Objects.requireNonNull(soldered, "soldered");
        if (label.isBlank()) {
            throw new IllegalArgumentException("The label of a slot must not be blank.");
        }
        if (position < 1 || row < 0 || column < 0) {
            throw new IllegalArgumentException(
                    "The position (%d) of slot %s must be at least 1, its row (%d) and column (%d) at least 0."
                            .formatted(position, label, row, column));
        }
        if (soldered.isPresent() && use != SlotUse.SOLDERED) {
            throw new IllegalArgumentException(
                    "The slot %s must be soldered to have soldered memory.".formatted(label));
        }
    }

    public boolean isSocket() {
        return use == SlotUse.SOCKET;
    }
}
