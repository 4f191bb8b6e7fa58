package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.BoardMatrix.Row;
import slotledger.model.module.ModuleKind;

/** A matrix as facts; matrix.schema.json describes them. */
final class MatrixFacts {

    private static final String FORMAT = "slotledger-matrix";
    private static final int VERSION = 1;

    private MatrixFacts() {
    }

    static Map<String, Object> of(BoardMatrix matrix) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("format", FORMAT);
        facts.put("version", VERSION);
        facts.put("board", board(matrix.board()));
        facts.put("columns", matrix.columns().stream().map(column -> column(matrix.board(), column)).toList());
        List<Object> rows = new ArrayList<>();
        for (Row row : matrix.rows()) {
            rows.add(row(matrix, row));
        }
        facts.put("rows", rows);
        return facts;
    }

    private static Map<String, Object> board(Board board) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", board.id().value());
        facts.put("name", board.name());
        facts.put("source", board.source().toString());
        return facts;
    }

    private static Map<String, Object> column(Board board, Column column) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("name", column.name());
        facts.put("use", column.slot().map(slot -> word(slot.use())).orElse("all"));
        column.slot().map(Slot::channel).ifPresent(channel -> {
            facts.put("channel", channel);
            facts.put("processor", board.channel(channel).processor());
        });
        column.slot().flatMap(Slot::soldered).ifPresent(soldered -> facts.put("soldered", soldered.toString()));
        return facts;
    }

    private static Map<String, Object> row(BoardMatrix matrix, Row row) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("module", row.kind().toString());
        facts.put("facts", kind(row.kind()));
        facts.put("from", row.from().stream().sorted().map(MatrixFacts::word).toList());
        facts.put("best", row.best().text());
        List<Object> cells = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            cells.add(cell(matrix.columns().get(i), row.cells().get(i)));
        }
        facts.put("cells", cells);
        return facts;
    }

    private static Map<String, Object> cell(Column column, Optional<Cell> cell) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("column", column.name());
        facts.put("tried", cell.isPresent());
        cell.ifPresent(tried -> {
            facts.put("filled", tried.filled());
            tried.why().ifPresent(reason -> facts.put("why", VerdictText.facts(reason)));
            facts.put("verdict", VerdictText.facts(tried.verdict()));
        });
        return facts;
    }

    /** What is known of a module; what is not known is left out. */
    static Map<String, Object> kind(ModuleKind kind) {
        Map<String, Object> facts = new LinkedHashMap<>();
        kind.generation().ifPresent(known -> facts.put("generation", known.text()));
        kind.form().ifPresent(known -> facts.put("form", known.text()));
        facts.put("capacity", kind.capacity().toString());
        kind.ranks().ifPresent(known -> facts.put("ranks", known));
        kind.chipWidth().ifPresent(known -> facts.put("chipWidth", known.text()));
        kind.chipSize().ifPresent(known -> facts.put("chipSize", known.toString()));
        kind.stack().ifPresent(known -> facts.put("stack", known));
        kind.errorCheck().ifPresent(known -> facts.put("errorCheck", known.text()));
        kind.checkBits().ifPresent(known -> facts.put("checkBits", known));
        kind.buffering().ifPresent(known -> facts.put("buffering", known.text()));
        kind.rate().ifPresent(known -> facts.put("rate", known.megatransfers()));
        kind.casLatency().ifPresent(known -> facts.put("casLatency", known));
        if (!kind.voltages().isEmpty()) {
            facts.put("millivolts", kind.voltages().stream().map(each -> each.millivolts()).sorted().toList());
        }
        kind.accessTime().ifPresent(known -> facts.put("accessTime", known.toString()));
        kind.contacts().ifPresent(known -> facts.put("contacts", known.text()));
        return facts;
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }
}
