package slotledger.export.internal.card;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.export.JobCards;
import slotledger.export.PlanBook;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.JobSheets;
import slotledger.export.internal.job.Line;
import slotledger.export.internal.job.SlotState;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.JobCard;

/** Makes cards of job sheets, so that phone and paper say the same. */
@Component
public final class DefaultJobCards implements JobCards {

    @Activate
    public DefaultJobCards() {
    }

    @Override
    public List<JobCard> of(PlanBook book, int number) {
        Map<AssetTag, JobCard> cards = new HashMap<>();
        for (JobSheet sheet : new JobSheets(book).all()) {
            cards.put(sheet.machine().tag(), card(sheet, number));
        }
        return book.plan().work().stream().map(plan -> cards.get(plan.machine().tag())).toList();
    }

    private static JobCard card(JobSheet sheet, int number) {
        return new JobCard(
                sheet.machine().tag(),
                number,
                sheet.orderOf(),
                Texts.line(sheet.place()),
                Texts.line(sheet.board().name()) + ", " + sheet.board().form().text(),
                Texts.line(sheet.machine().serial()),
                Words.memory(sheet.plan().runsNow()) + " to " + Words.memory(sheet.plan().runsAfter()),
                texts(sheet.heed()),
                Stream.concat(sheet.cautions().stream(), sheet.notes().stream()).map(Texts::line).toList(),
                texts(sheet.steps()),
                Texts.line(sheet.stepBack().toString()),
                picture(sheet, sheet.before()),
                picture(sheet, sheet.after()),
                sheet.after().stream().map(state -> state.slot().label()).toList(),
                sheet.received().stream().map(state -> new JobCard.Receiving(state.slot().label(),
                        Texts.line(Words.brief(state.content())))).toList(),
                Stream.concat(texts(sheet.expected()).stream(), sheet.firmware().stream().map(Texts::line)).toList());
    }

    private static List<String> texts(List<Line> lines) {
        return lines.stream().map(Line::toString).map(Texts::line).toList();
    }

    private static JobCard.Picture picture(JobSheet sheet, List<SlotState> states) {
        return new JobCard.Picture(new SlotDrawing(states).svg(),
                states.stream().map(state -> words(sheet, state)).toList());
    }

    private static String words(JobSheet sheet, SlotState state) {
        String channel = sheet.channels().size() > 1 ? ", channel " + Texts.line(state.slot().channel()) : "";
        String content = state.content().isEmpty() ? "" : ": " + Texts.line(Words.inSlot(state.content()));
        return "Slot " + Texts.line(state.slot().label()) + channel + content + ", " + state.mark().word();
    }
}
