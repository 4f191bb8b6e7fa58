package slotledger.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** after/inventory-after.csv: one row a machine, one text for all its slots, by printed label. */
final class AfterFile {

    /** One machine in so many was not reached in time. */
    private static final int NOT_REACHED = 27;
    /** From which opened machine on a slip happens, to the first machine it can happen to. */
    private static final Map<Integer, Slip> SLIPS = Map.of(
            20, Slip.OTHER_SLOT,
            75, Slip.LARGER_MODULE,
            76, Slip.OTHER_SLOT,
            180, Slip.NOT_LISTED,
            230, Slip.MISSING_MODULE);

    private final JsonNode machines;
    private final BoardNames names;
    private final List<Slip> due = new ArrayList<>();
    private int opened;

    AfterFile(JsonNode machines, BoardNames names) {
        this.machines = machines;
        this.names = names;
    }

    void write(Path file) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("Asset tag,Serial,Make,Model,Site,Room,Use,Cost centre,OS,CPUs,Memory mode,Memory");
        for (JsonNode planned : machines) {
            contents(planned).ifPresent(contents -> lines.add(row(planned.path("machine"), contents)));
        }
        Files.writeString(file, String.join("\r\n", lines).concat("\r\n"), StandardCharsets.UTF_8);
    }

    /** What is found in the slots; empty for a machine that is not listed. */
    private Optional<Map<String, String>> contents(JsonNode planned) {
        Map<String, String> after = SlotWords.of(planned.path("after"));
        if (planned.path("moves").isEmpty()) {
            return Optional.of(after);
        }
        opened++;
        Optional.ofNullable(SLIPS.get(opened)).ifPresent(due::add);
        if (opened % NOT_REACHED == 0) {
            return Optional.of(SlotWords.of(planned.path("machine").path("population")));
        }
        for (Slip slip : due) {
            Optional<Map<String, String>> found = slip.happenTo(after);
            if (found.isPresent()) {
                due.remove(slip);
                return slip == Slip.NOT_LISTED ? Optional.empty() : found;
            }
        }
        return Optional.of(after);
    }

    private String row(JsonNode machine, Map<String, String> contents) {
        String board = machine.path("board").asText();
        String memory = contents.entrySet().stream().map(slot -> slot.getKey() + ": " + slot.getValue())
                .collect(Collectors.joining(", "));
        return List.of(machine.path("tag").asText(), machine.path("serial").asText(), names.makers().get(board),
                        names.models().get(board), machine.path("where").path("site").asText(),
                        machine.path("where").path("room").asText(), machine.path("role").asText(),
                        machine.path("costCentre").asText(), machine.path("operatingSystem").asText(),
                        machine.path("processors").asText(), mode(machine), memory)
                .stream().map(AfterFile::quoted).collect(Collectors.joining(","));
    }

    private static String mode(JsonNode machine) {
        String mode = machine.path("redundancy").asText();
        return mode.equals("none") ? "" : mode;
    }

    private static String quoted(String text) {
        return text.contains(",") || text.contains("\"") ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
