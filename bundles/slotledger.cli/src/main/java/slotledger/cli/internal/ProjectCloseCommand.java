package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.OpenPoints;
import slotledger.model.task.Progress;

/** Writes how a plan ended. */
@Command(
        name = "close",
        description = "Write how the plan that is carried out ended: a report (PDF) and a workbook with money planned "
                + "and spent, machines on target before and after, deviations, leftovers with their place and open "
                + "points, and a list of assets (CSV) that inventories take in. With --after it is proved first.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project close school --after inventory.xlsx --out end")
final class ProjectCloseCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--after", paramLabel = "FILE", description = "Inventory taken after the work; may be given again.")
    private List<Path> after = new ArrayList<>();

    @Option(names = "--firmware", paramLabel = "PATH", description = "Firmware tables or listings of machines.")
    private List<Path> firmware = new ArrayList<>();

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    @Mixin
    private AuthorOptions author;

    ProjectCloseCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Optional<ClosingProof> closing = after.isEmpty() ? Optional.empty()
                : Optional.of(desk().coordinator().prove(project, after, firmware, desk().open(project),
                        author.author(), progress));
        CloseOut close = desk().coordinator().closeOut(project, closing, LocalDate.now());
        List<String> files = desk().coordinator().writeCloseOut(close, out, force).stream().map(Path::toString)
                .toList();
        Answer.Builder answer = new Answer.Builder();
        CloseOut.RoleCount all = close.all();
        answer.item("Targets", all.before() + " of " + all.machines() + " machines before, " + all.planned()
                + " planned, " + (closing.isEmpty() ? "none proved yet" : all.proved() + " proved"));
        List<String> points = OpenPoints.of(close);
        points.forEach(point -> answer.wrapped("Open", point));
        answer.items("Files", files);
        answer.fact("files", files).fact("open", points).fact("machines", all.machines())
                .fact("before", all.before()).fact("planned", all.planned()).fact("proved", all.proved());
        return answer.end(points.isEmpty() ? ExitCode.OK : ExitCode.DIFFERS);
    }
}
