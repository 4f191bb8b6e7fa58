package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.app.Trial;
import slotledger.model.board.Board;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.module.ModuleKind;
import slotledger.model.task.Progress;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;

/** Says of a machine, and of a module in it, why yes and why no. */
@Command(
        name = "explain",
        description = "Show a machine as it is, and every rule passed or failed for a module in its sockets.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger explain my-school --machine LAB-014",
            "  slotledger explain my-school --machine LAB-014 --module \"8GB 1Rx8 PC4-2666V-S\"",
            "  slotledger explain my-school --machine LAB-014 --module NORD-D4S8"
        })
final class ExplainCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Option(names = "--machine", required = true, paramLabel = "TAG", description = "Asset tag.")
    private String machine;

    @Option(
            names = "--module",
            paramLabel = "TEXT",
            description = "An offer's id or part number, or what stands on a label; without it the machine as it is.")
    private String module;

    ExplainCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = desk().survey(project.open(desk()), progress);
        Machine found = survey.fleet().find(new AssetTag(machine)).orElseThrow(() -> missing(survey));
        Answer.Builder answer = new Answer.Builder();
        Board board = survey.fleet().boardOf(found);
        answer.item("Machine", found.tag() + "  " + found.where() + "  " + found.role());
        answer.item("Board", board.name() + "  (" + board.source() + ")");
        found.population().contents().forEach((slot, content) -> answer.item("", slot + ": " + content));
        operation(answer, desk().operate(survey, found));
        answer.fact("machine", found.tag().value()).fact("board", board.id().value());
        if (module == null) {
            Verdict verdict = desk().judge(survey, found, found.population());
            answer.items("Rules", VerdictText.lines(verdict, "")).fact("verdict", VerdictText.facts(verdict));
            return answer.end(verdict.blocks() ? ExitCode.DIFFERS : ExitCode.OK);
        }
        return trials(answer, survey, found);
    }

    private Answer trials(Answer.Builder answer, Survey survey, Machine found) throws DeskException {
        ModuleKind kind = desk().moduleKind(survey, module);
        answer.item("Module", kind.toString()).fact("module", kind.toString());
        List<Object> facts = new ArrayList<>();
        boolean works = false;
        for (Trial trial : desk().tryModule(survey, found, kind)) {
            Verdict verdict = trial.verdict();
            works |= !verdict.blocks();
            answer.line("");
            answer.item("In " + String.join(", ", trial.slots()), verdict.weight().text());
            if (!verdict.blocks()) {
                operation(answer, verdict.operation());
            }
            answer.items("", VerdictText.lines(verdict, ""));
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("slots", trial.slots());
            one.put("verdict", VerdictText.facts(verdict));
            facts.add(one);
        }
        return answer.fact("trials", facts).end(works ? ExitCode.OK : ExitCode.DIFFERS);
    }

    private static void operation(Answer.Builder answer, Operation runs) {
        answer.item("Runs", runs.installed() + " installed, " + runs.usable() + " usable, " + runs.mode()
                + runs.rate().map(rate -> " at " + rate + ", peak " + runs.peak()).orElse(", rate unknown"));
        if (!runs.rateWhy().isEmpty()) {
            answer.item("", runs.rateWhy());
        }
    }

    private DeskException missing(Survey survey) {
        String why = survey.findings().stream()
                .filter(finding -> finding.machine().map(AssetTag::value).orElse("").equals(machine))
                .map(Finding::toString)
                .reduce("", (all, each) -> all + System.lineSeparator() + "    " + each);
        return new DeskException(Trouble.INPUT, "No machine with the asset tag " + machine + " can be judged."
                + (why.isEmpty() ? " The inventory does not list it; \"check\" shows what it lists." : why));
    }
}
