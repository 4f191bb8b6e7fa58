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
import slotledger.app.DraftedBoards;
import slotledger.app.DraftedBoards.Drafted;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Drafts board files from firmware. */
@Command(
        name = "draft",
        description = "Draft a board file for each model whose firmware the project holds and no document speaks of. A "
                + "person must check each; a draft gives way to a board with a document.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger draft my-school --out my-school/boards/drafts")
final class DraftCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where to write the drafts.")
    private Path out;

    @Option(names = "--force", description = "Replace the drafts of an earlier run; checked ones are never replaced.")
    private boolean force;

    DraftCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        DraftedBoards drafted = desk().firmware().draftBoards(project.open(desk()), out, force, progress);
        Answer.Builder answer = new Answer.Builder();
        List<Object> facts = new ArrayList<>();
        for (Drafted board : drafted.boards()) {
            answer.line("%s  %s  (%d machine%s)".formatted(board.id(), board.name(), board.machines(),
                    board.machines() == 1 ? "" : "s"));
            board.open().forEach(open -> answer.line("    to find out: " + open));
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("id", board.id().value());
            one.put("name", board.name());
            one.put("machines", board.machines());
            one.put("toFindOut", board.open());
            one.put("file", board.file().toString());
            facts.add(one);
        }
        drafted.findings().forEach(finding -> answer.line(finding.toString()));
        answer.item("Drafts", "%d board files in %s; check each against the board's document"
                .formatted(drafted.boards().size(), out));
        return answer.fact("drafts", facts).fact("findings", drafted.findings().stream().map(Object::toString).toList())
                .end(drafted.findings().isEmpty() ? ExitCode.OK : ExitCode.DIFFERS);
    }
}
