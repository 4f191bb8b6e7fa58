package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.unit.Capacity;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.ModuleText;

/** Small boards of several families, and modules and fillers that fit them, nearly fit them, or don't. */
enum Worlds {
    DDR4("""
            channel A 1 A1 A2
            channel B 1 B1 B2
            takes DDR4 DIMM unbuffered ecc=IGNORED largest=%s volts=1200
            total 32GB
            order A2 B2 A1 B1
            fill %s
            """,
            List.of("8GB", "16GB"),
            List.of("required", "largestFirst", "sets=2", "sets=1"),
            "4GB DDR4-2666 DIMM 1Rx8 4096Mbit non-ECC unbuffered 1200mV",
            "8GB DDR4-2666 DIMM 1Rx8 8192Mbit non-ECC unbuffered 1200mV",
            "8GB DDR4-2400 DIMM 2Rx8 4096Mbit non-ECC unbuffered 1200mV",
            "16GB DDR4-3200 DIMM 2Rx8 8192Mbit non-ECC unbuffered 1200mV",
            "8GB DDR4 DIMM",
            "8GB DDR3-1600 DIMM 2Rx8 4096Mbit non-ECC unbuffered 1500mV"),
    DDR3("""
            channel A 1 A1 A2
            channel B 1 B1 B2
            takes DDR3 DIMM unbuffered ecc=IGNORED largest=%s volts=1500
            total 16GB
            order A1 B1 A2 B2
            fill %s
            """,
            List.of("4GB", "8GB"),
            List.of("required", "largestFirst", "sets=2", "sets=1"),
            "2GB DDR3-1333 DIMM 1Rx8 2048Mbit non-ECC unbuffered 1500mV",
            "4GB DDR3-1600 DIMM 2Rx8 2048Mbit non-ECC unbuffered 1500mV",
            "4GB DDR3-1333 DIMM 2Rx8 2048Mbit non-ECC unbuffered 1500mV",
            "8GB DDR3-1600 DIMM 2Rx8 4096Mbit non-ECC unbuffered 1350/1500mV",
            "4GB DDR3 DIMM",
            "8GB DDR4-2666 DIMM 1Rx8 8192Mbit non-ECC unbuffered 1200mV"),
    RDRAM("""
            channel A 1 RIMM1 RIMM3
            channel B 1 RIMM2 RIMM4
            takes RDRAM RIMM_184 ecc=USED largest=%s
            bank 0 RIMM1 RIMM2
            bank 1 RIMM3 RIMM4
            fill %s blank=CONTINUITY_184
            """,
            List.of("256MB", "512MB"),
            List.of("required", "sets=1"),
            "64MB RDRAM-800 RIMM_184 x16 128Mbit non-ECC 45ns",
            "128MB RDRAM-800 RIMM_184 x16 128Mbit non-ECC 45ns",
            "128MB RDRAM-600 RIMM_184 x16 128Mbit non-ECC 53ns",
            "256MB RDRAM-800 RIMM_184 x16 256Mbit non-ECC 45ns",
            "256MB RDRAM-800 RIMM_184 x18 256Mbit ECC 45ns",
            "256MB RDRAM RIMM_184"),
    RDRAM_ONE_CHANNEL("""
            channel A 1 R1 R2 R3
            takes RDRAM RIMM_184 ecc=IGNORED largest=%s
            fill %s blank=CONTINUITY_184
            """,
            List.of("256MB", "512MB"),
            List.of("required", "sets=1"),
            "64MB RDRAM-800 RIMM_184 x16 128Mbit non-ECC 45ns",
            "128MB RDRAM-800 RIMM_184 x16 128Mbit non-ECC 45ns",
            "256MB RDRAM-700 RIMM_184 x16 128Mbit non-ECC 45ns",
            "256MB RDRAM-800 RIMM_184 x16 256Mbit non-ECC 45ns"),
    SIMM("""
            channel A 1 1 2 3 4
            takes EDO SIMM_72 ecc=IGNORED largest=%s slowest=70ns
            takes FPM SIMM_72 ecc=IGNORED largest=%1$s slowest=70ns
            bus 64
            bank 0 1 2
            bank 1 3 4
            fill %s
            """,
            List.of("16MB", "32MB"),
            List.of("required", "sets=1"),
            "8MB FPM SIMM_72 non-ECC 70ns tin",
            "8MB EDO SIMM_72 non-ECC 60ns tin",
            "16MB EDO SIMM_72 non-ECC 60ns tin",
            "16MB EDO SIMM_72 non-ECC 80ns tin",
            "16MB FPM SIMM_72 parity 60ns gold",
            "32MB EDO SIMM_72 non-ECC 60ns tin"),
    SIMM_BANKS_OF_FOUR("""
            channel A 1 1 2 3 4 5 6 7 8
            takes FPM SIMM_30 ecc=IGNORED largest=%s slowest=80ns
            bus 32
            bank 0 1 2 3 4
            bank 1 5 6 7 8
            fill %s
            """,
            List.of("4MB", "16MB"),
            List.of("required", "sets=1"),
            "1MB FPM SIMM_30 non-ECC 70ns tin",
            "4MB FPM SIMM_30 non-ECC 70ns tin",
            "4MB FPM SIMM_30 parity 80ns gold",
            "4MB FPM SIMM_30 non-ECC 60ns tin"),
    RDRAM_EIGHT("""
            channel A 1 1 3 5 7
            channel B 1 2 4 6 8
            takes RDRAM RIMM_184 ecc=IGNORED largest=%s
            bank 0 1 2 3 4
            bank 1 5 6 7 8
            fill %s blank=CONTINUITY_184
            """,
            List.of("256MB", "512MB"),
            List.of("required", "sets=1"),
            "64MB RDRAM-800 RIMM_184 x16 128Mbit non-ECC 45ns",
            "128MB RDRAM-800 RIMM_184 x16 256Mbit non-ECC 45ns");

