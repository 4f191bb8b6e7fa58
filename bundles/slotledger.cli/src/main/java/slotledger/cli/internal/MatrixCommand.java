package slotledger.cli.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.module.ModuleKind;
import slotledger.model.task.Progress;

/** Every module against every slot of a board. */
@Command(
        name = "matrix",
        description = "Say of every module of a project, for every slot of a board, whether it goes in, how it runs "
                + "then, and why.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger matrix demo-fleet --board kestrin-kb515",
            "  slotledger matrix demo-fleet --board kestrin-kb515 --out kb515.xlsx",
            "  slotledger matrix demo-fleet --board kestrin-kb515 --module \"8GB 1Rx8 PC4-2666V-U\" --json"
        })
final class MatrixCommand extends DeskCommand {

    private static final String SCHEMA = "/slotledger/cli/matrix.schema.json";

    @Mixin
    private ProjectOptions project;

    @Option(names = "--board", required = true, paramLabel = "ID", description = "Id, name or alias of a board.")
    private String board;

    @Option(
            names = "--module",
            paramLabel = "TEXT",
            description = "An offer's id or part number, or what stands on a label; may be given again. "
                    + "Without it every module on offer, on the shelf and in the fleet.")
    private List<String> modules;

    @Option(names = "--out", paramLabel = "FILE", description = "Also write a workbook (.xlsx).")
    private Path out;

    @Option(names = "--force", description = "Replace the workbook of an earlier run.")
    private boolean force;

    @Option(names = "--schema", help = true, description = "Print the JSON schema of what --json prints, and end.")
    private boolean schema;

    MatrixCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        if (schema) {
            return new Answer.Builder().line(schema()).end(ExitCode.OK);
        }
        Survey survey = desk().survey(project.open(desk()), progress);
        List<ModuleKind> kinds = new ArrayList<>();
        for (String text : modules == null ? List.<String>of() : modules) {
            kinds.add(desk().moduleKind(survey, text));
        }
        BoardMatrix matrix = desk().matrix(survey, board, kinds, progress);
        Answer.Builder answer = new Answer.Builder();
        new MatrixText(matrix).lines(answer);
        MatrixFacts.of(matrix).forEach(answer::fact);
        if (out != null) {
            desk().writeMatrix(matrix, out, force);
            answer.line("").item("Files", out.toString()).fact("file", out.toString());
        }
        return answer.end(ExitCode.OK);
    }

    static String schema() {
        try (InputStream in = MatrixCommand.class.getResourceAsStream(SCHEMA)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException impossible) {
            throw new IllegalStateException("The schema must be in this bundle.", impossible);
        }
    }
}
