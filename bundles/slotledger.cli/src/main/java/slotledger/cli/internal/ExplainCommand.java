package slotledger.cli.internal;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.app.Trial;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.module.ModuleKind;
import slotledger.model.task.Progress;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Verdict;

/** Says of a machine, and of a module in it, why yes and why no. */
@Command(
        name = "explain",
        description = "Show how a machine runs and why, by which rules and documents; and whether a module goes "
                + "into it.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger explain demo-fleet --machine H-1001",
            "  slotledger explain demo-fleet --machine H-1001 --module \"8GB 1Rx8 PC4-2666V-U\"",
            "  slotledger explain demo-fleet --machine H-1001 --module QF-D4U8"
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
        Machine found = survey.fleet().find(new AssetTag(machine))
                .orElseThrow(() -> MissingMachine.of(survey, machine));
        Answer.Builder answer = new Answer.Builder();
        MachineText text = new MachineText(answer, survey.fleet().boardOf(found), found);
        text.machine();
        text.target(desk().shortfalls(survey, found), survey.policy().flatMap(policy -> policy.target(found.role())));
        Verdict now = desk().judge(survey, found, found.population());
        Arithmetic sums = desk().workOut(survey, found, found.population());
        text.runs(now.operation(), sums);
        answer.fact("arithmetic", ArithmeticText.facts(sums)).fact("verdict", VerdictText.facts(now));
        if (module == null) {
            text.verdict(now);
            ToFindOut.lines(answer, List.of(now), sums, now.operation().rate());
            return answer.end(now.blocks() ? ExitCode.DIFFERS : ExitCode.OK);
        }
        ModuleKind kind = desk().moduleKind(survey, module);
        answer.line("").wrapped("Module", kind.toString()).fact("module", kind.toString());
        List<Trial> trials = desk().tryModule(survey, found, kind);
        new TrialText(answer).report(trials);
        ToFindOut.lines(answer, trials.stream().map(Trial::verdict).toList(), sums, now.operation().rate());
        boolean works = trials.stream().anyMatch(trial -> !trial.verdict().blocks());
        return answer.end(works ? ExitCode.OK : ExitCode.DIFFERS);
    }
}
