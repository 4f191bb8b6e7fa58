package slotledger.export.internal.arrival;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.export.ExportException;
import slotledger.export.internal.difference.DifferencePage;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.WholeFile;
import slotledger.export.internal.text.Words;
import slotledger.model.delivery.Delivery;
import slotledger.model.difference.Difference;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;

/** The workbook of what arrived: each order line, for which machine and slot each module is, and who goes without. */
public final class ArrivalBook {

    private static final int[] LINE_WIDTHS = {24, 16, 60, 10, 10, 10, 10, 18};
    private static final int[] ALLOTMENT_WIDTHS = {8, 14, 30, 18, 14, 64, 44};
    private static final int[] WAITING_WIDTHS = {14, 30, 18, 80, 50};

    private final Delivery delivery;
    private final Plan plan;
    private final Optional<Difference> ended;

    /**
     * A workbook.
     *
     * @param plan  what is done with it
     * @param ended what has changed against the plan, where nothing more will come; empty where more may come
     */
    public ArrivalBook(Delivery delivery, Plan plan, Optional<Difference> ended) {
        this.delivery = delivery;
        this.plan = plan;
        this.ended = ended;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("What arrived: " + plan.title(), plan.policy().currency())) {
                lines(workbook.page("What arrived", LINE_WIDTHS));
                allotment(workbook.page("Allotment", ALLOTMENT_WIDTHS));
                if (ended.isPresent()) {
                    without(workbook.page("Can't be done", WAITING_WIDTHS));
                    DifferencePage.add(workbook, ended.get());
                } else {
                    waiting(workbook.page("Waiting", WAITING_WIDTHS));
                }
                workbook.save(out);
            }
        });
    }

    private void lines(Page page) {
        page.title("What arrived of the order");
        page.note(delivery.isComplete() ? "Everything that was ordered is there."
                : ended.isPresent() ? "What is missing will not come. Ask the suppliers for its money."
                : "What is missing is still to be delivered, or to be replaced.");
        page.gap();
        page.header("Supplier", "Part number", "Module", "Ordered", "Usable", "Unusable", "Missing", "State");
        for (Delivery.Line line : delivery.lines()) {
            Purchase purchase = line.purchase();
            page.next().text(0, purchase.offer().supplier()).text(1, purchase.offer().part())
                    .text(2, purchase.offer().piece().toString()).count(3, purchase.modules())
                    .count(4, line.usable()).count(5, line.unusable()).count(6, line.missing())
                    .text(7, line.state().text(), line.missing() > 0 ? Look.STRONG : Look.TEXT);
        }
        if (delivery.lines().isEmpty()) {
            page.next().text(0, "Nothing was ordered.");
        }
        page.filter(LINE_WIDTHS.length);
    }

    private void allotment(Page page) {
        page.title("Which module is for which machine");
        page.note("%d machines can be done now, in this order; %d are done.".formatted(
                plan.work().size(), delivery.done().size()));
        page.gap();
        page.header("Order of work", "Machine", "Place", "Role", "Slot", "Module", "Where it comes from");
        for (MachinePlan machine : plan.work()) {
            machine.moves().stream().filter(move -> comesIn(move, machine)).forEach(move -> row(page, machine, move));
        }
        if (plan.work().isEmpty()) {
            page.next().text(0, "No machine can be done.");
        }
        page.filter(ALLOTMENT_WIDTHS.length);
    }

    /** Into this machine, and not only from one of its slots to another. */
    private static boolean comesIn(Move move, MachinePlan machine) {
        return move.to() instanceof Station.InSlot to && to.machine().equals(machine.machine().tag())
                && !(move.from() instanceof Station.InSlot from && from.machine().equals(to.machine()));
    }

    private void row(Page page, MachinePlan machine, Move move) {
        place(page.next().count(0, machine.workOrder()), 1, machine.machine())
                .text(4, ((Station.InSlot) move.to()).slot()).text(5, move.content().toString())
                .text(6, from(move.from()));
    }

    private static Page place(Page page, int column, Machine machine) {
        return page.text(column, machine.tag().value()).text(column + 1, machine.where().toString())
                .text(column + 2, machine.role());
    }

    private String from(Station station) {
        if (station instanceof Station.FromOrder order) {
            return plan.purchases().stream().map(Purchase::offer).filter(offer -> offer.id().equals(order.offer()))
                    .findFirst().map(offer -> "delivery of " + offer.supplier() + ", part " + offer.part())
                    .orElse("delivery of " + order.offer());
        }
        return station instanceof Station.InSlot slot ? "machine " + slot.machine() + ", slot " + slot.slot()
                : ended.isPresent() ? "what arrived and the shelf" : "shelf";
    }

    private void waiting(Page page) {
        page.title("Machines that wait");
        page.note("They stay in the plan, and are done when what they need is there.").gap();
        page.header("Machine", "Place", "Role", "What goes into it", "Target");
        Map<AssetTag, MachinePlan> plans = plan.machines().stream()
                .collect(Collectors.toMap(machine -> machine.machine().tag(), Function.identity()));
        for (Delivery.Waiting waiting : delivery.waiting()) {
            MachinePlan machine = plans.get(waiting.machine());
            place(page.next(), 0, machine.machine()).text(3, needs(waiting.needs()))
                    .text(4, Words.target(machine.target()));
        }
        if (delivery.waiting().isEmpty()) {
            page.next().text(0, "None.");
        }
        page.filter(WAITING_WIDTHS.length);
    }

    private static String needs(Map<SlotContent, Integer> needs) {
        return needs.entrySet().stream().map(need -> need.getValue() + " x " + need.getKey()).sorted()
                .collect(Collectors.joining("\n"));
    }

    private void without(Page page) {
        page.title("Machines that the plan helped and that can't be done now");
        page.note("What is there does not reach for them, or does more elsewhere.").gap();
        page.header("Machine", "Place", "Role", "Why", "What would change it");
        Set<AssetTag> helped = ended.orElseThrow().before().machines().stream()
                .filter(machine -> machine.obstacle().isEmpty()).map(machine -> machine.machine().tag())
                .collect(Collectors.toSet());
        List<MachinePlan> without = plan.machines().stream()
                .filter(machine -> machine.obstacle().isPresent() && helped.contains(machine.machine().tag()))
                .sorted(Comparator.comparing((MachinePlan machine) -> machine.machine().where())
                        .thenComparing(machine -> machine.machine().tag()))
                .toList();
        for (MachinePlan machine : without) {
            Obstacle obstacle = machine.obstacle().orElseThrow();
            place(page.next(), 0, machine.machine()).text(3, Words.obstacle(obstacle)).text(4, obstacle.freedBy());
        }
        if (without.isEmpty()) {
            page.next().text(0, "None: every machine that the plan helped can be done.");
        }
        page.filter(WAITING_WIDTHS.length);
    }
}
