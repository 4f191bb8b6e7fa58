package slotledger.export.internal.order;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Texts;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Figures;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.WithoutChoice;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Taste;
import slotledger.model.unit.Money;

/** What people decided before the plan was made, and what became of it. There only where somebody decided. */
final class DecisionsPage {

    private static final int[] WIDTHS = {18, 60, 44, 40, 44};
    private static final String ASK = "Not computed. Plan with --insights to see it here.";
    private static final String NOT_ASKED = "Not computed. Plan without it, and compare the plans.";
    private static final String POLICY = "policy, leave alone";

    private final Plan plan;
    private final Choices choices;
    private final Page page;

    private DecisionsPage(Plan plan, Page page) {
        this.plan = plan;
        this.choices = plan.choices();
        this.page = page;
    }

    static void add(Book workbook, Plan plan) {
        if (!plan.choices().isEmpty() || !plan.policy().leaveAlone().equals(Policy.LeaveAlone.NONE)) {
            new DecisionsPage(plan, workbook.page("What people decided", WIDTHS)).fill();
        }
    }

    private void fill() {
        page.title("What people decided");
        page.note("The plan keeps to all of this and is the best of those that do. Nobody says that a decision was"
                + " wrong: beside it stands what the best plan without it comes to, all others kept.");
        page.gap();
        page.header("Matter", "Decided", "What became of it", "Without it", "Where it stands");
        Map<AssetTag, MachinePlan> machines = plan.machines().stream().collect(
                Collectors.toMap(machine -> machine.machine().tag(), machine -> machine));
        choices.pins().forEach(pin -> pin(pin, machines.get(pin.machine())));
        choices.tastes().forEach(this::taste);
        new TreeSet<>(choices.uniform()).forEach(this::uniform);
        choices.mostOpened().ifPresent(most -> row("Machines opened", "at most " + most,
                Texts.count(plan.work().size(), "machine is opened", "machines are opened"),
                without(WithoutChoice.ofMostOpened(most)), "choices"));
        Policy.LeaveAlone alone = plan.policy().leaveAlone();
        new TreeSet<>(alone.tags()).forEach(tag -> alone("machine " + tag,
                new Policy.LeaveAlone(Set.of(tag), Set.of(), Set.of())));
        new TreeSet<>(alone.rooms()).forEach(room -> alone("room " + room,
                new Policy.LeaveAlone(Set.of(), Set.of(room), Set.of())));
        new TreeSet<>(alone.roles()).forEach(role -> alone("role " + role,
                new Policy.LeaveAlone(Set.of(), Set.of(), Set.of(role))));
    }

    private void row(String matter, String decided, String became, String without, String where) {
        page.next().text(0, matter).text(1, decided).text(2, became).text(3, without).text(4, where);
    }

    private String without(String choice) {
        Optional<Figures> then = plan.insights().choices().stream().filter(each -> each.choice().equals(choice))
                .map(WithoutChoice::figures).findFirst();
        return then.map(this::against).orElse(ASK);
    }

    private String against(Figures then) {
        Figures now = Figures.of(plan);
        long targets = then.weight() - now.weight();
        Money money = then.cost().minus(now.cost());
        String reached = targets == 0 ? "as many targets"
                : Math.abs(targets) + (targets > 0 ? " more" : " fewer") + " by weight on target";
        return "%s, %s%s".formatted(reached, money.isZero() ? "the same cost"
                : money.minor() < 0 ? now.cost().minus(then.cost()) + " less" : money + " more",
                then.isProven() ? "" : " (a better one may exist)");
    }

    private void pin(Pin pin, MachinePlan machine) {
        row("Pin", pin.toString(), machine == null ? "the machine is not in the plan"
                : machine.outcome().text() + (machine.isOpened() ? "; opened" : "; not opened"),
                without(WithoutChoice.of(pin)), pin.place().toString());
    }

    private void taste(Taste taste) {
        boolean forbids = taste.attitude() == Taste.Attitude.FORBID;
        int packs = plan.purchases().stream().filter(line -> taste.covers(line.offer()))
                .mapToInt(Purchase::packs).sum();
        int all = plan.purchases().stream().mapToInt(Purchase::packs).sum();
        row(forbids ? "Forbidden" : "Preferred", taste.toString(), forbids ? "nothing of it is bought"
                : "%d of the %d packs bought are of it".formatted(packs, all), without(WithoutChoice.of(taste)),
                taste.place().toString());
    }

    private void uniform(String room) {
        Predicate<MachinePlan> inside = machine -> room.equals(machine.machine().where().room()
                .toLowerCase(Locale.ROOT)) || choices.uniformRoom(machine.machine()).filter(room::equals)
                .isPresent();
        long opened = plan.machines().stream().filter(inside).filter(MachinePlan::isOpened).count();
        row("Uniform room", room, "%s, %d of them opened".formatted(Texts.count(
                plan.machines().stream().filter(inside).count(), "machine stands there", "machines stand there"),
                opened), without(WithoutChoice.ofUniform(room)), "choices");
    }

    private void alone(String what, Policy.LeaveAlone alone) {
        long covered = plan.machines().stream().filter(machine -> alone.covers(machine.machine())).count();
        long below = plan.machines().stream()
                .filter(machine -> alone.covers(machine.machine()) && machine.obstacle().isPresent()).count();
        row("Left alone", what, Texts.count(covered, "machine", "machines") + ", " + below + " below target",
                NOT_ASKED, POLICY);
    }
}
