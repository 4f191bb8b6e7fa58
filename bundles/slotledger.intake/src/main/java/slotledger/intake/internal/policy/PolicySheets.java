package slotledger.intake.internal.policy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.intake.internal.policy.PolicyDraft.TargetDraft;
import slotledger.intake.internal.policy.PolicyDraft.WaveDraft;
import slotledger.intake.internal.policy.PolicyKey.Section;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.sheet.SheetVisitor;
import slotledger.intake.internal.template.Templates;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Written;
import slotledger.model.source.Place;

/**
 * Reads a policy from sheets. A section begins with a row that holds its name (settings, targets, cost centre budgets,
 * leave alone) or with a sheet of that name; targets have a row of headings, the other sections have two columns.
 */
final class PolicySheets implements SheetVisitor {

    private static final int MOST_ROWS = 10_000;
    /** cost centre 4711: a column of waves. */
    private static final Pattern CENTRE = Pattern.compile("(?i)cost cent(?:re|er)\\s+(.+)");

    private final String file;
    private final PolicyDraft draft;
    private String sheet = "";
    private Optional<Section> section = Optional.empty();
    private boolean sectionSeen;
    private Map<Integer, PolicyKey> columns = new TreeMap<>();
    private Map<Integer, String> centreColumns = new TreeMap<>();
    private final List<Runnable> unknown = new ArrayList<>();
    private int rows;

    PolicySheets(String file, PolicyDraft draft) {
        this.file = file;
        this.draft = draft;
    }

    @Override
    public void startSheet(String name, boolean hidden) {
        sheet = name;
        section = Section.of(name);
        sectionSeen = section.isPresent();
        columns = new TreeMap<>();
        unknown.clear();
        rows = 0;
    }

    @Override
    public void row(int number, List<Cell> cells) {
        List<Cell> filled = cells.stream().filter(cell -> !cell.text().isBlank()).toList();
        if (filled.isEmpty() || ++rows > MOST_ROWS || sheet.equals(Templates.HELP)) {
            return;
        }
        String first = Texts.tidy(filled.get(0).text());
        Place place = Place.ofRow(file, sheet, number);
        if (first.startsWith("EXAMPLE")) {
            draft.report(Doubt.note("example-row", "This is an example row of the template; it was skipped.", "",
                    "Delete the row."), place, first);
        } else if (filled.size() == 1 && Section.of(first).isPresent()) {
            section = Section.of(first);
            sectionSeen = true;
            columns = new TreeMap<>();
        } else {
            switch (section.orElse(Section.SETTINGS)) {
                case SETTINGS, LABOUR, SPARES -> setting(first, filled, place);
                case TARGETS, WAVES -> row(filled, place);
                case COST_CENTRES -> amount(first, filled, place, draft::costCentre);
                case RATES -> amount(first, filled, place, draft::rate);
                case LEAVE_ALONE -> leave(first, filled, place);
            }
        }
    }

    private Written second(List<Cell> filled, Place place) {
        Cell cell = filled.size() > 1 ? filled.get(1) : filled.get(0);
        return new Written(filled.size() > 1 ? Texts.tidy(cell.text()) : "", place.atColumn(cell.column(), ""));
    }

    private void setting(String first, List<Cell> filled, Place place) {
        String prefix = section.filter(known -> known == Section.LABOUR || known == Section.SPARES)
                .map(known -> known.text() + " ").orElse("");
        Optional<PolicyKey> key = PolicyKey.of(Section.SETTINGS, prefix + first)
                .or(() -> PolicyKey.of(Section.SETTINGS, first));
        if (key.isPresent()) {
            sectionSeen = true;
            if (filled.size() > 1) {
                draft.set(key.get(), second(filled, place));
            }
        } else if (filled.size() == 1 || Texts.key(first).equals("setting") || Texts.key(first).equals("key")) {
            note(place, first);
        } else {
            unknown.add(() -> draft.report(
                    Doubt.error("unknown-key", "The setting \"%s\" is not known.".formatted(first),
                    "a setting of a policy", PolicyKey.advice(Section.SETTINGS, first)), place, first));
        }
    }

    private void note(Place place, String text) {
        unknown.add(() -> draft.report(Doubt.note("note-row", "This row was taken for a note.", "", "Nothing."), place,
                text));
    }

    /** A target or a wave: a row of cells below headings. */
    private void row(List<Cell> filled, Place place) {
        if (columns.isEmpty()) {
            headings(filled, place);
            return;
        }
        Map<PolicyKey, Written> entries = new EnumMap<>(PolicyKey.class);
        Map<String, Written> centres = new LinkedHashMap<>();
        for (Cell cell : filled) {
            PolicyKey key = columns.get(cell.column());
            if (key != null) {
                entries.put(key, new Written(Texts.tidy(cell.text()), place.atColumn(cell.column(), key.text())));
            } else if (centreColumns.containsKey(cell.column())) {
                centres.put(centreColumns.get(cell.column()),
                        new Written(Texts.tidy(cell.text()), place.atColumn(cell.column(), "")));
            }
        }
        if (entries.size() < 2) {
            note(place, Texts.tidy(filled.get(0).text()));
        } else if (section.filter(Section.WAVES::equals).isPresent()) {
            draft.waves.add(new WaveDraft(entries, centres, place));
        } else {
            draft.targets.add(new TargetDraft(entries, place));
        }
    }

    private void headings(List<Cell> filled, Place place) {
        Section list = section.orElse(Section.TARGETS);
        centreColumns = new TreeMap<>();
        Map<Integer, PolicyKey> found = new TreeMap<>();
        for (Cell cell : filled) {
            Matcher centre = CENTRE.matcher(Texts.tidy(cell.text()));
            if (list == Section.WAVES && centre.matches()) {
                centreColumns.put(cell.column(), centre.group(1));
            }
            PolicyKey.of(list, cell.text().replaceAll("\\(.*\\)", ""))
                    .ifPresent(key -> found.put(cell.column(), key));
        }
        if (found.size() < 2) {
            note(place, Texts.tidy(filled.get(0).text()));
            return;
        }
        for (Cell cell : filled) {
            if (!found.containsKey(cell.column()) && !centreColumns.containsKey(cell.column())) {
                draft.report(Doubt.error("unknown-key", "The heading \"%s\" is not known.".formatted(cell.text()),
                        "a heading of " + list.text(), PolicyKey.advice(list, cell.text())),
                        place.atColumn(cell.column(), ""), cell.text());
            }
        }
        columns = found;
    }

    private void amount(String first, List<Cell> filled, Place place, BiConsumer<String, Written> amounts) {
        if (filled.size() == 1 || filled.get(1).type() == Cell.Type.TEXT && !filled.get(1).text().matches(".*\\d.*")) {
            note(place, first);
        } else {
            amounts.accept(first, second(filled, place));
        }
    }

    private void leave(String first, List<Cell> filled, Place place) {
        Optional<PolicyKey> kind = PolicyKey.of(Section.LEAVE_ALONE, first);
        if (kind.isEmpty() || filled.size() == 1) {
            note(place, first);
            return;
        }
        for (Cell cell : filled.subList(1, filled.size())) {
            draft.leave(kind.get(), new Written(Texts.tidy(cell.text()), place.atColumn(cell.column(), "")));
        }
    }

    @Override
    public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
        if (sectionSeen) {
            unknown.forEach(Runnable::run);
        } else if (rows > 0) {
            draft.report(Doubt.note("sheet-without-table", "Nothing on this sheet was recognised as part of a policy.",
                    "", "Nothing, if it holds explanations."), Place.ofFile(file), sheet);
        }
    }
}