    /** With more sockets not every population is looked at, only those with whole banks. */
    private static final int FEW_SOCKETS = 4;

    private final String board;
    private final List<String> sizes;
    private final List<String> fills;
    private final List<String> modules;

    Worlds(String board, List<String> sizes, List<String> fills, String... modules) {
        this.board = board;
        this.sizes = sizes;
        this.fills = fills;
        this.modules = List.of(modules);
    }

    /** A board with chosen limits. */
    Board board(String id, Random random) {
        Board made = BoardText.board("none", board.formatted(pick(sizes, random), pick(fills, random)));
        return new Board(new BoardId(id), made.maker(), id, made.aliases(), made.form(), made.processorSockets(),
                made.processors(), made.channels(), made.slots(), made.takes(), made.largestTotal(),
                made.addressable(), made.fill(), made.banks(), made.redundancies(), made.interleave(),
                made.rateLimits(), made.notes(), made.source(), made.sources());
    }

    /** So many of its modules, and its filler where it has one. */
    List<Piece> pieces(int count, Board board, Random random) {
        List<String> shuffled = new ArrayList<>(modules);
        Collections.shuffle(shuffled, random);
        List<Piece> pieces = new ArrayList<>();
        shuffled.stream().limit(count).map(ModuleText::module).forEach(pieces::add);
        board.fill().blank().ifPresent(pieces::add);
        return pieces;
    }

    /** Whether every population can be looked at. */
    boolean isSmall() {
        return board("size", new Random(0)).sockets().size() <= FEW_SOCKETS;
    }

    /** What a socket of each bank holds, where whole banks hold one thing; else one thing for each socket. */
    static Piece[] population(Board board, List<Piece> pieces, Random random) {
        Map<Object, Optional<Piece>> contents = new HashMap<>();
        boolean isWhole = board.sockets().size() > FEW_SOCKETS;
        Piece[] now = new Piece[board.sockets().size()];
        for (int i = 0; i < now.length; i++) {
            String label = board.sockets().get(i).label();
            Object bank = board.banks().list().stream()
                    .filter(each -> isWhole && each.slots().contains(label))
                    .<Object>map(Bank::name).findFirst().orElse(i);
            now[i] = contents.computeIfAbsent(bank, each -> random.nextInt(3) == 0
                    ? Optional.empty() : Optional.of(pick(pieces, random))).orElse(null);
        }
        return now;
    }

    /** An amount that its machines may have to reach: one to eight times its smallest module. */
    Capacity amount(Random random) {
        Capacity smallest = modules.stream().map(ModuleText::module).map(ModuleKind::capacity)
                .min(Comparator.naturalOrder()).orElseThrow();
        return smallest.times(1 + random.nextInt(8));
    }

    static <T> T pick(List<T> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }

    static Worlds pick(Random random, Worlds... worlds) {
        return pick(Arrays.asList(worlds), random);
    }
}
