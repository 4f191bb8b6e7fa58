package slotledger.store.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Change;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;

/** Rounds and events of all kinds. */
final class Works {

    private Works() {
    }

    static Change rounds() {
        Round.Window window = new Round.Window(LocalDateTime.parse("2026-12-01T08:00"),
                LocalDateTime.parse("2026-12-01T12:30"));
        return new Change.Rounds(1, List.of(
                new Round("main-1", 1, "Zo\u00eb", "Main", "101", Optional.of(window),
                        List.of(new AssetTag("K-1"), new AssetTag("K-2"))),
                new Round("2", 1, "", "", "", Optional.empty(), List.of(new AssetTag("K-3")))));
    }

    static List<Change> everyKindOfTrade() {
        LocalDate day = LocalDate.of(2026, 12, 1);
        return List.of(
                new TradeEvent.Approved(1, "Zo\u00eb"),
                new TradeEvent.Sent(1, "Quillon", day),
                new TradeEvent.Confirmed(1, "Quillon", day, "A 7", Optional.of(day.plusDays(9))),
                new TradeEvent.Confirmed(1, "Quillon", day, "", Optional.empty()),
                new TradeEvent.Received(1, day, "Quillon/8", 9, 2, 1, true, "one box was wet"),
                new TradeEvent.Drawn(1, day, "Quillon/8", 1, Optional.of(new AssetTag("K-1")), "failed in the test"),
                new TradeEvent.Drawn(1, day, "Quillon/8", 1, Optional.empty(), "lost"),
                new TradeEvent.Ended(1)).stream().<Change>map(Change.Traded::new).toList();
    }

    static Change everyKindOfEvent() {
        List<What> all = new ArrayList<>();
        for (JobState state : JobState.values()) {
            all.add(new What.Became(state, state.needsReason() ? "no \"power\"" : ""));
        }
        all.addAll(List.of(new What.Ticked(3, true), new What.Ticked(3, false), new What.SerialRead("DIMM1", "0042"),
                new What.SerialRead("DIMM1", ""), new What.Deviated("", "the lock is stuck"),
                new What.Deviated("DIMM2", "holds 4 GB")));
        return new Change.Worked(all.stream().map(what -> new JobEvent(UUID.randomUUID(), new AssetTag("K-1"), 1,
                Instant.parse("2026-12-01T09:10:11.123Z"), what)).toList());
    }
}
