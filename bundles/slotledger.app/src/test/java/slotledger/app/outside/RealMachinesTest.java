package slotledger.app.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.catalog.CatalogException;
import slotledger.catalog.internal.DefaultCatalogReader;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.machine.Population;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.standard.StandardRules;
import slotledger.testkit.OutsideData;

/**
 * Outside check: what the firmware of odd real machines says of their modules (linux-hardware.org / linuxhw, CC-BY).
 * The rules cope with all of it, whatever is missing or wrong, and the memory is counted.
 */
class RealMachinesTest {

    private static final MemoryRules RULES = StandardRules.create();
    private static final Map<String, Generation> GENERATIONS = Map.of("SDRAM", Generation.SDR, "RDRAM",
            Generation.RDRAM, "DDR", Generation.DDR, "DDR2", Generation.DDR2, "DDR2 FB-DIMM", Generation.DDR2, "DDR3",
            Generation.DDR3, "DDR4", Generation.DDR4, "DDR5", Generation.DDR5);
    private static final Map<String, Form> FORMS =
            Map.of("DIMM", Form.DIMM, "SODIMM", Form.SO_DIMM, "FB-DIMM", Form.DIMM, "RIMM", Form.RIMM_184);
    /** "4096 MB", "8 GB" */
    private static final Pattern SIZE = Pattern.compile("(\\d{1,6}) (kB|MB|GB)");
    /** "1333 MT/s", "800 MHz" */
    private static final Pattern SPEED = Pattern.compile("(\\d{2,5}) (?:MT/s|MHz)");

    /** The modules of a listing whose generation and form are said. */
    private static List<ModuleKind> modules(Path listing) throws IOException {
        List<ModuleKind> modules = new ArrayList<>();
        String text = Files.readString(listing, StandardCharsets.ISO_8859_1);
        for (String part : text.split("(?m)^Memory Device\\R")) {
            Map<String, String> fields = new HashMap<>();
            for (String line : part.split("\\R")) {
                if (!line.startsWith("\t")) {
                    break;
                }
                String[] pair = line.strip().split(": ", 2);
                fields.put(pair[0], pair.length > 1 ? pair[1].strip() : "");
            }
            module(fields).ifPresent(modules::add);
        }
        return modules;
    }

    private static Optional<ModuleKind> module(Map<String, String> fields) {
        Matcher size = SIZE.matcher(fields.getOrDefault("Size", ""));
        Generation generation = GENERATIONS.get(fields.getOrDefault("Type", ""));
        Form form = FORMS.get(fields.getOrDefault("Form Factor", ""));
        if (!size.matches() || generation == null || form == null || Long.parseLong(size.group(1)) == 0) {
            return Optional.empty();
        }
        long amount = Long.parseLong(size.group(1));
        ModuleKind kind = ModuleKind.of(generation, form, switch (size.group(2)) {
            case "kB" -> Capacity.ofKiB(amount);
            case "MB" -> Capacity.ofMiB(amount);
            default -> Capacity.ofGiB(amount);
        });
        String ranks = fields.getOrDefault("Rank", "");
        kind = ranks.matches("[1-9]\\d?") ? kind.withRanks(Integer.parseInt(ranks)) : kind;
        Matcher speed = SPEED.matcher(fields.getOrDefault("Speed", ""));
        kind = speed.matches() ? kind.with(Rate.of(Integer.parseInt(speed.group(1)))) : kind;
        String detail = fields.getOrDefault("Type Detail", "");
        kind = detail.contains("Registered") ? kind.with(Buffering.REGISTERED)
                : detail.contains("Unbuffered") ? kind.with(Buffering.UNBUFFERED) : kind;
        boolean wide = fields.getOrDefault("Total Width", "").matches("72 bits|80 bits");
        return Optional.of(wide ? kind.with(ErrorCheck.ECC) : kind);
    }

    /** A board of two channels that takes modules like the first. */
    private static Board board(List<ModuleKind> modules) throws CatalogException {
        List<String> first = new ArrayList<>(List.of("A0"));
        List<String> second = new ArrayList<>(List.of("B0"));
        for (int i = 0; i < modules.size(); i++) {
            (i % 2 == 0 ? first : second).add((i % 2 == 0 ? "A" : "B") + (i / 2 + 1));
        }
        String file = "{board: real, maker: Real, model: One, form: other, source: measured, channels: {A: %s, B: %s},"
                + " takes: {generation: %s, form: %s}}";
        return new DefaultCatalogReader(List.of(() -> List.of(new BoardFile("real", file.formatted(first, second,
                modules.get(0).generation().orElseThrow().text(), modules.get(0).form().orElseThrow().text())))))
                .read(List.of()).catalog().boards().get(0);
    }

    @Test
    void theRulesCopeWithWhatFirmwareSaysOfRealMachines() throws IOException, CatalogException {
        int machines = 0;
        int count = 0;
        List<Path> listings;
        try (Stream<Path> files = Files.list(OutsideData.file("linuxhw/listings"))) {
            listings = files.sorted().toList();
        }
        for (Path listing : listings) {
            List<ModuleKind> modules = modules(listing);
            if (modules.isEmpty()) {
                continue;
            }
            Board board = board(modules);
            Population population = Population.empty(board);
            List<String> labels = board.sockets().stream().map(Slot::label)
                    .filter(label -> !label.endsWith("0") || label.length() > 2).toList();
            for (int i = 0; i < modules.size(); i++) {
                population = population.with(labels.get(i), modules.get(i));
            }
            Setup setup = Setup.of(board, population);
            Verdict verdict = RULES.judge(setup);
            assertEquals(RULES.weigh(setup), verdict.weight(), listing.toString());
            assertEquals(RULES.operate(setup), verdict.operation(), listing.toString());
            assertEquals(population.total(), verdict.operation().installed(), listing.toString());
            verdict.reasons().forEach(reason -> assertWorded(reason, listing));
            machines++;
            count += modules.size();
        }
        assertEquals(294, listings.size());
        assertEquals(List.of(181, 551), List.of(machines, count));
    }

    private static void assertWorded(Reason reason, Path listing) {
        assertFalse(reason.sentence().isBlank(), listing.toString());
        assertTrue(reason.weight() != Weight.UNKNOWN || reason.missing().isPresent(), listing + ": " + reason);
    }
}
