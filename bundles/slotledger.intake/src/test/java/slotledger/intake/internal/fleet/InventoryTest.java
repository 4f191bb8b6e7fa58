package slotledger.intake.internal.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.table.Grid;
import slotledger.intake.internal.table.Mapping;
import slotledger.intake.internal.table.MappingTexts;
import slotledger.model.finding.Finding;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;

class InventoryTest {

    record Case(String name, String grid, String machines, String findings) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Case> cases() {
        try (InputStream stream = InventoryTest.class.getResourceAsStream("inventories.txt")) {
            List<Case> cases = new ArrayList<>();
            String all = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            for (String part : all.split("(?m)^### ")) {
                if (!part.isBlank()) {
                    String[] pieces = part.split("(?m)^--- (?:machines|findings)\n", -1);
                    int line = pieces[0].indexOf('\n');
                    cases.add(new Case(pieces[0].substring(0, line), pieces[0].substring(line + 1), pieces[1].strip(),
                            pieces[2].strip()));
                }
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void anInventoryIsReadAsExpected(Case example) throws IntakeException {
        Reading<ObservedFleet> reading = read(example.grid(), Mapping.NONE);
        assertEquals(example.machines(), reading.value().machines().stream().map(InventoryTest::show)
                .collect(Collectors.joining("\n")));
        assertEquals(example.findings(), reading.findings().stream().map(InventoryTest::show)
                .collect(Collectors.joining("\n")));
    }

    static Reading<ObservedFleet> read(String grid, Mapping mapping) throws IntakeException {
        FleetMerger merger = new FleetMerger();
        merger.add(new SpreadsheetInventory(new Grid(grid)).read(Path.of("fleet.xlsx"), mapping, Progress.NONE));
        return merger.merged();
    }

    private static String show(ObservedMachine machine) {
        String where = machine.where().toString().isEmpty() ? "" : " in " + machine.where();
        return machine.tag() + ": " + (machine.maker() + " " + machine.model()).strip() + where
                + (machine.redundancy().isEmpty() ? "" : ", mode " + machine.redundancy())
                + machine.total().map(total -> ", total " + total).orElse("")
                + (machine.slotCount().isPresent() ? ", " + machine.slotCount().getAsInt() + " slots" : "")
                + (machine.slots().isEmpty() ? "" : "; ")
                + machine.slots().stream().map(InventoryTest::show).collect(Collectors.joining(", "));
    }

    private static String show(ObservedSlot slot) {
        return slot.label().map(label -> label + "=").orElse("") + slot.content();
    }

    private static String show(Finding finding) {
        Place place = finding.place();
        String column = place.column().isPresent() ? Place.letters(place.column().getAsInt()) : "";
        String row = place.row().isPresent() ? String.valueOf(place.row().getAsInt()) : "-";
        if (column.isEmpty() && (finding.code().startsWith("title") || finding.code().endsWith("-row")
                && !finding.code().startsWith("example"))) {
            column = "A";
        }
        return finding.severity().text() + " " + finding.code() + " " + column + row
                + finding.machine().map(tag -> " " + tag).orElse("");
    }

    @Test
    void aMappingFileOverridesTheHeadingsAndIsReported() throws IntakeException {
        Mapping mapping = MappingTexts.parse("map.txt", """
                # ours
                Etikett alt = asset-tag
                Bank links = slot DIMM1
                Model = ignore
                Bauart = model
                Nowhere = room
                Raum = rom
                no equals sign
                """);
        Reading<ObservedFleet> reading = read("""
                Etikett alt | Model | Bauart | Bank links
                X1 | wrong | K10 | 4GB
                """, mapping);
        assertEquals("X1: K10; DIMM1=4 GB", show(reading.value().machines().get(0)));
        assertEquals("[asset-tag, ignored, model, slot DIMM1]",
                reading.columns().get(0).columns().stream().map(column -> column.field()).toList().toString());
        assertEquals(List.of("mapping-field 7", "mapping-line 8", "mapping-unused 6"),
                Stream.concat(mapping.findings().stream(), mapping.unused(reading.columns()).stream())
                        .map(finding -> finding.code() + " " + finding.place().row().getAsInt()).toList());
        assertEquals("Maybe room is meant.", mapping.findings().get(0).remedy());
    }
}
