package slotledger.cli.internal;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.difference.Difference;
import slotledger.model.task.Progress;

/** Two plans beside each other. */
@Command(
        name = "compare",
        description = "Say what is different between two plans: money, machines on target, purchase lines, and each "
                + "machine that ends with other modules, with the reason.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger compare plan-of-may plan-of-june",
            "  slotledger compare old/plan.json new/plan.json --out changes.xlsx",
            "  \"slotledger plan my-school --before plan-of-may\" plans anew and says the same in the order workbook."
        })
final class CompareCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "OLD-PLAN", description = "Folder of the earlier plan, or its plan.json.")
    private Path older;

    @Parameters(index = "1", paramLabel = "NEW-PLAN", description = "Folder of the later plan, or its plan.json.")
    private Path newer;

    @Option(names = "--out", paramLabel = "FILE", description = "Also write a workbook (.xlsx).")
    private Path out;

    @Option(names = "--force", description = "Replace the workbook of an earlier run.")
    private boolean force;

    CompareCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Difference difference = desk().compare(desk().earlier(older), desk().earlier(newer));
        Answer.Builder answer = new Answer.Builder();
        new DifferenceLines(difference).report(answer, Integer.MAX_VALUE);
        if (out != null) {
            desk().writeDifference(difference, out, force);
            answer.line("").item("Files", out.toString()).fact("file", out.toString());
        }
        return answer.end(difference.isNone() ? ExitCode.OK : ExitCode.DIFFERS);
    }
}
