package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.RuleText;
import slotledger.model.task.Progress;

/** Shows the rules that are active, or the page of one. */
@Command(
        name = "rules",
        description = "List the rules that are active; of one rule show the page: who says so, how to tell, what to "
                + "do, an example.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger rules",
            "  slotledger rules generation"
        })
final class RulesCommand extends DeskCommand {

    private static final String INDENT = "    ";
    private static final int NEAR = 5;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "Id of a rule, as verdicts show it in brackets.")
    private String id;

    RulesCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<RuleText> pages = desk().rulePages();
        Answer.Builder answer = new Answer.Builder();
        if (id != null) {
            RuleText page = pages.stream().filter(each -> each.id().equalsIgnoreCase(id)).findFirst()
                    .orElseThrow(() -> unknown(pages));
            page(page).forEach(answer::line);
            return answer.fact("rules", List.of(facts(page))).end(ExitCode.OK);
        }
        int width = pages.stream().mapToInt(page -> page.id().length()).max().orElse(0) + 2;
        for (RuleText page : pages) {
            Wrapped.behind(Wrapped.cell(page.id(), width), page.sentence()).forEach(answer::line);
        }
        answer.line("").line(pages.size() + " rules are active. \"rules\" with an id shows a rule's page.");
        return answer.fact("rules", pages.stream().map(RulesCommand::facts).toList()).end(ExitCode.OK);
    }

    private static List<String> page(RuleText page) {
        List<String> lines = new ArrayList<>(Wrapped.lines(page.sentence(), Wrapped.WIDTH));
        lines.add("");
        part(lines, "Rule", page.id());
        part(lines, "Who says so", page.source().toString());
        part(lines, "How to tell", page.howToTell());
        part(lines, "What to do", page.whatToDo());
        part(lines, "Example", page.example());
        lines.remove(lines.size() - 1);
        return lines;
    }

    private static void part(List<String> lines, String heading, String text) {
        lines.add(heading);
        lines.addAll(Wrapped.behind(INDENT, text));
        lines.add("");
    }

    private static Map<String, Object> facts(RuleText page) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("id", page.id());
        facts.put("sentence", page.sentence());
        facts.put("source", page.source().toString());
        facts.put("ground", page.source().ground().text());
        facts.put("howToTell", page.howToTell());
        facts.put("whatToDo", page.whatToDo());
        facts.put("example", page.example());
        return facts;
    }

    private DeskException unknown(List<RuleText> pages) {
        Optional<String> near = pages.stream().map(RuleText::id)
                .filter(each -> id.length() > 2 && (each.contains(id.toLowerCase(Locale.ROOT))
                        || each.startsWith(id.substring(0, Math.min(NEAR, id.length())))))
                .sorted(Comparator.comparingInt(String::length))
                .limit(NEAR)
                .reduce((all, each) -> all + ", " + each);
        return new DeskException(Trouble.INPUT, "No active rule has the id " + id + "."
                + near.map(ids -> " Maybe one of these: " + ids + ".").orElse(" \"rules\" lists them all."));
    }
}
