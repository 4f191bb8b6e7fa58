package slotledger.workbench.internal.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.Round;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.lines.Line;

/** Rounds with their machines; machines alone where no rounds were made. */
final class RoundLines {

    private RoundLines() {
    }

    static List<Line> of(Work work) {
        if (work.rounds().isEmpty()) {
            return work.jobs().keySet().stream().map(tag -> machine(work, tag)).toList();
        }
        List<Line> lines = new ArrayList<>();
        for (Round round : work.rounds()) {
            List<Line> machines = round.machines().stream().filter(work.jobs()::containsKey)
                    .map(tag -> machine(work, tag)).toList();
            lines.add(new Line(List.of(round.id(), where(round), "", ended(work, round)), inFull(work, round),
                    Optional.empty(), machines));
        }
        return lines;
    }

    static String summary(Work work) {
        return Texts.with(Texts.work_summary, work.jobs().size(), work.ended());
    }

    private static Line machine(Work work, AssetTag tag) {
        Job job = work.jobs().get(tag);
        Optional<JobCard> card = Optional.ofNullable(work.cards().get(tag));
        String place = card.map(JobCard::place).orElse("");
        String summary = card.map(JobCard::summary).orElse("");
        String said = Stream.concat(Stream.of(job.reason()).filter(text -> !text.isEmpty()),
                job.deviations().stream().map(deviation -> deviation.slot().isEmpty() ? deviation.text()
                        : deviation.slot() + ": " + deviation.text())).collect(Collectors.joining("; "));
        return new Line(List.of(tag.value(), place, summary, job.state().text()),
                Stream.of(tag.value(), place, summary, job.state().text(), said).filter(text -> !text.isEmpty())
                        .collect(Collectors.joining(" · ")), Optional.of(tag), List.of());
    }

    private static String where(Round round) {
        return Stream.of(round.technician(), round.site(), round.room()).filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String ended(Work work, Round round) {
        long done = round.machines().stream().map(work.jobs()::get)
                .filter(job -> job != null && job.state().isEnded()).count();
        return Texts.with(Texts.work_ended, done, round.machines().size());
    }

    private static String inFull(Work work, Round round) {
        return Stream.of(round.id(), where(round),
                round.window().map(window -> Texts.with(Texts.work_window, window.from(), window.until())).orElse(""),
                ended(work, round)).filter(text -> !text.isEmpty()).collect(Collectors.joining(" · "));
    }
}
