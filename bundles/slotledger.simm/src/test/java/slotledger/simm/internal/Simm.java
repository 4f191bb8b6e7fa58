package slotledger.simm.internal;

import slotledger.model.board.Board;
import slotledger.rules.fixture.BoardText;

/** Boards of the tests. */
final class Simm {

    /** A 486 board with two banks of four 30-pin sockets. */
    static final Board BOARD_486 = BoardText.board("common practice", """
            channel A 1 A1 A2 A3 A4 B1 B2 B3 B4
            takes FPM SIMM_30 ecc=USED slowest=70ns contacts=tin
            bus 32
            bank 0 A1 A2 A3 A4
            bank 1 B1 B2 B3 B4
            """);

    /** A Pentium board with two banks of two 72-pin sockets that takes FPM or EDO. */
    static final Board PENTIUM = BoardText.board("common practice", """
            channel A 1 S1 S2 S3 S4
            takes FPM SIMM_72 ecc=IGNORED
            takes EDO SIMM_72 ecc=IGNORED
            bus 64
            bank 0 S1 S2
            bank 1 S3 S4
            """);

    private Simm() {
    }
}
