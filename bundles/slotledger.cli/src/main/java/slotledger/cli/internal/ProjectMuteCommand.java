package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Entry;
import slotledger.model.task.Progress;

/** Mutes a warning that somebody looked at. */
@Command(
        name = "mute",
        description = "Say that a warning was looked at and is no trouble. It becomes a note, in later inventories "
                + "too, as long as the same is seen. Errors can't be muted.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project mute school --code total-differs --machine K-17 --why \"graphics take 512 MB\"")
final class ProjectMuteCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--code", required = true, paramLabel = "CODE",
            description = "Which check; \"check --json\" shows the code of each finding.")
    private String code;

    @Option(names = "--machine", paramLabel = "TAG",
            description = "Machine it is about; unless given, findings that are about no machine.")
    private String machine;

    @Mixin
    private AuthorOptions author;

    ProjectMuteCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Optional<AssetTag> tag = machine == null ? Optional.empty()
                : Optional.of(new AssetTag(ProjectPinCommand.given(machine)));
        Survey survey = desk().survey(desk().open(project), progress);
        List<Entry> made = desk().projects().mute(survey, code, tag, author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(project, made, answer);
        return answer.end(ExitCode.OK);
    }
}
