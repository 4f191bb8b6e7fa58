package slotledger.export.internal.sheet;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.export.PlanBook;
import slotledger.export.internal.text.Lists;
import slotledger.export.internal.text.Words;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;

/** Lists that the order and the work need alike. */
public final class ListPages {

    private static final int[] LEFTOVER_WIDTHS = {76, 11, 20, 18, 24};
    private static final int[] NOT_HELPED_WIDTHS = {10, 13, 13, 14, 14, 14, 20, 11, 48, 26};
    private static final int[] NOT_PLANNED_WIDTHS = {16, 12, 12, 22, 14, 44, 44, 24};

    private ListPages() {
    }

    public static void leftovers(Book workbook, PlanBook book) {
        Page page = workbook.page("Leftovers", LEFTOVER_WIDTHS);
        page.title("Modules left over after the work");
        page.note(Lists.WORTH).gap();
        page.header("What", "How many", "Where from", "Where to", "Worth, estimate");
        for (Leftover leftover : book.plan().leftovers()) {
            page.next().text(0, leftover.content().toString()).count(1, leftover.count())
                    .text(2, leftover.origin().text()).text(3, Words.station(leftover.to(), book));
            leftover.worth().ifPresentOrElse(worth -> page.money(4, worth), () -> page.text(4, Lists.NO_WORTH));
        }
        if (book.plan().leftovers().isEmpty()) {
            page.next().text(0, "Nothing is left over.");
        }
    }

    /** Machines that are not on target after the work, with the reason. */
    public static void notHelped(Book workbook, PlanBook book) {
        Page page = workbook.page("Not helped", NOT_HELPED_WIDTHS);
        page.title("Machines that are not on target after the work").gap();
        page.header("Machine", "Site", "Room", "Cost centre", "Role", "Target", "How it runs after", "What binds",
                "Why", "What would change it");
        List<MachinePlan> plans = Lists.notOnTarget(book.plan());
        for (MachinePlan plan : plans) {
            Machine machine = plan.machine();
            page.next().text(0, machine.tag().value()).text(1, machine.where().site()).text(2, machine.where().room())
                    .text(3, machine.costCentre()).text(4, machine.role()).text(5, Words.target(plan.target()))
                    .text(6, plan.outcome().text() + ": " + Words.operation(plan.runsAfter()))
                    .text(7, plan.obstacle().map(obstacle -> obstacle.kind().text()).orElse("not known"))
                    .text(8, plan.obstacle().map(Words::obstacle).orElse(""))
                    .text(9, plan.obstacle().map(obstacle -> obstacle.freedBy()).orElse(""));
        }
        if (plans.isEmpty()) {
            page.next().text(0, "None.");
        }
        page.filter(NOT_HELPED_WIDTHS.length);
    }

    /** Machines nothing could be planned for, with what to look at. */
    public static void notPlanned(Book workbook, PlanBook book) {
        Page page = workbook.page("Not planned", NOT_PLANNED_WIDTHS);
        page.title("Machines that could not be planned: look at these first").gap();
        page.header("Machine", "Site", "Room", "Maker and model as written", "Serial number", "What is the matter",
                "What to do", "Where it stands");
        for (ObservedMachine machine : book.unresolved()) {
            List<Finding> findings = Lists.about(machine, book.findings());
            page.next().text(0, machine.tag().value()).text(1, machine.where().site()).text(2, machine.where().room())
                    .text(3, (machine.maker() + " " + machine.model()).strip()).text(4, machine.serial())
                    .text(5, findings.isEmpty() ? Lists.NO_FINDING : joined(findings, Lists::matter))
                    .text(6, findings.isEmpty() ? Lists.NO_REMEDY : joined(findings, Finding::remedy))
                    .text(7, machine.place().toString());
        }
        if (book.unresolved().isEmpty()) {
            page.next().text(0, "None.");
        }
    }

    private static String joined(List<Finding> findings, Function<Finding, String> part) {
        return findings.stream().map(part).distinct().collect(Collectors.joining("\n"));
    }
}
