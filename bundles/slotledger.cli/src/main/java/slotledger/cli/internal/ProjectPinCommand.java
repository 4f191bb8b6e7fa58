package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Entry;
import slotledger.model.task.Progress;

/** Says what a machine must end with. */
@Command(
        name = "pin",
        description = "Say what a machine must end with. Every plan keeps to it, or is refused with the reason; a slot "
                + "that is not named keeps what it holds.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project pin school --machine K-17 --slot \"DIMM1=8 GB DDR4\" --slot DIMM2=empty",
            "  slotledger project pin school --machine K-18 --as-now --why \"goes back to the lessor\""
        })
final class ProjectPinCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--machine", required = true, paramLabel = "TAG", description = "Asset tag.")
    private String machine;

    @Option(names = "--slot", paramLabel = "LABEL=MODULE", description = "What a slot holds; may be given again.")
    private Map<String, String> slots = new LinkedHashMap<>();

    @Option(names = "--as-now", description = "All slots keep what they hold.")
    private boolean asNow;

    @Mixin
    private AuthorOptions author;

    ProjectPinCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        if (asNow != slots.isEmpty()) {
            throw new DeskException(Trouble.INPUT,
                    "Say either what slots hold, with --slot for each, or --as-now.");
        }
        AssetTag tag = new AssetTag(given(machine));
        Survey survey = desk().survey(desk().open(project), progress);
        Entry made = desk().projects().pin(survey, tag, slots, author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(project, List.of(made), answer);
        List<String> said = desk().survey(desk().open(project), progress).findings().stream()
                .filter(finding -> finding.code().startsWith("pin")
                        && (finding.machine().isEmpty() || finding.machine().get().equals(tag))
                        || finding.place().file().startsWith("pins-of-the-project"))
                .map(Finding::toString).toList();
        said.forEach(answer::line);
        return answer.fact("findings", said).end(said.isEmpty() ? ExitCode.OK : ExitCode.DIFFERS);
    }

    static String given(String machine) throws DeskException {
        if (machine.isBlank()) {
            throw new DeskException(Trouble.INPUT, "Which machine? Its asset tag is missing behind --machine.");
        }
        return machine;
    }
}
