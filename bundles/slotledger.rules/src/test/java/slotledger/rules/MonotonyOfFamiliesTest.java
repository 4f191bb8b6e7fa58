package slotledger.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;

/** What holds for any population of boards of every family. */
class MonotonyOfFamiliesTest {

    private static final String FRAME = """
            channel A 1 A1 A2
            channel B 1 B1 B2
            """;

    /** What the boards take, and modules for them. */
    private static final Map<String, List<String>> FAMILIES = Map.of(
            "SDR DIMM", List.of("64MB SDR-100 DIMM unbuffered non-ECC 1Rx8 64Mbit", "256MB SDR-133 DIMM ECC"),
            "RDRAM RIMM_184", List.of("128MB RDRAM-800 RIMM_184 x16 128Mbit", "256MB RDRAM-800 RIMM_184",
                    "CONTINUITY_184"),
            "DDR DIMM", List.of("512MB DDR-400 DIMM unbuffered 2Rx8 256Mbit", "1GB DDR-333 DIMM 1Rx4"),
            "DDR2 DIMM", List.of("1GB DDR2-667 DIMM registered ECC 1Rx4", "2GB DDR2-800 DIMM unbuffered 2Rx8"),
            "DDR4 DIMM", List.of("16GB DDR4-2666 DIMM registered ECC 1Rx4",
                    "128GB DDR4-2666 DIMM registered 2Rx4 stack=4", "16GB DDR4-2400 DIMM unbuffered 2Rx8"),
            "DDR5 DIMM", List.of("32GB DDR5-4800 DIMM registered ECC 2Rx8 check=8", "16GB DDR5-5600 DIMM unbuffered"));

    private static final List<String> LIMITS = List.of("largest=1GB", "smallest=128MB", "widths=x8", "ranks=1",
            "channelRanks=2", "chip=..256", "unbuffered", "stack=1", "slowest=60ns", "contacts=gold");

    private static final List<String> OF_THE_BOARD = List.of("total 2GB", "addressable 1GB", "order A1 B1 A2 B2",
            "bank 0 A1 B1\nbank 1 A2 B2", "fill required sets=2 largestFirst ranksFirst",
            "fill blank=AIR_BLANK", "processor P 1600 1GB", "redundancy MIRRORED share=1/2 channelRanks=2 ignored=B",
            "redundancy SPARED channelRanks=2");

    @Provide
    Arbitrary<String> families() {
        return Arbitraries.of(FAMILIES.keySet().stream().sorted().toList());
    }

    private static String population(String family, Random random) {
        List<String> kinds = new ArrayList<>(FAMILIES.get(family));
        kinds.addAll(List.of("-", "?", "8GB", "4GB DDR3 SO-DIMM", "AIR_BLANK"));
        int usual = FAMILIES.get(family).size();
        StringBuilder text = new StringBuilder();
        for (String slot : List.of("A1", "A2", "B1", "B2")) {
            int choice = random.nextInt(4) == 0 ? random.nextInt(kinds.size()) : random.nextInt(usual);
            text.append(slot).append(": ").append(kinds.get(choice)).append("; ");
        }
        return text.toString();
    }

    private static Setup setup(String board, String population, Redundancy redundancy) {
        Board read = BoardText.board("none", board);
        return new Setup(read, 1, Optional.empty(), Optional.empty(), redundancy,
                ModuleText.population(read, population));
    }

    /** Adding a limit, in any order with others, never turns a no into a yes. */
    @Property(tries = 300)
    void oneMoreLimitNeverAllowsMore(@ForAll("families") String family, @ForAll Redundancy redundancy,
            @ForAll long seed) {
        Random random = new Random(seed);
        String population = population(family, random);
        List<String> limits = new ArrayList<>(LIMITS);
        Collections.shuffle(limits, random);
        String text = FRAME + "takes " + family;
        Weight before = Judged.byAll(setup(text, population, redundancy)).weight();
        for (String limit : limits) {
            text += " " + limit;
            before = checked(before, text, population, redundancy);
        }
        List<String> whole = new ArrayList<>(OF_THE_BOARD);
        Collections.shuffle(whole, random);
        for (String limit : whole) {
            text += "\n" + limit;
            before = checked(before, text, population, redundancy);
        }
    }

    private static Weight checked(Weight before, String text, String population, Redundancy redundancy) {
        Weight after = Judged.byAll(setup(text, population, redundancy)).weight();
        assertTrue(before != Weight.BLOCKS || after == Weight.BLOCKS, () -> text + "\n" + population);
        return after;
    }

    /** The order in which a population names its slots changes nothing. */
    @Property(tries = 200)
    void theOrderOfModulesIsIrrelevant(@ForAll("families") String family, @ForAll Redundancy redundancy,
            @ForAll long seed) {
        Random random = new Random(seed);
        Setup setup = setup(FRAME + "takes " + family + " ecc=USED\n" + String.join("\n", OF_THE_BOARD),
                population(family, random), redundancy);
        List<Map.Entry<String, SlotContent>> entries = new ArrayList<>(setup.population().contents().entrySet());
        Collections.shuffle(entries, random);
        Map<String, SlotContent> shuffled = new LinkedHashMap<>();
        entries.forEach(entry -> shuffled.put(entry.getKey(), entry.getValue()));
        assertEquals(Judged.byAll(setup), Judged.byAll(setup.with(new Population(shuffled))));
    }
}
