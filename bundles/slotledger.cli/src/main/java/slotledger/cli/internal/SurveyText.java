package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.observed.TableUse;
import slotledger.model.source.Place;

/** A survey in words and as facts. */
final class SurveyText {

    private final Survey survey;

    SurveyText(Survey survey) {
        this.survey = survey;
    }

    void columns(Answer.Builder answer) {
        for (TableUse table : survey.columns()) {
            answer.line(table.file() + (table.sheet().isEmpty() ? "" : ", sheet " + table.sheet()) + ": "
                    + table.rows() + " rows below the headings in row " + table.headerRow());
            for (TableUse.ColumnUse column : table.columns()) {
                answer.line("    " + Place.letters(column.column()) + "  " + column.heading() + "  ->  "
                        + (column.field().isEmpty() ? "(not used)" : column.field()));
            }
        }
    }

    void summary(Answer.Builder answer) {
        int fillers = onShelf(Filler.class);
        answer.item("Fleet", survey.observed() + " machines listed, " + survey.fleet().machines().size()
                + " with a known board, " + survey.unresolved().size() + " that can't be judged yet");
        answer.item("Boards", survey.boards().size() + " in the catalog, "
                + survey.fleet().boards().size() + " in the fleet");
        answer.item("Offers", survey.market().offers().size() + " of " + survey.market().suppliers().size()
                + " suppliers; " + onShelf(ModuleKind.class) + " modules" + (fillers == 0 ? "" : " and "
                + fillers + " fillers") + " on the shelf");
        answer.item("Findings", count(Severity.ERROR) + " errors, " + count(Severity.WARNING) + " warnings, "
                + count(Severity.NOTE) + " notes");
    }

    private int onShelf(Class<? extends Piece> type) {
        return survey.shelf().pieces().entrySet().stream()
                .filter(each -> type.isInstance(each.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    void facts(Answer.Builder answer) {
        answer.fact("machines", survey.observed())
                .fact("known", survey.fleet().machines().size())
                .fact("unresolved", survey.unresolved().size())
                .fact("errors", count(Severity.ERROR))
                .fact("warnings", count(Severity.WARNING))
                .fact("notes", count(Severity.NOTE));
        List<Object> findings = new ArrayList<>();
        survey.findings().forEach(finding -> findings.add(facts(finding)));
        answer.fact("findings", findings);
    }

    private static Map<String, Object> facts(Finding finding) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("severity", finding.severity().text());
        facts.put("code", finding.code());
        facts.put("file", finding.place().file());
        facts.put("sheet", finding.place().sheet());
        finding.place().row().ifPresent(row -> facts.put("row", row));
        finding.place().column().ifPresent(column -> facts.put("column", column));
        finding.machine().ifPresent(tag -> facts.put("machine", tag.value()));
        facts.put("seen", finding.seen());
        facts.put("message", finding.message());
        facts.put("expected", finding.expected());
        facts.put("remedy", finding.remedy());
        return facts;
    }

    boolean hasErrors() {
        return count(Severity.ERROR) > 0;
    }

    private long count(Severity severity) {
        return survey.findings().stream().filter(finding -> finding.severity() == severity).count();
    }
}
