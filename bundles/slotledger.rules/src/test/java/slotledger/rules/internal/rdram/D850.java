package slotledger.rules.internal.rdram;

import slotledger.model.board.Board;
import slotledger.rules.fixture.BoardText;

/** Boards of the tests of RDRAM rules. */
final class D850 {

    /** Intel Desktop Board D850GB manual, section 1.5.3: two channels, banks of two. */
    static final Board GB = BoardText.board("Intel Desktop Board D850GB manual", """
            channel A 1 RIMM1 RIMM3
            channel B 1 RIMM2 RIMM4
            takes RDRAM RIMM_184 ecc=USED
            bank 0 RIMM1 RIMM2
            bank 1 RIMM3 RIMM4
            fill blank=CONTINUITY_184
            """);

    /** The same without named banks: the sockets at one position of both channels make one. */
    static final Board UNNAMED = BoardText.board("none", """
            channel A 1 RIMM1 RIMM3
            channel B 1 RIMM2 RIMM4
            takes RDRAM RIMM_184 ecc=USED
            """);

    /** HP x4000: banks of four sockets for matched pairs; the other two of a bank take continuity modules. */
    static final Board X4000 = BoardText.board("HP x4000", """
            channel A 1 R1 R3 R5 R7
            channel B 1 R2 R4 R6 R8
            takes RDRAM RIMM_184
            bank 0 R1 R2 R3 R4
            bank 1 R5 R6 R7 R8
            fill sets=2
            """);

    /** One channel with three sockets. */
    static final Board ONE_CHANNEL = BoardText.board("none", """
            channel A 1 R1 R2 R3
            takes RDRAM RIMM_184 slowest=45ns
            """);

    /** A board with two sockets for 232-pin RIMMs, each of which carries both channels. */
    static final Board WIDE = BoardText.board("none", """
            channel A 1 spans=2 R1 R2
            takes RDRAM RIMM_232
            """);

    private D850() {
    }
}
