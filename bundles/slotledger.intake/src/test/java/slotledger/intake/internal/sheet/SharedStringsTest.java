package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SharedStringsTest {

    @Test
    void everyTextComesBackAsItWasInAnyOrder() throws Exception {
        Random random = new Random(7);
        List<String> texts = new ArrayList<>();
        SharedStrings table = new SharedStrings(Long.MAX_VALUE);
        String[] pieces = {"", "x", "DDR4-2666", "\u00e9\u6771\uD83D\uDE00", "y".repeat(32_767), "z".repeat(2_000_000)};
        for (int i = 0; i < 30_000; i++) {
            String text = i + pieces[i % 5000 == 0 ? 5 : random.nextInt(i % 100 == 0 ? 5 : 4)];
            texts.add(text);
            table.add(text);
        }
        assertEquals(texts.size(), table.size());
        for (int i = 0; i < 60_000; i++) {
            int index = i < 30_000 ? i : random.nextInt(30_000);
            assertEquals(texts.get(index), table.get(index));
        }
    }

    @Test
    void aTextThatIsNotThereIsDamage() {
        SharedStrings table = new SharedStrings(100);
        assertThrows(BadSheetException.class, () -> table.get(0));
        assertThrows(BadSheetException.class, () -> table.get(-1));
    }

    @Test
    void theMemoryForTextsIsLimited() throws Exception {
        SharedStrings table = new SharedStrings(100);
        table.add("x".repeat(40));
        assertThrows(BadSheetException.class, () -> table.add("x".repeat(60)));
    }
}
