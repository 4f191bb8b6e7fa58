package slotledger.cli.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** What all commands share: the desk, the console, --json and --help. */
abstract class DeskCommand implements Callable<Integer> {

    @Option(names = "--json", description = "Print the result as JSON, for other programs.")
    private boolean json;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    private final FleetDesk desk;
    private final Console console;

    DeskCommand(FleetDesk desk, Console console) {
        this.desk = desk;
        this.console = console;
    }

    /** Does the work; the progress line is cleared before anything is printed. */
    abstract Answer work(Progress progress) throws DeskException;

    @Override
    public final Integer call() throws DeskException {
        Answer answer;
        try (ProgressLine progress = new ProgressLine(console)) {
            answer = work(progress);
        }
        if (json) {
            console.line(asJson(answer.facts()));
        } else {
            answer.lines().forEach(line -> line.accept(console));
        }
        return answer.code().number();
    }

    FleetDesk desk() {
        return desk;
    }

    private static String asJson(Map<String, Object> facts) {
        try {
            return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(facts);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("The facts %s must be plain values.".formatted(facts), impossible);
        }
    }
}
