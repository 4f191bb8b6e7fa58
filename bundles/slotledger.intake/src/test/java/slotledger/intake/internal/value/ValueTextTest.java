package slotledger.intake.internal.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;

class ValueTextTest {

    static List<String[]> modules() {
        return rows("modules.txt", 5);
    }

    static List<String[]> slots() {
        return rows("slots.txt", 3);
    }

    private static List<String[]> rows(String file, int width) {
        try (InputStream stream = ValueTextTest.class.getResourceAsStream(file)) {
            List<String[]> rows = new ArrayList<>();
            for (String line : new String(stream.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (!line.startsWith("#") && !line.isBlank()) {
                    String[] cells = Stream.of(line.split("\\|", -1)).map(String::strip).toArray(String[]::new);
                    assertEquals(width, cells.length, line);
                    rows.add(cells);
                }
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("modules")
    void aModuleTextIsReadAsExpected(String text, String unit, String expected, String codes, String rest) {
        ModuleReading reading = ModuleText.read(text, unit(unit));
        List<Doubt> doubts = new ArrayList<>(reading.doubts());
        Optional<ModuleKind> kind = reading.facts().kind(doubts);
        String shown = kind.map(known -> reading.count() + " x " + known).orElse(reading.facts().generation()
                .map(generation -> generation.text() + " without capacity").orElse("nothing"));
        assertEquals(expected, shown, text);
        assertEquals(codes, doubts.stream().map(Doubt::code).collect(Collectors.joining(" ")), text);
        assertEquals(rest, reading.rest(), text);
    }

    @ParameterizedTest
    @MethodSource("slots")
    void aTextOfAllSlotsIsReadAsExpected(String text, String unit, String expected) {
        String shown = SlotText.all(text, unit(unit)).stream().map(ValueTextTest::show)
                .collect(Collectors.joining("; "));
        assertEquals(expected, shown, text);
    }

    private static String show(SlotReading slot) {
        String content = switch (slot.state()) {
            case EMPTY -> "empty";
            case UNREAD -> "unread: " + slot.text();
            case FILLER -> slot.filler().map(Filler::text).orElseThrow();
            case MODULE -> slot.facts().kind(new ArrayList<>()).orElseThrow().toString();
        };
        return slot.label().map(label -> label + "=").orElse("") + content;
    }

    private static Optional<CapacityUnit> unit(String name) {
        return name.isEmpty() ? Optional.empty() : Optional.of(CapacityUnit.valueOf(name));
    }

    @Test
    void emptyIsUnderstoodInManyLanguages() {
        for (String text : List.of("empty", "n/a", "-", "--", "leer", "vide", "no module installed", "None", "VACÍO",
                "vuoto", "leeg", "pusty", "0", "0 GB", "nicht bestückt")) {
            assertTrue(Words.sayEmpty(text), text);
        }
    }

    @Test
    void aNumberIsReadWithEitherDecimalMark() {
        assertEquals("1234.50", NumberText.read("1,234.50", DecimalMark.UNKNOWN).value().orElseThrow().toString());
        assertEquals("1234.50", NumberText.read("1.234,50", DecimalMark.UNKNOWN).value().orElseThrow().toString());
        assertEquals("1234.5", NumberText.read("1 234,5", DecimalMark.UNKNOWN).value().orElseThrow().toString());
        assertEquals("12.5", NumberText.read("12,5", DecimalMark.UNKNOWN).value().orElseThrow().toString());
        assertEquals("1234567", NumberText.read("1.234.567", DecimalMark.UNKNOWN).value().orElseThrow().toString());
        assertEquals("1234.5", NumberText.read("1'234.5", DecimalMark.UNKNOWN).value().orElseThrow().toString());
        assertTrue(NumberText.read("1.2.3", DecimalMark.UNKNOWN).value().isEmpty());
    }

    @Test
    void aNumberThatCanBeReadInTwoWaysIsDecidedOnlyByEvidence() {
        assertTrue(NumberText.read("1.234", DecimalMark.UNKNOWN).ambiguous());
        assertEquals("1234", NumberText.read("1.234", DecimalMark.COMMA).value().orElseThrow().toString());
        assertEquals("1.234", NumberText.read("1.234", DecimalMark.POINT).value().orElseThrow().toString());
        assertEquals("0.125", NumberText.read("0.125", DecimalMark.UNKNOWN).value().orElseThrow().toString());
    }

    @Test
    void aDateThatCanBeReadInTwoWaysIsNotRead() {
        assertEquals(LocalDate.of(2026, 3, 31), DateText.read("31.03.2026").value().orElseThrow());
        assertEquals(LocalDate.of(2026, 3, 31), DateText.read("3/31/2026").value().orElseThrow());
        assertEquals(LocalDate.of(2026, 3, 31), DateText.read("2026-03-31").value().orElseThrow());
        assertTrue(DateText.read("03/04/2026").ambiguous());
        assertTrue(DateText.read("next week").value().isEmpty());
    }

    @Test
    void currenciesAreFoundBySymbolAndCode() {
        assertEquals("EUR", Currencies.in("€ 12,50").orElseThrow().getCurrencyCode());
        assertEquals("GBP", Currencies.in("£1,234.50").orElseThrow().getCurrencyCode());
        assertEquals("CHF", Currencies.in("Price (CHF)").orElseThrow().getCurrencyCode());
        assertTrue(Currencies.in("$ 12").isEmpty());
        assertTrue(Currencies.in("EUR or USD").isEmpty());
        assertEquals("12,50", Currencies.without("€ 12,50"));
    }
}
