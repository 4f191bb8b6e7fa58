package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;

/** What a command that changes a project says afterwards. */
final class HistoryReport {

    private final FleetDesk desk;

    HistoryReport(FleetDesk desk) {
        this.desk = desk;
    }

    /** The whole history. */
    void report(Path project, Answer.Builder answer) throws DeskException {
        new HistoryText(desk.projects().history(project), ZoneId.systemDefault()).report(answer);
    }

    /** Only the new entries. */
    void report(Path project, List<Entry> entries, Answer.Builder answer) throws DeskException {
        Journal journal = desk.projects().history(project);
        HistoryText text = new HistoryText(journal, ZoneId.systemDefault());
        for (Entry entry : entries) {
            text.line(entry).forEach(answer::line);
        }
        answer.fact("entries", entries.stream().map(Entry::number).toList());
        answer.fact("what", entries.stream().map(text::words).toList());
    }
}
