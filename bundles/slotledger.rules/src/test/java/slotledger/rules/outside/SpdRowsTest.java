package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.internal.chips.ChipsAddUp;
import slotledger.rules.kit.ModuleFacts;
import slotledger.testkit.OutsideData;

/**
 * Outside check: three DDR3 modules as their maker's data sheets (DTM64396A, DTM64329C, DTM64316E) print the bytes of
 * their SPD. What the bytes say of chips makes the capacity the sheet says.
 */
class SpdRowsTest {

    private static int bits(String[] cells, int number, int shift, int mask) {
        return Integer.decode(cells[2 + number]) >> shift & mask;
    }

    @Test
    void theChipsInTheSpdMakeTheCapacityOfTheSheet() throws IOException {
        int rows = 0;
        for (String line : Files.readAllLines(OutsideData.file("tables/spd-datasheet-rows.tsv"))) {
            String[] cells = line.split("\t");
            if (line.startsWith("#") || cells[0].equals("sheet")) {
                continue;
            }
            rows++;
            int mbit = 256 << bits(cells, 4, 0, 0xf);
            int ranks = bits(cells, 7, 3, 7) + 1;
            int width = 4 << bits(cells, 7, 0, 7);
            boolean ecc = bits(cells, 8, 3, 3) == 1;
            String[] printed = cells[1].split(" ");
            assertEquals(printed[1], ranks + "Rx" + width, line);
            assertEquals(cells[1].contains("ECC"), ecc, line);
            String buffering = printed[2].equals("RDIMM") ? "registered" : "unbuffered";
            String facts = "%s DDR3 DIMM %dRx%d %s %s".formatted(printed[0], ranks, width, ecc ? "ECC" : "non-ECC",
                    buffering);
            ModuleKind kind = ModuleText.module(facts);
            assertEquals(Optional.of(ChipSize.ofMbit(mbit)), ModuleFacts.chipSize(kind), line);
            Board board = BoardText.board(cells[0], "channel A 1 A1\ntakes DDR3 DIMM");
            assertEquals(Weight.PASSES, weight(board, facts, mbit), line);
            assertEquals(Weight.BLOCKS, weight(board, facts, mbit * 2), line);
            long kibibytes = (long) mbit * 128 * ranks * (8L << bits(cells, 8, 0, 7)) / width;
            assertEquals(Capacity.ofKiB(kibibytes), kind.capacity(), line);
        }
        assertEquals(3, rows);
    }

    private static Weight weight(Board board, String facts, int mbit) {
        return Judged.by(new ChipsAddUp(), board, "A1: %s %dMbit".formatted(facts, mbit));
    }
}
