package slotledger.cli.internal;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.PlanQuestions;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.task.Progress;

/** What else one machine could end with, and what that would cost. */
@Command(
        name = "alternatives",
        description = "Show what else a machine could end with, and what the whole plan would then cost. Plans the "
                + "fleet first.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger alternatives demo-fleet --machine H-1001",
            "  slotledger alternatives demo-fleet --machine H-1001 --budget 5000 --json"
        })
final class AlternativesCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Mixin
    private BudgetOption budget;

    @Option(names = "--machine", required = true, paramLabel = "TAG", description = "Asset tag.")
    private String machine;

    AlternativesCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = budget.in(desk().survey(project.open(desk()), progress));
        AssetTag tag = new AssetTag(machine);
        if (survey.fleet().find(tag).isEmpty()) {
            throw MissingMachine.of(survey, machine);
        }
        PlanQuestions questions = desk().ask(survey, progress);
        Answer.Builder answer = new Answer.Builder();
        new AlternativesText(questions.plan(), tag).report(questions.alternatives(tag, progress), answer);
        return answer.end(ExitCode.OK);
    }
}
