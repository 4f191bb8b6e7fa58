package slotledger.cli.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Says what the exit codes mean. */
@Command(name = "exit-codes", description = "List the exit codes and what they mean.")
final class ExitCodesCommand extends DeskCommand {

    ExitCodesCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) {
        Answer.Builder answer = new Answer.Builder();
        Map<String, Object> facts = new LinkedHashMap<>();
        for (ExitCode code : ExitCode.values()) {
            answer.item(Integer.toString(code.number()), code.text());
            facts.put(Integer.toString(code.number()), code.text());
        }
        return answer.fact("exitCodes", facts).end(ExitCode.OK);
    }
}
