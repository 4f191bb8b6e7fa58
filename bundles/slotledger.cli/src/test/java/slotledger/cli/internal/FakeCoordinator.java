package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.app.CoordinatorDesk;
import slotledger.app.Project;
import slotledger.app.RoundWish;
import slotledger.app.Survey;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.Settlement;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.delivery.TradeState;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.Station;
import slotledger.model.project.Author;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.Deviation;
import slotledger.model.proof.Proof;
import slotledger.model.task.Progress;
import slotledger.model.unit.Capacity;
import slotledger.model.work.Round;
import slotledger.model.work.RoundSheet;

/** One round of two machines after another: remembers what it was asked. */
final class FakeCoordinator implements CoordinatorDesk {

    private static final AssetTag ONE = new AssetTag("K-1");

    private final List<String> calls;

    FakeCoordinator(List<String> calls) {
        this.calls = calls;
    }

    @Override
    public List<RoundSheet> makeRounds(Path project, RoundWish wish, Author author) {
        calls.add("rounds " + wish.technicians() + " " + wish.windows() + " by " + author.who());
        return roundSheets(project);
    }

    @Override
    public List<RoundSheet> roundSheets(Path project) {
        SlotContent module = SlotContent.of(ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8)));
        Round round = new Round("main-02", 1, "Ben", "Main", "101", Optional.empty(),
                List.of(ONE, new AssetTag("K-2")));
        return List.of(new RoundSheet(round, List.of("main-01"), List.of(),
                List.of(new RoundSheet.Bag(ONE, List.of(
                        new RoundSheet.Item(module, new Station.FromOrder("A-1"), "DIMM1"),
                        new RoundSheet.Item(module, new Station.InSlot(new AssetTag("K-9"), "S1"), "DIMM2"))))));
    }

    @Override
    public OrderStatus order(Path project, OptionalInt plan) {
        return OrderStatus.of(1, new FakeDesk().plan(null, Progress.NONE), TradeState.NONE);
    }

    @Override
    public OrderStatus record(Path project, TradeEvent event, Author author) {
        calls.add(event + " by " + author.who());
        return OrderStatus.of(1, new FakeDesk().plan(null, Progress.NONE), new TradeState(
                List.of(new TradeState.Happened(9, Instant.EPOCH, author.who(), event))));
    }

    @Override
    public Delivery allot(Path project, OptionalInt plan, Progress progress) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Settlement settle(Path project, OptionalInt plan, Survey survey, Progress progress) {
        throw new UnsupportedOperationException();
    }

    @Override
    public ClosingProof prove(Path project, List<Path> inventories, List<Path> firmware, Project files, Author author,
            Progress progress) {
        calls.add("prove " + inventories + " " + firmware);
        Deviation slow = new Deviation(ONE, Deviation.Kind.RATE, "", "2400 MT/s", "2133 MT/s", "");
        return new ClosingProof(new Proof("school", LocalDate.of(2026, 12, 1), List.of(), List.of()), List.of(slow),
                List.of(new AssetTag("K-2")), 3);
    }

    @Override
    public CloseOut closeOut(Path project, Optional<ClosingProof> closing, LocalDate date) {
        return new CloseOut(date, order(project, OptionalInt.empty()), List.of(), closing);
    }

    @Override
    public List<Path> writeCloseOut(CloseOut close, Path folder, boolean force) {
        calls.add("close to " + folder);
        return List.of(folder.resolve("close-out.pdf"));
    }
}
