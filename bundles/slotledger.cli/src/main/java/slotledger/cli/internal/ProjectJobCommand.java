package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;

/** Shows the jobs of machines, and writes down what happened to them. */
@Command(
        name = "job",
        description = "Show how far the work on machines has come, or write down what happened.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project job school H-1001",
            "  slotledger project job school H-1001 H-1002 --state bagged",
            "  slotledger project job school H-1001 --state done --serial DIMM1=00A1F3",
            "  slotledger project job school H-1003 --state put-back --reason \"beeps three times\""
        })
final class ProjectJobCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "TAG", description = "Asset tags.")
    private List<String> machines;

    @Option(names = "--state", paramLabel = "STATE", description = "planned, bagged, in-work, done, done-differently, "
            + "failed or put-back.")
    private String state;

    @Option(names = "--reason", paramLabel = "TEXT", defaultValue = "", description = "Why it is in that state; must "
            + "be given for failed and put-back.")
    private String reason = "";

    @Option(names = "--step", paramLabel = "NUMBER", description = "A step of the job sheet that is done; may be given "
            + "again.")
    private List<Integer> steps = new ArrayList<>();

    @Option(names = "--serial", paramLabel = "SLOT=NUMBER", description = "Serial number of the module in a slot; may "
            + "be given again.")
    private Map<String, String> serials = new LinkedHashMap<>();

    @Option(names = "--other", paramLabel = "TEXT", description = "What is other than planned; \"SLOT=text\" says in "
            + "which slot; may be given again.")
    private List<String> others = new ArrayList<>();

    @Mixin
    private AuthorOptions author;

    ProjectJobCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<Job> jobs = new ArrayList<>();
        List<What> happened = happened();
        List<JobEvent> events = new ArrayList<>();
        for (String machine : machines) {
            Job job = desk().work().job(project, new AssetTag(ProjectPinCommand.given(machine)));
            jobs.add(job);
            happened.forEach(what -> events.add(
                    new JobEvent(UUID.randomUUID(), job.machine(), job.plan(), Instant.now(), what)));
        }
        if (!events.isEmpty()) {
            jobs = desk().work().record(project, events, author.author());
        }
        Answer.Builder answer = new Answer.Builder();
        jobs.forEach(job -> RoundText.job(answer, job));
        return answer.fact("jobs", jobs.stream().map(RoundText::facts).toList()).end(ExitCode.OK);
    }

    private List<What> happened() throws DeskException {
        try {
            List<What> happened = new ArrayList<>();
            steps.forEach(step -> happened.add(new What.Ticked(step, true)));
            serials.forEach((slot, serial) -> happened.add(new What.SerialRead(slot, serial)));
            for (String other : others) {
                int parts = other.indexOf('=');
                happened.add(new What.Deviated(parts < 0 ? "" : other.substring(0, parts), other.substring(parts + 1)));
            }
            if (state != null) {
                happened.add(new What.Became(state(), reason));
            }
            return happened;
        } catch (IllegalArgumentException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    private JobState state() throws DeskException {
        return JobState.of(state).orElseThrow(() -> new DeskException(Trouble.INPUT, "A job is never \"" + state
                + "\"; it is one of " + Stream.of(JobState.values()).map(JobState::id)
                        .collect(Collectors.joining(", ")) + "."));
    }
}
