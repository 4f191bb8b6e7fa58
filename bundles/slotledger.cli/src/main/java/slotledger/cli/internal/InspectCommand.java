package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.LookAt;
import slotledger.app.LookAt.How;
import slotledger.app.LookAt.Question;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** Says what to look at before money is spent. */
@Command(
        name = "inspect",
        description = "Say what to look at first: the shortest list of machines to open (one of those that are alike), "
                + "what to read there, the money at stake and the purchase lines that wait for it.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger inspect my-school", "  slotledger inspect my-school --plan plan/plan.json"})
final class InspectCommand extends DeskCommand {

    private static final int MOST_NAMES = 8;

    @Mixin
    private ProjectOptions project;

    @Option(names = "--plan", paramLabel = "FILE", description = "A plan made before; unless given, one is made.")
    private Path plan;

    InspectCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = desk().survey(project.open(desk()), progress);
        Plan made = plan == null ? desk().plan(survey, progress) : desk().reopen(plan, survey);
        List<LookAt> list = desk().lookFirst(survey, made);
        Answer.Builder answer = new Answer.Builder();
        int number = 0;
        for (LookAt each : list) {
            lines(++number, each, answer);
        }
        long opened = list.stream().filter(each -> each.how() == How.OPEN).count();
        answer.item("To open", opened + (opened == 1 ? " machine" : " machines")
                + ", one of each kind; then write what you read into the inventory, or collect its firmware");
        if (list.isEmpty()) {
            answer.line("Nothing that the plan hangs on is unknown.");
        }
        return answer.fact("lookAt", list.stream().map(InspectCommand::facts).toList()).end(ExitCode.OK);
    }

    private static void lines(int number, LookAt each, Answer.Builder answer) {
        String count = each.machines().size() > 1 && each.how() == How.OPEN
                ? " (%s, one of %d alike)".formatted(each.machines().get(0), each.machines().size())
                : each.machines().size() == 1 ? " (" + each.machines().get(0) + ")"
                        : " (for %d machines)".formatted(each.machines().size());
        answer.line("%3d. %s: %s%s".formatted(number, each.how().text(), each.subject(), count));
        for (Question question : each.questions()) {
            String text = question.text().replaceFirst("\\.$", "");
            Wrapped.behind("       - ", text + ". " + question.way()).forEach(answer::line);
        }
        if (each.stake().minor() > 0) {
            Wrapped.behind("       ", "At stake: %s; waiting: %s".formatted(each.stake(),
                    String.join(", ", each.waiting()))).forEach(answer::line);
        }
        if (each.machines().size() > 1) {
            Wrapped.behind("       ", "Alike: " + String.join(", ", each.machines().stream().limit(MOST_NAMES)
                    .map(AssetTag::value).toList()) + (each.machines().size() > MOST_NAMES ? " and more" : ""))
                    .forEach(answer::line);
        }
    }

    private static Map<String, Object> facts(LookAt each) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("how", each.how().text());
        facts.put("subject", each.subject());
        facts.put("machines", each.machines().stream().map(AssetTag::value).toList());
        List<Object> questions = new ArrayList<>();
        each.questions().forEach(question -> questions.add(Map.of("text", question.text(), "way", question.way())));
        facts.put("questions", questions);
        facts.put("stake", each.stake().amount().toPlainString());
        facts.put("waiting", each.waiting());
        return facts;
    }
}
