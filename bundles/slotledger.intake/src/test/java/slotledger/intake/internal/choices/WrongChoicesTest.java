package slotledger.intake.internal.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slotledger.intake.IntakeException;
import slotledger.model.finding.Finding;

class WrongChoicesTest {

    /** A key, and choices whose last line gives it a value that it can't have. */
    private record Wrong(ChoicesKey key, String text) {
    }

    @TempDir
    private Path folder;

    private List<Finding> findings(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("choices.yaml"), text);
        try {
            return ChoicesReader.read(file, SmallSchool.known()).findings();
        } catch (IntakeException refused) {
            return List.of(refused.finding());
        }
    }

    private static List<Wrong> wrong() {
        return List.of(
                new Wrong(ChoicesKey.PINS, "pins: all"),
                new Wrong(ChoicesKey.FORBID, "forbid: all"),
                new Wrong(ChoicesKey.PREFER, "prefer: cheap"),
                new Wrong(ChoicesKey.UNIFORM, "uniform rooms: Main / 99"),
                new Wrong(ChoicesKey.MOST_OPENED, "most machines opened: few"),
                new Wrong(ChoicesKey.MACHINE, "pins:\n  - machine: PC-99"),
                new Wrong(ChoicesKey.SLOTS, "pins:\n  - machine: PC-1\n    slots: full"),
                new Wrong(ChoicesKey.SLOTS, "pins:\n  - machine: PC-1\n    slots: {DIMM9: empty}"),
                new Wrong(ChoicesKey.SLOTS, "pins:\n  - machine: PC-1\n    slots: {DIMM1: something}"),
                new Wrong(ChoicesKey.KIND, "forbid:\n  - kind: something"),
                new Wrong(ChoicesKey.SUPPLIER, "forbid:\n  - supplier: Oak"),
                new Wrong(ChoicesKey.MAKER, "prefer:\n  - maker: Oak"),
                new Wrong(ChoicesKey.WORTH, "prefer:\n  - maker: Marl\n    worth: much"),
                new Wrong(ChoicesKey.WORTH, "prefer:\n  - maker: Marl\n    worth: 101 %"),
                new Wrong(ChoicesKey.MOST_OPENED, "most machines opened: -1"));
    }

    @ParameterizedTest
    @MethodSource("wrong")
    void aWrongValueIsNamedWithFileLineAndColumnAndWithWhatWasExpected(Wrong wrong) throws IOException {
        int line = (int) wrong.text().lines().count();
        List<Finding> findings = findings(wrong.text());
        Finding found = findings.stream().filter(each -> each.place().row().orElse(0) == line).findFirst()
                .orElseThrow(() -> new AssertionError("Nothing is said of line " + line + ": " + findings));
        assertTrue(found.place().file().endsWith("choices.yaml"), found.toString());
        assertTrue(found.place().column().isPresent(), found.toString());
        assertFalse(found.expected().isEmpty(), found.toString());
        assertTrue(found.toString().contains(found.expected()), found.toString());
    }

    @Test
    void eachKeyIsTried() {
        assertEquals(Arrays.stream(ChoicesKey.values()).collect(Collectors.toSet()),
                wrong().stream().map(Wrong::key).collect(Collectors.toSet()));
    }
}
