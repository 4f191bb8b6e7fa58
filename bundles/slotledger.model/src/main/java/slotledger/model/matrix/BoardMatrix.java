package slotledger.model.matrix;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.module.ModuleKind;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/**
 * Which module kind goes into which slot of a board, and why. Nothing but that kind is in the sockets; all processors
 * are installed, and which processor and operating system is open.
 *
 * @param board   the board
 * @param columns every slot in the board's order, then all sockets together where there are several
 * @param rows    the module kinds, by generation, form, capacity and rate
 */
public record BoardMatrix(Board board, List<Column> columns, List<Row> rows) {

    public BoardMatrix {
        Objects.requireNonNull(board, "board");
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new IllegalArgumentException("The row of %s must have %d cells, one for each column, not %d."
                        .formatted(row.kind(), columns.size(), row.cells().size()));
            }
        }
    }

    /** Rows whose kind goes into no socket at all, or the others; in the order of the matrix. */
    public List<Row> rows(boolean blockedEverywhere) {
        return rows.stream().filter(row -> (row.best() == Weight.BLOCKS) == blockedEverywhere).toList();
    }

    /**
     * What modules are put into.
     *
     * @param slot the slot; empty for all sockets together
     */
    public record Column(Optional<Slot> slot) {

        public Column {
            Objects.requireNonNull(slot, "slot");
        }

        /** "DIMM A1", or "all sockets". */
        public String name() {
            return slot.map(Slot::label).orElse("all sockets");
        }

        /** Whether a module can be put there at all: not where memory is soldered, nor in what is not wired. */
        public boolean isOpen() {
            return slot.isEmpty() || slot.get().isSocket();
        }

        /** Why nothing can be put there; empty for a socket. */
        public String closed() {
            return slot.map(known -> switch (known.use()) {
                case SOCKET -> "";
                case SOLDERED -> "soldered" + known.soldered().map(kind -> ", " + kind.capacity()).orElse("");
                case DEAD -> "dead, not wired";
            }).orElse("");
        }
    }

    /**
     * One module kind.
     *
     * @param kind  the module
     * @param from  where the project knows it from
     * @param cells one for each column; empty where nothing can be put
     */
    public record Row(ModuleKind kind, Set<KnownFrom> from, List<Optional<Cell>> cells) {

        public Row {
            Objects.requireNonNull(kind, "kind");
            from = Set.copyOf(from);
            cells = List.copyOf(cells);
        }

        /** The lightest weight of any cell; blocks where there is none. */
        public Weight best() {
            return cells.stream().flatMap(Optional::stream).map(Cell::weight).min(Weight::compareTo)
                    .orElse(Weight.BLOCKS);
        }
    }

    /**
     * The best that can be said of a kind in a slot: of the usual ways to have it there, the lightest one with the
     * fewest modules.
     *
     * @param filled  labels of the sockets that hold the kind, in the board's order
     * @param verdict what the rules say then
     * @param why     the reason to read first; empty where everything passes
     */
    public record Cell(List<String> filled, Verdict verdict, Optional<Reason> why) {

        public Cell {
            filled = List.copyOf(filled);
            Objects.requireNonNull(verdict, "verdict");
            Objects.requireNonNull(why, "why");
            if (filled.isEmpty()) {
                throw new IllegalArgumentException("A cell must fill at least one socket.");
            }
            if (why.isPresent() == (verdict.weight() == Weight.PASSES)) {
                throw new IllegalArgumentException(
                        "A cell must say why where its weight (%s) isn't passing, and only there."
                                .formatted(verdict.weight()));
            }
        }

        public Weight weight() {
            return verdict.weight();
        }

        /** How it runs; meaningful where it isn't blocked. */
        public Operation runs() {
            return verdict.operation();
        }

        /** The fact nobody knows, where the weight is unknown. */
        public Optional<MissingFact> missing() {
            return why.flatMap(Reason::missing);
        }
    }
}
