package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.app.WrittenGoal;
import slotledger.model.task.Progress;

/** The programme of a plan, for general solvers. */
@Command(
        name = "programme",
        description = "Write the integer programme behind a plan, so that a general solver can be asked for the same "
                + "optimum: one file a goal, each goal before it fixed as a row.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger programme my-school --out my-school-programme",
            "  slotledger programme my-school --form mps --out my-school-programme"
        })
final class ProgrammeCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--form", defaultValue = "lp", paramLabel = "lp|mps", description = "Form of the files; lp unless "
            + "given.")
    private String form;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    ProgrammeCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = desk().survey(project.open(desk()), progress);
        Answer.Builder answer = new Answer.Builder();
        List<Map<String, Object>> goals = new ArrayList<>();
        for (WrittenGoal goal : desk().writeProgrammes(survey, form, out, force, progress)) {
            answer.item("Goal", goal.goal() + ": " + (goal.value() == goal.bound()
                    ? goal.value() + ", proven" : goal.value() + ", not below " + goal.bound()));
            answer.item("", goal.file().toString());
            goals.add(Map.of("goal", goal.goal(), "value", goal.value(), "bound", goal.bound(),
                    "file", goal.file().toString()));
        }
        return answer.fact("goals", goals).end(ExitCode.OK);
    }
}
