package slotledger.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import slotledger.model.board.Board;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.standard.StandardRules;

/** What holds for any population. */
class MonotonyTest {

    private static final String FRAME = """
            channel A 1 A1 A2
            channel B 1 B1 B2
            """;

    private static final List<String> LIMITS = List.of(
            "largest=4GB", "smallest=4GB", "widths=x8", "ranks=1", "channelRanks=2", "volts=1350", "rates=1600",
            "chip=..4096", "unbuffered");

    @Provide
    Arbitrary<List<String>> modules() {
        Arbitrary<String> capacity = Arbitraries.of("2GB", "4GB", "8GB", "16GB");
        Arbitrary<String> rest = Arbitraries.of(
                " DDR3-1600 DIMM unbuffered non-ECC 2Rx8 1350/1500mV", " DDR3-1333 DIMM unbuffered ECC 1Rx8",
                " DDR3 DIMM registered ECC 2Rx4 1500mV", " DDR3-1600 DIMM", " DDR4-2400 DIMM unbuffered");
        Arbitrary<String> module = Combinators.combine(capacity, rest).as(String::concat);
        return Arbitraries.frequencyOf(
                        Tuple.of(4, module), Tuple.of(2, Arbitraries.of("-")),
                        Tuple.of(1, Arbitraries.of("?")))
                .list().ofSize(4);
    }

    private static String population(List<String> modules) {
        return "A1: %s; A2: %s; B1: %s; B2: %s".formatted(modules.toArray());
    }

    /** Adding a limit of one way, or of the board as a whole, never turns a no into a yes. */
    @Property(tries = 300)
    void oneMoreLimitNeverAllowsMore(@ForAll("modules") List<String> modules, @ForAll long seed) {
        List<String> limits = new ArrayList<>(LIMITS);
        Collections.shuffle(limits, new Random(seed));
        String takes = "takes DDR3 DIMM";
        Weight before = weigh(FRAME + takes, modules);
        for (String limit : limits) {
            takes += " " + limit;
            Weight after = weigh(FRAME + takes, modules);
            assertTrue(before != Weight.BLOCKS || after == Weight.BLOCKS, takes);
            before = after;
        }
        for (String whole : List.of(
                "total 16GB", "order A1 B1 A2 B2", "fill required sets=2", "processor P 1600 8GB")) {
            takes += "\n" + whole;
            Weight after = weigh(FRAME + takes, modules);
            assertTrue(before != Weight.BLOCKS || after == Weight.BLOCKS, takes);
            before = after;
        }
    }

    private static Weight weigh(String board, List<String> modules) {
        return Judged.byAll(BoardText.board("none", board), population(modules)).weight();
    }

    /** The order in which slots are named, and which of two alike channels holds what, changes nothing. */
    @Property(tries = 300)
    void theOrderOfModulesIsIrrelevant(@ForAll("modules") List<String> modules, @ForAll long seed) {
        Board board = BoardText.board("none", FRAME + "takes DDR3 DIMM unbuffered ecc=USED channelRanks=3 largest=8GB");
        Setup setup = Judged.setup(board, population(modules));
        List<Map.Entry<String, SlotContent>> entries = new ArrayList<>(setup.population().contents().entrySet());
        Collections.shuffle(entries, new Random(seed));
        Map<String, SlotContent> shuffled = new LinkedHashMap<>();
        entries.forEach(entry -> shuffled.put(entry.getKey(), entry.getValue()));
        Verdict verdict = Judged.byAll(setup);
        assertEquals(verdict, Judged.byAll(setup.with(new Population(shuffled))));
        List<String> exchanged = List.of(modules.get(2), modules.get(3), modules.get(0), modules.get(1));
        Verdict other = Judged.byAll(setup.with(ModuleText.population(board, population(exchanged))));
        assertEquals(verdict.weight(), other.weight());
        assertEquals(verdict.operation().mode(), other.operation().mode());
        assertEquals(verdict.operation().rate(), other.operation().rate());
    }

    /** The set of rules decides, not the order in which services come. */
    @Property(tries = 50)
    void theOrderOfRulesIsIrrelevant(@ForAll("modules") List<String> modules, @ForAll long seed) {
        List<MemoryRule> rules = new ArrayList<>(StandardRules.list());
        Collections.shuffle(rules, new Random(seed));
        Board board = BoardText.board("none", FRAME + "takes DDR3 DIMM");
        Setup setup = Judged.setup(board, population(modules));
        assertEquals(Judged.byAll(setup), StandardRules.of(rules).judge(setup));
    }
}
