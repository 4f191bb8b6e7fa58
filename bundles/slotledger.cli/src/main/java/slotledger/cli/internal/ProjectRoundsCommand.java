package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.RoundWish;
import slotledger.app.RoundWish.OpenTime;
import slotledger.model.task.Progress;
import slotledger.model.work.RoundSheet;

/** Makes rounds, and shows how far they have come. */
@Command(
        name = "rounds",
        description = "Show the rounds of the plan that is carried out and the state of every job; with --technician, "
                + "make them anew of all machines that are not done, those that give modules before those that get "
                + "them.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project rounds school --technician Ben --technician Ada",
            "  slotledger project rounds school --technician Ben --window \"2026-12-01 08:00-12:00\" \\",
            "      --window \"Main / 101=2026-12-02 14:00-17:00\"",
            "  slotledger project rounds school --round main-01"
        })
final class ProjectRoundsCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--technician", paramLabel = "NAME", description = "Who walks; may be given again.")
    private List<String> technicians = new ArrayList<>();

    @Option(names = "--window", paramLabel = "[PLACE=]DAY FROM-UNTIL", description = "When work is possible, "
            + "everywhere or at a site or \"site / room\"; may be given again. Any time unless given.")
    private List<String> windows = new ArrayList<>();

    @Option(names = "--plan", paramLabel = "NUMBER", description = "Plan to carry out; the approved one unless given, "
            + "or else the last.")
    private Integer plan;

    @Option(names = "--machines", paramLabel = "NUMBER", defaultValue = "20", description = "Most machines of one "
            + "round; ${DEFAULT-VALUE} unless given.")
    private int machines = 20;

    @Option(names = "--minutes", paramLabel = "NUMBER", defaultValue = "15", description = "What one machine takes; "
            + "${DEFAULT-VALUE} unless given, which is a guess.")
    private int minutes = 15;

    @Option(names = "--way", paramLabel = "MINUTES", defaultValue = "30", description = "From one site to another; "
            + "${DEFAULT-VALUE} unless given, which is a guess.")
    private int way = 30;

    @Option(names = "--round", paramLabel = "ID", description = "Show only this round, with its bags.")
    private String only;

    @Mixin
    private AuthorOptions author;

    ProjectRoundsCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<RoundSheet> sheets = technicians.isEmpty() ? shown()
                : desk().coordinator().makeRounds(project, wish(), author.author());
        Answer.Builder answer = new Answer.Builder();
        new RoundText(desk().work().jobs(project), only != null).report(answer, sheets);
        return answer.end(ExitCode.OK);
    }

    private List<RoundSheet> shown() throws DeskException {
        List<RoundSheet> all = desk().coordinator().roundSheets(project);
        if (only == null) {
            return all;
        }
        List<RoundSheet> one = all.stream().filter(sheet -> sheet.round().id().equals(only)).toList();
        if (one.isEmpty()) {
            throw new DeskException(Trouble.INPUT, "There is no round " + only + "; there are "
                    + all.stream().map(sheet -> sheet.round().id()).toList() + ".");
        }
        return one;
    }

    private RoundWish wish() throws DeskException {
        List<OpenTime> times = new ArrayList<>();
        for (String window : windows) {
            times.add(OpenTimes.read(window));
        }
        try {
            return new RoundWish(plan == null ? OptionalInt.empty() : OptionalInt.of(plan), technicians, times,
                    machines, Duration.ofMinutes(minutes), Duration.ofMinutes(way));
        } catch (IllegalArgumentException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }
}
