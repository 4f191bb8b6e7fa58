package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.board.Board;
import slotledger.model.board.Takes;
import slotledger.model.task.Progress;
import slotledger.model.unit.Capacity;

/** Lists the boards of a project. */
@Command(
        name = "boards",
        description = "List the boards of a project: what they take, and who says so.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger boards my-school")
final class BoardsCommand extends DeskCommand {

    @Mixin
    private ProjectOptions project;

    BoardsCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Survey survey = desk().survey(project.open(desk()), progress);
        Answer.Builder answer = new Answer.Builder();
        List<Object> facts = new ArrayList<>();
        for (Board board : survey.boards()) {
            answer.line(board.id() + "  " + board.name() + "  (" + board.form().text() + ")");
            answer.line("    " + board.sockets().size() + " sockets, " + board.channels().size() + " channels, at most "
                    + board.largestTotal().map(Capacity::toString).orElse("an unknown total"));
            board.takes().forEach(way -> answer.line("    takes " + text(way)));
            answer.line("    " + board.source());
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("id", board.id().value());
            one.put("name", board.name());
            one.put("sockets", board.sockets().size());
            one.put("takes", board.takes().stream().map(BoardsCommand::text).toList());
            one.put("source", board.source().toString());
            facts.add(one);
        }
        return answer.fact("boards", facts).end(ExitCode.OK);
    }

    private static String text(Takes way) {
        List<String> parts = new ArrayList<>();
        parts.add(way.generation().text());
        way.forms().stream().sorted().forEach(form -> parts.add(form.text()));
        way.bufferings().stream().sorted().forEach(buffering -> parts.add(buffering.text()));
        way.voltages().stream().sorted().forEach(voltage -> parts.add(voltage.toString()));
        way.largestModule().ifPresent(largest -> parts.add("up to " + largest + " a slot"));
        parts.add(way.ecc().text().replace("not known", "ECC not known"));
        return String.join(", ", parts);
    }
}
