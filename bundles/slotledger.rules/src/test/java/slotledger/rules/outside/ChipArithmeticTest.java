package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ModuleKind;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.internal.chips.ChipsAddUp;
import slotledger.rules.kit.ModuleFacts;
import slotledger.testkit.OutsideData;

/** Outside check: tables of supported modules from five makers' manuals, one of whose rows is misprinted. */
class ChipArithmeticTest {

    private static final Map<String, String> GENERATIONS = Map.of(
            "D410PT", "DDR2", "DX58SO", "DDR3", "DH61SA", "DDR3", "NUC6", "DDR4", "D845GBV", "DDR");

    @Test
    void everyPrintedRowAddsUpButTheMisprint() throws IOException {
        List<String> wrong = new ArrayList<>();
        int rows = 0;
        for (String line : Files.readAllLines(OutsideData.file("tables/dimm-chip-arithmetic.tsv"))) {
            if (line.startsWith("#") || line.startsWith("source")) {
                continue;
            }
            rows++;
            String[] cells = line.split("\t");
            String generation = GENERATIONS.get(cells[0]);
            String figures = "%sMB %s DIMM unbuffered %sRx%s".formatted(cells[1], generation, cells[2], cells[4]);
            Board board = BoardText.board(cells[0], "channel A 1 A1\ntakes " + generation + " DIMM");
            Weight weight = Judged.by(new ChipsAddUp(), board, "A1: %s %sMbit".formatted(figures, cells[3]));
            ModuleKind kind = ModuleText.module(figures);
            int chips = kind.ranks().orElseThrow() * ModuleFacts.chipsPerRank(kind.chipWidth().orElseThrow());
            boolean derived = ModuleFacts.chipSize(kind).equals(Optional.of(
                    ChipSize.ofMbit(Integer.parseInt(cells[3])))) && chips == Integer.parseInt(cells[5]);
            assertEquals(weight == Weight.PASSES, derived, line);
            if (weight == Weight.BLOCKS) {
                wrong.add(String.join(" ", List.of(cells).subList(0, 5)));
            }
        }
        assertEquals(27, rows);
        assertEquals(List.of("DH61SA 2048 1 2048 16"), wrong);
    }

    @Test
    void anyMissingFigureIsDerivedFromTheOthers() {
        ModuleKind kind = ModuleText.module("8GB DDR3 DIMM unbuffered 2Rx8 4096Mbit");
        ModuleKind noSize = ModuleText.module("8GB DDR3 DIMM unbuffered 2Rx8");
        assertEquals(kind.chipSize(), ModuleFacts.chipSize(noSize));
        ModuleKind noRanks = ModuleText.module("8GB DDR3 DIMM unbuffered 4096Mbit").with(ChipWidth.X8);
        assertEquals(kind.ranks(), ModuleFacts.ranks(noRanks));
        ModuleKind noWidth = ModuleText.module("8GB DDR3 DIMM unbuffered 4096Mbit").withRanks(2);
        assertEquals(kind.chipWidth(), ModuleFacts.chipWidth(noWidth));
    }
}
