package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.app.RoundWish;
import slotledger.app.RoundWish.OpenTime;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Whereabouts;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;
import slotledger.model.work.Round;
import slotledger.model.work.Round.Window;
import slotledger.model.work.RoundSheet;

/** Rounds keep the order of work, one site each, and no receiver is opened before its donor's round has ended. */
class RoundMakerTest {

    private final SmallWorld world = new SmallWorld();

    @Test
    void aRoundStaysAtItsSiteAndWithinTheMostMachines() {
        assertEquals("main-01 Ben: A1 A2\nmain-02 Ben: A3\nannexe-01 Ben: B1",
                rounds(wish(2, List.of(), "Ben"), "Main/1 A1", "Main/1 A2", "Main/1 A3", "Annexe/1 B1"));
    }

    @Test
    void aRoomIsNotSplitWhereTheNextRoundHasRoomForAllOfIt() {
        assertEquals("main-01 Ben: A1 A2\nmain-02 Ben: A3 A4",
                rounds(wish(3, List.of(), "Ben"), "Main/1 A1", "Main/1 A2", "Main/2 A3", "Main/2 A4"));
    }

    @Test
    void technicianStaysAtASiteWhileAnotherTakesTheNext() {
        assertEquals("main-01 Ben: A1\nannexe-01 Ada: B1\nmain-02 Ben: A2\nannexe-02 Ada: B2",
                rounds(wish(1, List.of(), "Ben", "Ada"), "Main/1 A1", "Annexe/1 B1", "Main/2 A2", "Annexe/2 B2"));
    }

    @Test
    void aReceiverIsOpenedOnlyWhenTheRoundOfItsDonorHasEnded() {
        List<OpenTime> morning = List.of(time("", "2026-12-01T08:00", "2026-12-01T12:00"));
        List<MachinePlan> work = List.of(machine("Main/1 A1"), machine("Annexe/1 B1<A1"));
        List<Round> rounds = new RoundMaker(wish(5, morning, "Ben", "Ada"), 1).rounds(work);
        assertEquals(rounds.get(0).window().orElseThrow().until(), rounds.get(1).window().orElseThrow().from());
        List<RoundSheet> sheets = RoundSheet.of(SmallWorld.plan(work), rounds);
        assertEquals(List.of("main-01"), sheets.get(1).after());
        assertEquals(List.of(), sheets.get(0).after());
    }

    @Test
    void inARingTheLaterRoundIsWaitedFor() {
        List<MachinePlan> work = List.of(machine("Main/1 A1<B1"), machine("Annexe/1 B1<A1"));
        List<RoundSheet> sheets = RoundSheet.of(SmallWorld.plan(work),
                new RoundMaker(wish(5, List.of(), "Ben"), 1).rounds(work));
        assertEquals(List.of(new RoundSheet.Wait(new AssetTag("A1"), new AssetTag("B1"), "annexe-01")),
                sheets.get(0).waits());
        assertEquals(List.of("main-01"), sheets.get(1).after());
    }

    @Test
    void aPlaceWithTimesOfItsOwnIsVisitedOnlyThen() {
        List<OpenTime> times = List.of(time("", "2026-12-01T08:00", "2026-12-01T09:00"),
                time("Main / 2", "2026-12-03T08:00", "2026-12-03T09:00"));
        List<Round> rounds = new RoundMaker(wish(5, times, "Ben"), 1)
                .rounds(List.of(machine("Main/1 A1"), machine("Main/2 A2"), machine("Main/1 A3")));
        assertEquals(LocalDateTime.parse("2026-12-03T08:00"), rounds.get(1).window().orElseThrow().from());
        assertEquals("2", rounds.get(1).room());
    }

    @Test
    void noRoundIsLongerThanAWindowAndWhatFindsNoneNamesNobody() {
        List<OpenTime> times = List.of(time("", "2026-12-01T08:00", "2026-12-01T08:30"));
        List<Round> rounds = new RoundMaker(wish(5, times, "Ben"), 1)
                .rounds(List.of(machine("Main/1 A1"), machine("Main/1 A2"), machine("Main/1 A3")));
        assertEquals(List.of(2, 1), rounds.stream().map(round -> round.machines().size()).toList());
        assertEquals("Ben", rounds.get(0).technician());
        assertEquals("", rounds.get(1).technician());
        assertTrue(rounds.get(1).window().isEmpty());
    }

    @Test
    void manyRoundsOfManyTechniciansNeverOverlapAndLoseNoMachine() {
        List<MachinePlan> work = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            work.add(machine("S" + i % 7 / 2 + "/" + i % 5 + " T" + i + (i > 10 && i % 3 == 0 ? "<T" + (i - 9) : "")));
        }
        List<OpenTime> days = Stream.iterate(1, day -> day < 29, day -> day + 1)
                .map(day -> time("", "2026-12-%02dT08:00".formatted(day), "2026-12-%02dT12:00".formatted(day)))
                .toList();
        List<Round> rounds = new RoundMaker(wish(6, days, "Ben", "Ada", "Cem"), 1).rounds(work);
        assertEquals(200, rounds.stream().flatMap(round -> round.machines().stream()).distinct().count());
        for (Round one : rounds) {
            for (Round other : rounds) {
                assertFalse(one != other && one.technician().equals(other.technician())
                        && one.window().orElseThrow().from().isBefore(other.window().orElseThrow().until())
                        && other.window().orElseThrow().from().isBefore(one.window().orElseThrow().until()));
            }
        }
        for (RoundSheet sheet : RoundSheet.of(SmallWorld.plan(work), rounds)) {
            for (Round before : rounds) {
                assertFalse(sheet.after().contains(before.id()) && sheet.round().window().orElseThrow().from()
                        .isBefore(before.window().orElseThrow().until()));
            }
        }
    }

    private String rounds(RoundWish wish, String... machines) {
        return new RoundMaker(wish, 1).rounds(Stream.of(machines).map(this::machine).toList()).stream()
                .map(round -> round.id() + " " + round.technician() + ": " + round.machines().stream()
                        .map(AssetTag::value).collect(Collectors.joining(" ")))
                .collect(Collectors.joining("\n"));
    }

    /** "Main/101 K-2&lt;K-1": site, room, tag, and the machine its module comes out of. */
    private MachinePlan machine(String text) {
        String[] parts = text.split("[/ <]");
        MachinePlan plan = world.plan(parts[2], "8 -", "8 8");
        Machine old = plan.machine();
        Machine placed = new Machine(old.tag(), old.serial(), new Whereabouts(parts[0], parts[1]), old.costCentre(),
                old.role(), old.board(), old.processors(), old.processor(), old.operatingSystem(), old.redundancy(),
                old.population(), old.place());
        List<Move> moves = parts.length < 4 ? plan.moves() : List.of(new Move(plan.moves().get(0).content(),
                new Station.InSlot(new AssetTag(parts[3]), "S2"), new Station.InSlot(old.tag(), "S2")));
        return new MachinePlan(placed, plan.target(), plan.after(), plan.outcome(), moves, plan.runsNow(),
                plan.runsAfter(), plan.obstacle(), plan.labour(), plan.workOrder());
    }

    private static RoundWish wish(int machines, List<OpenTime> times, String... technicians) {
        return new RoundWish(OptionalInt.empty(), List.of(technicians), times, machines, Duration.ofMinutes(15),
                Duration.ofMinutes(30));
    }

    private static OpenTime time(String place, String from, String until) {
        return new OpenTime(place, new Window(LocalDateTime.parse(from), LocalDateTime.parse(until)));
    }
}
