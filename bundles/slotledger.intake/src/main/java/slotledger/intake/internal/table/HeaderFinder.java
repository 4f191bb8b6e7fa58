package slotledger.intake.internal.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.value.CapacityUnit;
import slotledger.intake.internal.value.Texts;

/**
 * Finds the headings among the first rows of a sheet: the one to three rows in which the most fields are recognised.
 */
final class HeaderFinder {

    /** A heading is seldom longer; a sentence that happens to be one word of ours is no heading. */
    private static final int LONGEST = 80;
    private static final int DEEPEST = 3;

    private final Headings headings;
    private final int least;

    /**
     * Looks for headings.
     *
     * @param least how many fields must be recognised
     */
    HeaderFinder(Headings headings, int least) {
        this.headings = headings;
        this.least = least;
    }

    /** A row of the sheet. */
    record SheetRow(int number, List<Cell> cells) {}

    /** Headings found; {@code first} and {@code last} are places in the list of rows. */
    record Header(int first, int last, List<Column> columns) {}

    Optional<Header> find(List<SheetRow> rows) {
        Header best = null;
        double bestScore = least - 0.5;
        for (int last = 0; last < rows.size(); last++) {
            for (int depth = 1; depth <= DEEPEST && depth <= last + 1; depth++) {
                int first = last - depth + 1;
                if (rows.get(last).number() - rows.get(first).number() >= DEEPEST) {
                    break;
                }
                List<Column> columns = columns(rows.subList(first, last + 1));
                double score = score(columns) - 0.1 * (depth - 1);
                if (score > bestScore) {
                    best = new Header(first, last, columns);
                    bestScore = score;
                }
            }
        }
        return Optional.ofNullable(best).map(header -> earlier(rows, header).orElse(header));
    }

    /** Where a sheet has two tables, the lower one may have the better headings, but the upper one comes first. */
    private Optional<Header> earlier(List<SheetRow> rows, Header best) {
        for (int i = 0; i < best.first() - 1; i++) {
            Optional<List<Column>> columns = again(rows.get(i));
            if (columns.isPresent()) {
                return Optional.of(new Header(i, i, columns.get()));
            }
        }
        return Optional.empty();
    }

    /** Whether a single row in the middle of a sheet is the heading of another table. */
    Optional<List<Column>> again(SheetRow row) {
        int misses = 0;
        for (Cell cell : row.cells()) {
            misses += cell.type() == Cell.Type.TEXT && headings.mayMean(cell.text()) ? 0 : 1;
            if (cell.type() != Cell.Type.TEXT || misses * 5 > row.cells().size() * 2) {
                return Optional.empty();
            }
        }
        List<Column> columns = columns(List.of(row));
        return score(columns) >= Math.max(3, least) && score(columns) * 5 >= columns.size() * 3
                ? Optional.of(columns) : Optional.empty();
    }

    private static double score(List<Column> columns) {
        Set<String> seen = new HashSet<>();
        double score = 0;
        for (Column column : columns) {
            if (column.meaning().isPresent() && seen.add(column.meaning().get().toString())) {
                score += 1;
            }
        }
        return score;
    }

    private List<Column> columns(List<SheetRow> rows) {
        List<TreeMap<Integer, String>> levels = new ArrayList<>();
        Set<Integer> numbers = new TreeSet<>();
        for (SheetRow row : rows) {
            TreeMap<Integer, String> level = new TreeMap<>();
            for (Cell cell : row.cells()) {
                String text = Texts.tidy(Texts.withoutInvisible(cell.text()));
                if (!text.isEmpty() && text.length() <= LONGEST) {
                    level.put(cell.column(), text);
                    numbers.add(cell.column());
                }
            }
            levels.add(level);
        }
        List<Column> columns = new ArrayList<>();
        Set<Meaning> used = new HashSet<>();
        for (int number : numbers) {
            columns.add(column(number, levels, used));
        }
        return columns;
    }

    private Column column(int number, List<TreeMap<Integer, String>> levels, Set<Meaning> used) {
        List<String> parts = new ArrayList<>();
        for (int level = 0; level < levels.size(); level++) {
            String text = levels.get(level).get(number);
            if (text == null && level < levels.size() - 1 && hasBelow(number, level, levels)) {
                text = group(levels.get(level), number);
            }
            if (text != null) {
                parts.add(text);
            }
        }
        Optional<Meaning> meaning = Optional.empty();
        for (int from = 0; from < parts.size(); from++) {
            Optional<Meaning> next = headings.meaning(String.join(" ", parts.subList(from, parts.size())));
            if (meaning.isEmpty() || isSameField(meaning, next)) {
                meaning = next;
            }
        }
        if (meaning.isPresent() && !used.add(meaning.get()) && !meaning.get().field().repeats()) {
            meaning = Optional.empty();
        }
        Optional<CapacityUnit> unit = Optional.empty();
        for (int from = parts.size() - 1; from >= 0 && unit.isEmpty(); from--) {
            unit = CapacityUnit.ofHeading(parts.get(from));
        }
        return new Column(number, String.join(" / ", parts), meaning, unit);
    }

    /** "Memory" over "Slot 1" is a slot of that name either way; then the lower heading alone names it. */
    private static boolean isSameField(Optional<Meaning> one, Optional<Meaning> other) {
        return one.isPresent() && other.isPresent() && one.get().field() == other.get().field();
    }

    private static boolean hasBelow(int number, int level, List<TreeMap<Integer, String>> levels) {
        return levels.subList(level + 1, levels.size()).stream().anyMatch(below -> below.containsKey(number));
    }

    /**
     * The heading of the group a column belongs to. A merged cell holds its text on the left; which cells are merged
     * is known only at the end of a sheet, so the nearest heading on the left counts.
     */
    private static String group(TreeMap<Integer, String> level, int number) {
        Map.Entry<Integer, String> left = level.floorEntry(number);
        return left == null ? null : left.getValue();
    }
}
