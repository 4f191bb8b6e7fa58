package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.model.difference.ProjectDifference;
import slotledger.model.difference.Term;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.task.Progress;

/** A project after one entry beside the same after another. */
@Command(
        name = "compare",
        description = "Say what is different between a project after one entry and after another: machines that came, "
                + "went or changed, prices, policy, shelf, decisions, and the last plans.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project compare school 2",
            "  slotledger project compare school 2 9",
            "  slotledger project compare school fleet-1 fleet-2"
        })
final class ProjectCompareCommand extends DeskCommand {

    private static final int MACHINES_SHOWN = 20;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Project, packed or not.")
    private Path project;

    @Parameters(index = "1", paramLabel = "EARLIER",
            description = "Number of an entry, or a version such as fleet-1, offers-2, plan-3.")
    private String before;

    @Parameters(index = "2", arity = "0..1", paramLabel = "LATER",
            description = "The same; the last entry if left out.")
    private String after;

    ProjectCompareCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Journal journal = desk().projects().history(project);
        ProjectDifference difference = desk().projects().compare(project, entry(journal, before),
                after == null ? OptionalLong.empty() : OptionalLong.of(entry(journal, after)), progress);
        Answer.Builder answer = new Answer.Builder();
        HistoryText text = new HistoryText(journal, ZoneId.systemDefault());
        answer.wrapped("Earlier", text.sentence(journal.entries().get((int) difference.before() - 1)));
        answer.wrapped("Later", text.sentence(journal.entries().get((int) difference.after() - 1)));
        if (difference.isNone()) {
            answer.item("Changes", "none");
        }
        section(answer, "Fleet", "fleet", difference.fleet());
        section(answer, "Offers", "offers", difference.offers());
        section(answer, "Shelf", "shelf", difference.shelf());
        section(answer, "Policy", "policy", difference.policy());
        section(answer, "Files", "files", difference.files());
        section(answer, "Decisions", "decisions", difference.decisions());
        difference.plan().ifPresent(plan -> {
            answer.line("");
            new DifferenceLines(plan).report(answer, MACHINES_SHOWN);
        });
        return answer.end(difference.isNone() ? ExitCode.OK : ExitCode.DIFFERS);
    }

    private static void section(Answer.Builder answer, String word, String fact, List<Term> terms) {
        for (int i = 0; i < terms.size(); i++) {
            answer.wrapped(i == 0 ? word : "", words(terms.get(i)));
        }
        answer.fact(fact, terms.stream().map(term -> Map.of("what", term.what(), "before", term.before(), "after",
                term.after())).toList());
    }

    private static String words(Term term) {
        if (term.before().equals("none")) {
            return term.what() + ": new, " + term.after();
        }
        if (term.after().equals("none")) {
            return term.what() + ": gone, was " + term.before();
        }
        return term.what() + ": " + term.after() + " instead of " + term.before();
    }

    /** The entry a number or a version names. */
    private long entry(Journal journal, String text) throws DeskException {
        if (text.matches("[0-9]{1,9}")) {
            return Long.parseLong(text);
        }
        Matcher version = Pattern.compile("([a-z]+)-([0-9]{1,6})").matcher(text);
        if (version.matches()) {
            int number = Integer.parseInt(version.group(2));
            for (Entry entry : journal.entries()) {
                if (brings(entry.change(), version.group(1)) && --number == 0) {
                    return entry.number();
                }
            }
        }
        throw new DeskException(Trouble.INPUT, "The project " + project + " has no entry or version \"" + text
                + "\". \"project history\" shows what there is; say its number, or a version such as fleet-2.");
    }

    private static boolean brings(Change change, String part) {
        return change instanceof Change.Planned && part.equals("plan") || change instanceof Change.Imported imported
                && imported.parts().keySet().stream().anyMatch(each -> each.id().equals(part));
    }
}
