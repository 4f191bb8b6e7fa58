package slotledger.app.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.app.ReadingOrder;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.machine.Population;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.BoardMatrix.Row;
import slotledger.model.matrix.KnownFrom;
import slotledger.model.module.ModuleKind;
import slotledger.model.task.Progress;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.Tryouts;

/** Asks the rules about module kinds in every slot of a board. */
final class MatrixMaker {

    private final MemoryRules rules;
    private final Setup setup;

    MatrixMaker(MemoryRules rules, Board board) {
        this.rules = rules;
        this.setup = Setup.of(board, Population.empty(board));
    }

    BoardMatrix make(Map<ModuleKind, Set<KnownFrom>> kinds, Progress progress) {
        List<Column> columns = columns();
        List<Row> rows = new ArrayList<>();
        for (Map.Entry<ModuleKind, Set<KnownFrom>> entry : kinds.entrySet()) {
            progress.check();
            progress.step("Judging modules", (double) rows.size() / kinds.size());
            rows.add(new Row(entry.getKey(), entry.getValue(), cells(columns, entry.getKey())));
        }
        return new BoardMatrix(setup.board(), columns, rows);
    }

    private List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        setup.board().slots().forEach(slot -> columns.add(new Column(Optional.of(slot))));
        if (setup.board().sockets().size() > 1) {
            columns.add(new Column(Optional.empty()));
        }
        return columns;
    }

    private List<Optional<Cell>> cells(List<Column> columns, ModuleKind kind) {
        Map<Population, Weight> weighed = new LinkedHashMap<>();
        for (Population population : populations(kind)) {
            weighed.put(population, rules.weigh(setup.with(population)));
        }
        Map<Population, Cell> judged = new HashMap<>();
        List<Optional<Cell>> cells = new ArrayList<>();
        for (Column column : columns) {
            cells.add(column.isOpen()
                    ? Optional.of(judged.computeIfAbsent(best(column, weighed), this::cell))
                    : Optional.empty());
        }
        return cells;
    }

    /** Those for any socket, fewest modules first: what fills a row for one socket shows the others of the row too. */
    private List<Population> populations(ModuleKind kind) {
        return Tryouts.sockets(setup).stream()
                .flatMap(socket -> Tryouts.of(setup, socket, kind).stream())
                .distinct()
                .sorted(Comparator.comparingInt(population -> filled(population).size()))
                .toList();
    }

    private Population best(Column column, Map<Population, Weight> weighed) {
        List<String> wanted = column.slot().map(slot -> List.of(slot.label())).orElse(Tryouts.sockets(setup));
        Map.Entry<Population, Weight> best = null;
        for (Map.Entry<Population, Weight> each : weighed.entrySet()) {
            if (filled(each.getKey()).containsAll(wanted)
                    && (best == null || each.getValue().compareTo(best.getValue()) < 0)) {
                best = each;
            }
        }
        return best.getKey();
    }

    private Cell cell(Population population) {
        Verdict verdict = rules.judge(setup.with(population));
        return new Cell(filled(population), verdict, ReadingOrder.first(verdict));
    }

    private List<String> filled(Population population) {
        return setup.board().sockets().stream()
                .map(Slot::label)
                .filter(label -> population.in(label).module().isPresent())
                .toList();
    }
}
