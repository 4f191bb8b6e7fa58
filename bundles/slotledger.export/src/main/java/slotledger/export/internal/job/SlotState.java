package slotledger.export.internal.job;

import slotledger.model.board.Slot;
import slotledger.model.machine.SlotContent;

/**
 * One slot in a picture.
 *
 * @param slot    which slot
 * @param content what is in it
 * @param mark    what happens, or happened, to it
 */
public record SlotState(Slot slot, SlotContent content, Mark mark) {}
