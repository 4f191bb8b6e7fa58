package slotledger.rules.internal.server;

import slotledger.model.board.Board;
import slotledger.model.board.BoardForm;
import slotledger.model.board.Slot;
import slotledger.model.board.Takes;
import slotledger.model.module.Buffering;
import slotledger.rules.spi.Situation;

/** What counts as a server: makers' mixing bans bind its memory controller, whatever the case looks like. */
public final class Servers {

    private Servers() {
    }

    /** A server, or a workstation that takes registered modules: both have the controller of a server. */
    public static boolean concerns(Situation situation) {
        Board board = situation.board();
        if (board.form() == BoardForm.SERVER) {
            return true;
        }
        for (int i = 0; i < board.takes().size(); i++) {
            Takes takes = board.takes().get(i);
            if (takes.bufferings().contains(Buffering.REGISTERED)
                    || takes.bufferings().contains(Buffering.LOAD_REDUCED)) {
                return true;
            }
        }
        return false;
    }

    /** Whether every socket of an installed processor is filled. */
    public static boolean isFull(Situation situation) {
        Board board = situation.board();
        int sockets = 0;
        for (int i = 0; i < board.slots().size(); i++) {
            Slot slot = board.slots().get(i);
            sockets += slot.isSocket()
                    && board.channel(slot.channel()).processor() <= situation.setup().processors() ? 1 : 0;
        }
        return situation.filled().size() == sockets;
    }
}
