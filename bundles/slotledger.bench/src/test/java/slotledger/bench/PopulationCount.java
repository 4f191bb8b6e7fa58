package slotledger.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.standard.StandardRules;

/**
 * Weighs every population of a server with sixteen sockets, where each is empty or holds one of two kinds, and checks
 * how many are allowed against a count that knows no rules: a printed row of n sockets is filled in pairs alike, which
 * are n / 2 choices of a kind.
 */
public final class PopulationCount {

    private static final double NANOS = 1e9;

    private PopulationCount() {
    }

    /**
     * Counts.
     *
     * @param arguments how many sockets are filled in all ways, from the last; 16 where there is none
     */
    public static void main(String[] arguments) {
        run(arguments.length > 0 && arguments[0].matches("\\d+") ? Integer.parseInt(arguments[0]) : 16);
    }

    static List<String> run(int sockets) {
        Board board = RuleBoards.server();
        Search search = new Search(board, sockets);
        long start = System.nanoTime();
        search.from(0);
        double seconds = (System.nanoTime() - start) / NANOS;
        long all = search.counts.values().stream().mapToLong(Long::longValue).sum();
        long blocked = search.counts.getOrDefault(Weight.BLOCKS, 0L);
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "%,d populations of a server with 16 sockets in %.0f s, %.2f us each", all,
                seconds, seconds * 1e6 / all));
        search.counts.forEach((weight, count) ->
                lines.add(String.format(Locale.ROOT, "  %-8s %,12d", weight.text(), count)));
        lines.add(String.format(Locale.ROOT, "  allowed  %,12d, by the printed rows alone %,d", all - blocked,
                byTheRows(board)));
        lines.forEach(System.out::println);
        if (sockets == board.slots().size() && all - blocked != byTheRows(board)) {
            throw new IllegalStateException("The rules and the printed rows disagree.");
        }
        return lines;
    }

    /** Every row is filled in pairs, each of one of two kinds. */
    private static long byTheRows(Board board) {
        long allowed = 0;
        for (FillRow row : board.fill().table()) {
            allowed += 1L << row.slots().size() / 2;
        }
        return allowed;
    }

    /** Goes through all fillings; the first sockets stay empty where only some are asked for. */
    private static final class Search {

        private final Map<Weight, Long> counts = new EnumMap<>(Weight.class);
        private final MemoryRules rules = StandardRules.create();
        private final Setup base;
        private final String[] labels;
        private final SlotContent[] choices;
        private final Map<String, SlotContent> contents = new LinkedHashMap<>();

        private Search(Board board, int sockets) {
            base = Setup.of(board, Population.empty(board));
            board.slots().forEach(slot -> contents.put(slot.label(), SlotContent.EMPTY));
            labels = board.slots().stream().skip(board.slots().size() - sockets).map(slot -> slot.label())
                    .toArray(String[]::new);
            choices = new SlotContent[] {SlotContent.EMPTY, SlotContent.of(RuleBoards.module(board, 16, 1)),
                SlotContent.of(RuleBoards.module(board, 32, 2))};
        }

        private void from(int next) {
            if (next == labels.length) {
                counts.merge(rules.weigh(base.with(new Population(contents))), 1L, Long::sum);
                return;
            }
            for (SlotContent choice : choices) {
                contents.put(labels[next], choice);
                from(next + 1);
            }
        }
    }
}
