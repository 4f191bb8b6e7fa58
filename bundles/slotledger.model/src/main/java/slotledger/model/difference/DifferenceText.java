package slotledger.model.difference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.unit.Money;

/** The words for what is different between two plans, so that all places say the same. */
public final class DifferenceText {

    /** What is said where nothing is different. */
    public static final String NONE = "Nothing is bought or done differently.";

    private final Difference difference;

    public DifferenceText(Difference difference) {
        this.difference = difference;
    }

    /**
     * An amount of both plans.
     *
     * @param name   what it is
     * @param before of the earlier plan
     * @param after  of the later one
     */
    public record Amount(String name, Money before, Money after) {

        public Money change() {
            return after.minus(before);
        }

        /** "EUR 12.00 more", "EUR 3.00 less", "no change". */
        public String words() {
            long minor = change().minor();
            return minor == 0 ? "no change"
                    : new Money(Math.abs(minor), change().currency()) + (minor > 0 ? " more" : " less");
        }
    }

    /**
     * A number of both plans.
     *
     * @param name   what it is
     * @param before of the earlier plan
     * @param after  of the later one
     */
    public record Count(String name, long before, long after) {

        public long change() {
            return after - before;
        }

        /** "3 more", "1 fewer", "no change". */
        public String words() {
            return change() == 0 ? "no change" : Math.abs(change()) + (change() > 0 ? " more" : " fewer");
        }
    }

    /** The money of both plans. */
    public List<Amount> money() {
        Spending before = difference.before().spending();
        Spending after = difference.after().spending();
        List<Amount> money = new ArrayList<>();
        money.add(new Amount("Goods", before.goods(), after.goods()));
        money.add(new Amount("Delivery", before.deliveryTotal(), after.deliveryTotal()));
        if (!before.tax().isEmpty() || !after.tax().isEmpty()) {
            money.add(new Amount("Tax", before.taxTotal(), after.taxTotal()));
        }
        money.add(new Amount("Labour", before.labour(), after.labour()));
        money.add(new Amount("Goods, delivery and labour, without tax", before.total(), after.total()));
        return money;
    }

    /** The machines and modules of both plans. */
    public List<Count> counts() {
        Plan before = difference.before();
        Plan after = difference.after();
        return List.of(
                new Count("Machines on target after the work", Difference.onTarget(before), Difference.onTarget(after)),
                new Count("The same, counted by weight", before.optimality().weightOnTarget(),
                        after.optimality().weightOnTarget()),
                new Count("Machines opened", before.work().size(), after.work().size()),
                new Count("Purchase lines", before.purchases().size(), after.purchases().size()),
                new Count("Modules and fillers bought", bought(before), bought(after)));
    }

    private static long bought(Plan plan) {
        return plan.purchases().stream().mapToLong(line -> line.modules()).sum();
    }

    /** "other quantity: 3 packs instead of 5, EUR 20.00 less". */
    public static String line(LineChange line) {
        String packs = switch (line.kind()) {
            case ADDED, DROPPED -> packs(line.packsBefore() + line.packsAfter());
            case QUANTITY -> packs(line.packsAfter()) + " instead of " + line.packsBefore();
            case PRICE -> packs(line.packsAfter());
        };
        return line.kind().text() + ": " + packs + ", " + amount(line).words();
    }

    /** What the line costs in both plans. */
    public static Amount amount(LineChange line) {
        Money none = Money.zero(line.offer().currency());
        return new Amount(line.offer().id(), line.before().map(each -> each.total()).orElse(none),
                line.after().map(each -> each.total()).orElse(none));
    }

    private static String packs(int packs) {
        return packs + (packs == 1 ? " pack" : " packs");
    }

    /** "Its modules were ordered of S, part P; this line is dropped." */
    static String source(String beginning, LineChange line) {
        return "%s %s, part %s; of this line: %s.".formatted(
                beginning, line.offer().supplier(), line.offer().part(), line(line));
    }

    /** "reaches its target, with 2 x 8 GB DDR4-2666"; what a machine of both plans is like after the earlier one. */
    public static String before(MachineChange change) {
        return change.before().map(plan -> end(plan, change.after().map(MachinePlan::after).orElse(plan.before())))
                .orElse("not planned");
    }

    /** The same of the later plan. */
    public static String after(MachineChange change) {
        return change.after().map(plan -> end(plan, change.before().map(MachinePlan::after).orElse(plan.before())))
                .orElse("not planned");
    }

    /** "no longer", "now", "as before", "neither": whether a machine is on target. */
    public static String target(MachineChange change) {
        boolean before = change.before().filter(MachineChange::isOnTarget).isPresent();
        boolean after = change.after().filter(MachineChange::isOnTarget).isPresent();
        return before ? after ? "as before" : "no longer" : after ? "now" : "neither";
    }

    private static String end(MachinePlan plan, Population other) {
        return plan.outcome().text() + ", with " + population(plan.after(), other);
    }

    /** A population in so many words that it can be told from another: "2 x 8 GB DDR4-2666". */
    static String population(Population population, Population other) {
        String brief = counted(population, DifferenceText::brief);
        if (!brief.equals(counted(other, DifferenceText::brief)) || population.equals(other)) {
            return brief;
        }
        String full = counted(population, SlotContent::toString);
        if (!full.equals(counted(other, SlotContent::toString))) {
            return full;
        }
        List<String> slots = new ArrayList<>();
        population.contents().forEach((slot, content) -> {
            if (!content.equals(other.in(slot))) {
                slots.add(slot + " " + brief(content));
            }
        });
        return brief + " (" + String.join(", ", slots) + ")";
    }

    /** "8 GB DDR4-2666". */
    public static String brief(Piece piece) {
        return brief(SlotContent.of(piece));
    }

    private static String brief(SlotContent content) {
        return content.module().map(ModuleKind::brief).orElseGet(content::toString);
    }

    private static String counted(Population population, Function<SlotContent, String> words) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        population.contents().values().stream().filter(content -> !content.isEmpty())
                .forEach(content -> counts.merge(words.apply(content), 1, Integer::sum));
        List<String> parts = new ArrayList<>();
        counts.forEach((what, count) -> parts.add(count + " x " + what));
        return parts.isEmpty() ? "nothing" : String.join(" and ", parts);
    }
}
