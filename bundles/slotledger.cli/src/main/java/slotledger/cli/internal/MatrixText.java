package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.BoardMatrix.Row;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;

/** A matrix as a grid that fits a terminal, and below it what stands in the way of whom. */
final class MatrixText {

    private static final int NUMBER = 4;
    private static final int LEAST_NAME = 36;
    private static final int WORD = 10;
    private static final int SIGN = 4;

    private final BoardMatrix matrix;
    private final List<Row> rows;
    private final boolean words;
    private final int width;

    MatrixText(BoardMatrix matrix) {
        this.matrix = matrix;
        rows = new ArrayList<>(matrix.rows(false));
        rows.addAll(matrix.rows(true));
        int longest = matrix.columns().stream().mapToInt(column -> heading(column).length()).max().orElse(0) + 1;
        words = Math.max(WORD, longest) * matrix.columns().size() <= room();
        width = Math.max(words ? WORD : SIGN, longest);
    }

    void lines(Answer.Builder answer) {
        answer.wrapped("Board", matrix.board().name() + "  (" + matrix.board().source() + ")");
        answer.wrapped("Modules", "%d %s: %d go in somewhere, %d unknown, %d go in nowhere".formatted(rows.size(),
                rows.size() == 1 ? "kind" : "kinds",
                count(Weight.PASSES, Weight.CAUTION, Weight.LOWERS), count(Weight.UNKNOWN), count(Weight.BLOCKS)));
        matrix.columns().stream().filter(column -> !column.isOpen())
                .forEach(column -> answer.wrapped("", column.name() + ": " + column.closed() + "; nothing goes in"));
        answer.wrapped("Cells", (words ? "" : "+ passes, ! caution, - lowers, ? unknown, x blocks; ")
                + "a number: so many such modules had to be in, and nothing else");
        List<Column> open = matrix.columns().stream().filter(Column::isOpen).toList();
        int perBlock = Math.max(1, room() / width);
        int blocks = (open.size() + perBlock - 1) / perBlock;
        for (int block = 0; block < blocks; block++) {
            int from = open.size() * block / blocks;
            int to = open.size() * (block + 1) / blocks;
            grid(answer, open.subList(from, to), block == 0 ? rows : matrix.rows(false));
        }
        why(answer);
    }

    private static int room() {
        return Wrapped.WIDTH - NUMBER - LEAST_NAME - 2;
    }

    private void grid(Answer.Builder answer, List<Column> columns, List<Row> shown) {
        int name = Wrapped.WIDTH - NUMBER - 1 - width * columns.size();
        StringBuilder heads = new StringBuilder(" ".repeat(NUMBER + 1)).append(Wrapped.cell("Module", name));
        columns.forEach(column -> heads.append(Wrapped.cell(heading(column), width)));
        answer.line("").line(heads.toString().stripTrailing());
        for (int i = 0; i < shown.size(); i++) {
            Row row = shown.get(i);
            StringBuilder line = new StringBuilder(("%" + NUMBER + "d ").formatted(i + 1))
                    .append(Wrapped.cell(row.kind().toString(), name - 1)).append(' ');
            if (row.best() == Weight.BLOCKS) {
                line.append(words ? Weight.BLOCKS.text() : sign(Weight.BLOCKS)).append(": ")
                        .append(row.cells().stream().flatMap(Optional::stream).findFirst()
                                .flatMap(Cell::why).map(Reason::rule).orElse("no socket"));
            } else {
                columns.forEach(column -> line.append(Wrapped.cell(text(cell(row, column)), width)));
            }
            answer.line(line.toString().stripTrailing());
        }
    }

    private static String heading(Column column) {
        return column.slot().isPresent() ? column.name() : "all";
    }

    private Cell cell(Row row, Column column) {
        return row.cells().get(matrix.columns().indexOf(column)).orElseThrow();
    }

    private String text(Cell cell) {
        String word = words ? cell.weight().text() : sign(cell.weight());
        return cell.filled().size() == 1 ? word : word + (words ? " " : "") + cell.filled().size();
    }

    private static String sign(Weight weight) {
        return switch (weight) {
            case PASSES -> "+";
            case CAUTION -> "!";
            case LOWERS -> "-";
            case UNKNOWN -> "?";
            case BLOCKS -> "x";
        };
    }

    private long count(Weight... weights) {
        return rows.stream().filter(row -> List.of(weights).contains(row.best())).count();
    }

    /** One entry for each rule that says something, with the modules it speaks of and one sentence as example. */
    private void why(Answer.Builder answer) {
        Map<Weight, Map<String, List<Integer>>> kinds = new TreeMap<>();
        Map<String, Reason> examples = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            int number = i + 1;
            rows.get(i).cells().stream().flatMap(Optional::stream).map(Cell::why).flatMap(Optional::stream)
                    .forEach(reason -> {
                        List<Integer> numbers = kinds.computeIfAbsent(reason.weight(), one -> new TreeMap<>())
                                .computeIfAbsent(reason.rule(), one -> new ArrayList<>());
                        if (!numbers.contains(number)) {
                            numbers.add(number);
                        }
                        examples.putIfAbsent(reason.weight() + reason.rule(), reason);
                    });
        }
        kinds.forEach((weight, rules) -> rules.forEach((rule, numbers) -> {
            answer.line("");
            Wrapped.behind("%-9s".formatted(weight.text()), rule + ": module " + ranges(numbers) + ". For example:")
                    .forEach(answer::line);
            VerdictText.reason(examples.get(weight + rule), " ".repeat(9)).forEach(answer::line);
        }));
    }

    /** "1-4, 7". */
    static String ranges(List<Integer> numbers) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < numbers.size(); i++) {
            int first = numbers.get(i);
            int last = first;
            while (i + 1 < numbers.size() && numbers.get(i + 1) == last + 1) {
                last = numbers.get(++i);
            }
            text.append(text.isEmpty() ? "" : ", ").append(first)
                    .append(last == first ? "" : (last == first + 1 ? ", " : "-") + last);
        }
        return text.toString();
    }
}
