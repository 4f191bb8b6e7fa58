package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Entry;
import slotledger.model.project.Fact;
import slotledger.model.task.Progress;

/** Says what is right where the inventory is wrong. */
@Command(
        name = "correct",
        description = "Say what is right where the inventory is wrong about a machine. It holds for later inventories, "
                + "too; where one says something new, that is shown.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project correct school --machine K-17 --fact role --value lab --why \"moved in May\"")
final class ProjectCorrectCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--machine", required = true, paramLabel = "TAG", description = "Asset tag.")
    private String machine;

    @Option(names = "--fact", required = true, paramLabel = "FACT",
            description = "serial, maker, model, site, room, cost-centre, role, operating-system or processor.")
    private String fact;

    @Option(names = "--value", required = true, paramLabel = "TEXT", description = "What is right.")
    private String value;

    @Mixin
    private AuthorOptions author;

    ProjectCorrectCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Fact meant = Fact.of(fact).orElseThrow(() -> new DeskException(Trouble.INPUT, "\"" + fact
                + "\" can't be corrected; " + Stream.of(Fact.values()).map(Fact::id).collect(Collectors.joining(", "))
                + " can."));
        Survey survey = desk().survey(desk().open(project), progress);
        Entry made = desk().projects().correct(survey, new AssetTag(ProjectPinCommand.given(machine)), meant, value,
                author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(project, List.of(made), answer);
        return answer.end(ExitCode.OK);
    }
}
