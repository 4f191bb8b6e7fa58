package slotledger.catalog.internal.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slotledger.catalog.BoardDraft;
import slotledger.catalog.BoardDrafts;
import slotledger.catalog.BoardMatch;
import slotledger.catalog.Catalog;
import slotledger.catalog.Platform;
import slotledger.catalog.internal.match.Names;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.source.Ground;

/** Groups machines by model, and drafts a board for each that no document speaks of. */
public final class DraftMaker {

    private static final int LONGEST_ID = 56;

    private DraftMaker() {
    }

    public static BoardDrafts make(List<BoardReport> reports, Catalog catalog) {
        Map<String, List<BoardReport>> models = new TreeMap<>();
        List<Finding> findings = new ArrayList<>();
        for (BoardReport report : reports) {
            ObservedMachine machine = report.machine();
            if (Names.isPlaceholder(machine.model())) {
                findings.add(finding(report, "draft-without-model",
                        "The firmware doesn't name the model, so that no board can be drafted.", "a model name",
                        "Read the model off the machine and write it into the inventory."));
            } else {
                models.computeIfAbsent(Names.normalisedMaker(machine.maker()) + " " + Names.normalised(machine.model()),
                        none -> new ArrayList<>()).add(report);
            }
        }
        List<BoardDraft> drafts = new ArrayList<>();
        Map<String, Integer> ids = new LinkedHashMap<>();
        for (List<BoardReport> model : models.values()) {
            Optional<Board> documented = documented(model.get(0).machine(), catalog);
            if (documented.isPresent()) {
                DocumentCheck.compare(model, documented.get(), findings);
            } else {
                ModelFacts facts = ModelFacts.of(model, findings);
                Optional<Platform> platform = PlatformCheck.of(model);
                platform.ifPresent(known -> PlatformCheck.compare(model, facts, known, findings));
                if (facts.hindrance().isPresent()) {
                    findings.add(finding(model.get(0), "draft-impossible", facts.hindrance().get(),
                            "firmware that tells slots and kind of memory",
                            "Write a board file from the model's own manual."));
                } else {
                    drafts.add(draft(model, facts, platform, ids));
                }
            }
        }
        return new BoardDrafts(drafts, findings);
    }

    private static Optional<Board> documented(ObservedMachine machine, Catalog catalog) {
        BoardMatch match = catalog.match(machine.maker(), machine.model());
        return match instanceof BoardMatch.Found found && found.board().source().ground() != Ground.FIRMWARE
                ? Optional.of(found.board()) : Optional.empty();
    }

    private static BoardDraft draft(List<BoardReport> model, ModelFacts facts, Optional<Platform> platform,
            Map<String, Integer> ids) {
        ObservedMachine first = model.get(0).machine();
        String base = id(first.maker() + " " + first.model());
        int number = ids.merge(base, 1, Integer::sum);
        BoardId id = new BoardId(number == 1 ? base : base + "-" + number);
        return new BoardDraft(id, (first.maker() + " " + first.model()).strip(), model.size(),
                new DraftYaml(id, model, facts, platform).text(), facts.open());
    }

    private static String id(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String id = plain.isEmpty() ? "board" : plain;
        return id.substring(0, Math.min(LONGEST_ID, id.length())).replaceAll("-+$", "");
    }

    static Finding finding(BoardReport report, String code, String message, String expected, String remedy) {
        ObservedMachine machine = report.machine();
        return new Finding(Severity.WARNING, code, machine.place(), Optional.of(machine.tag()),
                (machine.maker() + " " + machine.model()).strip(), message, expected, remedy);
    }
}
