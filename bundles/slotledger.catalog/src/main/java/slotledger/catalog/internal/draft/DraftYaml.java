package slotledger.catalog.internal.draft;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.catalog.Platform;
import slotledger.model.board.BoardForm;
import slotledger.model.board.BoardId;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.source.Ground;
import slotledger.model.unit.Capacity;

/** Writes a draft in the form of a board file; what nobody knows is left out and asked for in comments. */
final class DraftYaml {

    private static final int MOST_PLACES = 3;

    private final BoardId id;
    private final List<BoardReport> model;
    private final ModelFacts facts;
    private final Optional<Platform> platform;
    private final StringBuilder yaml = new StringBuilder();

    DraftYaml(BoardId id, List<BoardReport> model, ModelFacts facts, Optional<Platform> platform) {
        this.id = id;
        this.model = model;
        this.facts = facts;
        this.platform = platform;
    }

    String text() {
        ObservedMachine first = model.get(0).machine();
        comments();
        line("board: " + id);
        line("maker: " + quoted(first.maker().isBlank() ? "unknown" : first.maker()));
        line("model: " + quoted(first.model()));
        Set<String> aliases = new LinkedHashSet<>();
        model.forEach(report -> aliases.addAll(report.otherNames()));
        model.forEach(report -> aliases.add(report.machine().model()));
        aliases.remove(first.model());
        if (!aliases.isEmpty()) {
            line("aliases: " + list(aliases));
        }
        line("form: " + facts.form().orElse(BoardForm.OTHER).text());
        line("source: {ground: firmware table, document: " + quoted(places()) + "}");
        if (totalOfPlatform().isPresent()) {
            line("sources:");
            line("  largest-total: {ground: from memory, document: %s}".formatted(
                    quoted("processors of the family " + platform.orElseThrow().name() + ", check")));
        }
        line("");
        line("# Firmware doesn't tell channels: put each slot into its channel, the first of a channel first.");
        line("channels: {unknown: " + list(facts.labels()) + "}");
        line("interleave: unknown");
        if (!facts.soldered().isEmpty()) {
            line("slots:");
            facts.labels().forEach(this::slot);
        }
        takes();
        facts.largestTotal().or(this::totalOfPlatform).ifPresent(total -> line("largest-total: " + amount(total)));
        line("notes:");
        line("  - " + quoted("Drafted from firmware; check the channels before two modules are put in."));
        return yaml.toString();
    }

    /** What the processor takes, where firmware says nothing of the board and somebody wrote that down from memory. */
    private Optional<Capacity> totalOfPlatform() {
        return facts.largestTotal().isPresent() ? Optional.empty()
                : platform.filter(known -> known.source().ground() == Ground.MEMORY).map(Platform::largestTotal);
    }

    private void comments() {
        line("# DRAFT, made of what the firmware of %d machine%s says. Check each line against the board's document,"
                .formatted(model.size(), model.size() == 1 ? "" : "s"));
        line("# then write that document as the source, and move the file out of the folder of drafts.");
        facts.open().forEach(open -> line("# To find out: " + open + "."));
        platform.ifPresent(known -> PlatformCheck.comments(known).forEach(comment -> line("# " + comment)));
        facts.lies().forEach(lie -> line("# Firmware of this model is wrong somewhere: " + lie + "."));
    }

    private void slot(String label) {
        Optional<ModuleKind> kind = facts.soldered().get(label);
        if (kind == null) {
            line("  - " + quoted(label));
        } else if (kind.isEmpty() || kind.get().generation().isEmpty()) {
            line("  - {label: " + quoted(label) + ", soldered: varies}");
        } else {
            line("  - {label: %s, soldered: {capacity: %s, generation: %s%s}}".formatted(quoted(label),
                    amount(kind.get().capacity()), kind.get().generation().get().text(),
                    kind.get().rate().map(rate -> ", rate: " + rate.megatransfers()).orElse("")));
        }
    }

    private void takes() {
        line("takes:");
        line("  generation: " + facts.generations().iterator().next().text());
        line("  form: " + one(facts.forms().stream().map(Form::text).toList()));
        if (!facts.bufferings().isEmpty()) {
            line("  buffering: " + one(facts.bufferings().stream().map(Buffering::text).toList()));
        }
        line(facts.eccSeen() ? "  ecc: used" : "  ecc: unknown");
        facts.largest().ifPresent(seen -> line("  # The largest module seen holds %s; the document may allow more."
                .formatted(seen)));
    }

    private static String one(List<String> words) {
        return words.size() == 1 ? words.get(0) : "[" + String.join(", ", words) + "]";
    }

    private String places() {
        List<String> places = new ArrayList<>();
        model.stream().limit(MOST_PLACES).forEach(report -> places.add(report.machine().place().toString()));
        return "%d machine%s: %s%s".formatted(model.size(), model.size() == 1 ? "" : "s", String.join(", ", places),
                model.size() > MOST_PLACES ? " and more" : "");
    }

    /** Board files know whole numbers of their units best. */
    private static String amount(Capacity capacity) {
        long kib = capacity.kibibytes();
        return kib % (1 << 20) == 0 ? (kib >> 20) + " GB" : kib % (1 << 10) == 0 ? (kib >> 10) + " MB" : kib + " KB";
    }

    private static String list(Iterable<String> texts) {
        List<String> quoted = new ArrayList<>();
        texts.forEach(text -> quoted.add(quoted(text)));
        return quoted.stream().collect(Collectors.joining(", ", "[", "]"));
    }

    /** In double quotes, as YAML 1.2 section 7.3.1 has them; what no person can read is a blank. */
    private static String quoted(String text) {
        return '"' + text.replaceAll("\\p{C}", " ").strip().replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private void line(String text) {
        yaml.append(text).append('\n');
    }
}
