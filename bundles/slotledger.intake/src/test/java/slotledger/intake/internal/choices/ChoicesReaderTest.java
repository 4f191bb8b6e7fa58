package slotledger.intake.internal.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.template.Templates;
import slotledger.model.machine.SlotContent;
import slotledger.model.trade.Choices;

class ChoicesReaderTest {

    @TempDir
    private Path folder;

    private Reading<Choices> read(String text) throws IOException, IntakeException {
        return ChoicesReader.read(Files.writeString(folder.resolve("choices.yaml"), text), SmallSchool.known());
    }

    private static List<String> findings(Reading<Choices> reading) {
        return reading.findings().stream().map(finding -> finding.code() + " " + finding.place().row().orElse(0) + ":"
                + finding.place().column().orElse(0) + " " + finding.remedy()).toList();
    }

    @Test
    void everyKeyIsRead() throws IOException, IntakeException {
        Reading<Choices> reading = read("""
                pins:
                  - machine: pc-1
                    slots:
                      dimm 1: 8 GB DDR4-2400
                      DIMM2: empty
                  - machine: PC-2
                    slots: as now
                forbid:
                  - supplier: birch
                  - kind: DDR4-2133
                prefer:
                  - maker: [Farrow, MARL]
                    worth: 2 %
                  - kind: a-2
                uniform rooms: Main / Room 7
                most machines opened: 40
                """);
        Choices choices = reading.value();
        assertEquals(List.of(), findings(reading));
        assertEquals(Map.of("DIMM1", SlotContent.of(SmallSchool.FAST), "DIMM2", SlotContent.EMPTY),
                choices.pins().get(0).slots());
        assertEquals(Map.of(), choices.pins().get(1).slots());
        assertEquals("[no supplier Birch, no kind DDR4-2133, rather maker Farrow, worth 2 %, "
                + "rather maker Marl, worth 2 %, rather kind a-2]", choices.tastes().toString());
        assertEquals(List.of(SmallSchool.SLOW), choices.tastes().get(1).kinds());
        assertEquals(List.of(SmallSchool.FAST), choices.tastes().get(4).kinds());
        assertEquals(Set.of("main / room 7"), choices.uniform());
        assertEquals(OptionalInt.of(40), choices.mostOpened());
    }

    @Test
    void aDescriptionWithoutACapacityMeansModulesOfAny() throws IOException, IntakeException {
        assertEquals(List.of(SmallSchool.FAST, SmallSchool.LARGE),
                read("forbid: [kind: DDR4-2400]").value().tastes().get(0).kinds());
    }

    @Test
    void whatDoesNotExistIsFoundWithThePlaceAndTheNearestName() throws IOException, IntakeException {
        Reading<Choices> reading = read("""
                pins:
                  - machine: PC-11
                    slots: as now
                  - machine: PC-1
                    slots:
                      DIMM3: empty
                      On board: empty
                  - machine: PC-2
                    slots: {DIMM1: 4 GB DDR4-2400, DIMM2: 8 GB}
                forbid:
                  - suplier: Birch
                  - supplier: Brich
                    worth: 3
                prefer:
                  - kind: a walnut
                    worth: 200 %
                uniform rooms: [Room 8]
                most machines opened: few
                unifrm rooms: []
                """);
        assertEquals(List.of(
                "pinned-machine-unknown 2:14 Maybe \"PC-1\" is meant.",
                "pinned-slot-unknown 6:7 Maybe \"DIMM1\" is meant.",
                "pinned-slot-fixed 7:7 Take the slot out of the pin.",
                "kind-not-known 9:20 Correct it; \"slotledger matrix\" lists the modules the project knows.",
                "kind-not-clear 9:43 Write more of what stands on the label, or an offer's part number.",
                "unknown-key 11:5 Maybe \"supplier\" is meant.",
                "choices-shape 11:5 Compare the lines with the template of the choices.",
                "choices-shape 13:12 Compare the lines with the template of the choices.",
                "supplier-not-known 12:15 Maybe \"Birch\" is meant.",
                "worth-not-understood 16:12 Correct it.",
                "kind-not-understood 15:11 Correct it.",
                "room-not-known 17:17 Maybe \"Room 7\" is meant.",
                "number-not-understood 18:23 Correct it.",
                "unknown-key 19:1 Maybe \"uniform rooms\" is meant."), findings(reading));
        assertEquals(new Choices(List.of(), List.of(), Set.of(), OptionalInt.empty()), reading.value());
    }

    @Test
    void twoPinsOfAMachineAndTwoKeysAreFound() throws IOException, IntakeException {
        Reading<Choices> reading = read("""
                pins:
                  - {machine: PC-1, slots: as now}
                  - {machine: PC-1, slots: as now}
                pins: []
                """.replace("pins: []", "Pins: []"));
        assertEquals(List.of("pinned-twice 3:15 Put both together.",
                "key-twice 4:1 Put both together below one of them."), findings(reading));
    }

    @Test
    void aFileOfCommentsDecidesNothing() throws IOException, IntakeException {
        assertEquals(Choices.NONE, read("# nothing\n").value());
        assertEquals(Choices.NONE, read("").value());
    }

    @Test
    void brokenTextSaysLineAndColumn() {
        IntakeException broken = assertThrows(IntakeException.class, () -> read("pins: [a\nforbid: 3\n"));
        assertEquals("choices-not-readable 2", broken.finding().code() + " "
                + broken.finding().place().row().orElse(0));
        assertEquals("choices-not-readable", assertThrows(IntakeException.class, () -> read("- a\n")).finding().code());
    }

    @Test
    void theTemplateDecidesNothingAndItsExamplesAreWellFormed() throws IOException, IntakeException {
        Path written = new Templates().write(folder.resolve("new")).stream()
                .filter(file -> file.endsWith("choices.yaml")).findFirst().orElseThrow();
        assertEquals(Choices.NONE, ChoicesReader.read(written, SmallSchool.known()).value());
        String examples = Files.readString(written).lines()
                .filter(line -> line.matches("# *(pins|forbid|prefer|uniform rooms|most machines opened):.*|# {3,}"
                        + "(- |slots:|DIMM|worth:).*"))
                .map(line -> line.substring(2))
                .reduce("", (one, other) -> one + other + "\n");
        assertEquals(List.of("pinned-machine-unknown", "pinned-machine-unknown", "supplier-not-known",
                        "kind-not-known", "maker-not-known", "maker-not-known", "maker-not-known", "room-not-known"),
                read(examples).findings().stream().map(finding -> finding.code()).toList());
    }
}
