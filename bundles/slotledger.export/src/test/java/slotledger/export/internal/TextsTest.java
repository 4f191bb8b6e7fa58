package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import slotledger.export.internal.text.FileNames;
import slotledger.export.internal.text.Texts;

class TextsTest {

    @Property
    void anyTextsGetSafeFileNamesOfTheirOwn(@ForAll List<String> texts) {
        FileNames names = new FileNames("index");
        Set<String> given = new HashSet<>(Set.of("index"));
        for (String text : texts) {
            String name = names.name(text);
            assertTrue(name.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,79}"), name);
            assertTrue(given.add(name.toLowerCase(Locale.ROOT)), name);
        }
    }

    @Test
    void namesOfDevicesAndFoldersAreNoFileNames() {
        FileNames names = new FileNames("index");
        assertEquals("CON_", names.name("CON"));
        assertEquals("lpt1_", names.name("lpt1"));
        assertEquals("etc_passwd", names.name("../../etc/passwd"));
        assertEquals("machine", names.name(".."));
        assertEquals("index-2", names.name("Index").toLowerCase(Locale.ROOT));
        assertEquals("PC-1-2", List.of(names.name("PC-1"), names.name("PC-1")).get(1));
    }

    @Property
    void aLineHoldsNothingThatSteersOrBreaks(@ForAll String text) {
        assertTrue(Texts.line(text).codePoints().noneMatch(point -> Character.isISOControl(point)
                || point >= 0x202A && point <= 0x202E || point >= 0x2066 && point <= 0x2069
                || point >= 0xD800 && point <= 0xDFFF));
    }

    @Test
    void aCellIsCutAndReadAsItIsWritten() {
        assertEquals(32_767, Texts.cell("x".repeat(40_000)).length());
        assertEquals("_x005F_x0041_", Texts.cell("_x0041_"));
        assertEquals("a\uFFFDb", Texts.cell("a\u0001b"));
    }
}
