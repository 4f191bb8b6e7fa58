package slotledger.intake.internal.fleet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Facts;
import slotledger.model.finding.Finding;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;

/** Compares what different cells of a row say of the same memory. */
final class MemoryChecks {

    private final TableRow row;
    private final SlotContents contents;
    private final Consumer<Finding> findings;

    MemoryChecks(TableRow row, SlotContents contents, Consumer<Finding> findings) {
        this.row = row;
        this.contents = contents;
        this.findings = findings;
    }

    /** The slots; where none is named but the machine has just one module, that holds the total. */
    List<ObservedSlot> single(List<ObservedSlot> slots, MemoryCell memory, OptionalInt modules) {
        if (!slots.isEmpty() || memory.total().isEmpty() || modules.isEmpty() || modules.getAsInt() != 1) {
            return slots;
        }
        Facts facts = memory.common();
        Place place = row.place(Field.MODULE_COUNT);
        return List.of(contents.observe(Optional.empty(),
                contents.one(memory.total().get().toString(), Optional.empty())
                .withFacts(facts.and(Facts.ofSize(memory.total().get()))), "", place));
    }

    /** The number of slots: as given, or filled and free ones together. */
    OptionalInt slotCount(OptionalInt given, OptionalInt free, List<ObservedSlot> slots) {
        if (free.isEmpty() || slots.isEmpty()) {
            return given;
        }
        int all = (int) filled(slots) + free.getAsInt();
        if (given.isEmpty()) {
            return OptionalInt.of(all);
        }
        if (given.getAsInt() != all) {
            findings.accept(Doubt.warning("slots-do-not-add-up", "%d filled and %d free slots are not %d slots."
                    .formatted(filled(slots), free.getAsInt(), given.getAsInt()), "numbers that agree",
                    "Look into the machine.").at(row.place(Field.FREE_SLOTS), row.text(Field.FREE_SLOTS)));
        }
        return given;
    }

    private static long filled(List<ObservedSlot> slots) {
        return slots.stream().filter(slot -> !slot.content().isEmpty() && !isSoldered(slot)).count();
    }

    private static boolean isSoldered(ObservedSlot slot) {
        return slot.content().module().flatMap(kind -> kind.form())
                .filter(Form.SOLDERED::equals).isPresent();
    }

    void check(List<ObservedSlot> slots, OptionalInt slotCount, MemoryCell memory) {
        if (slotCount.isPresent() && filled(slots) > slotCount.getAsInt()) {
            findings.accept(Doubt.warning("more-modules-than-slots", "%d modules are listed, but only %d slots."
                    .formatted(filled(slots), slotCount.getAsInt()), "at most as many modules as slots",
                    "Look into the machine.").at(row.place(Field.SLOT_COUNT), row.text(Field.SLOT_COUNT)));
        }
        if (slots.isEmpty()) {
            findings.accept(Doubt.warning("modules-not-listed", memory.total()
                    .map(total -> "The total is known (%s), but not which modules are in which slots.".formatted(total))
                    .orElse("Nothing is said of this machine's memory."),
                    "modules such as 2x4GB, or a column a slot", "Look into the machine and list its modules.")
                    .at(row.place(memory.column().isPresent() ? Field.MEMORY : Field.MODULES), row.text(Field.MEMORY)));
            return;
        }
        if (memory.total().isPresent() && slots.stream()
                .noneMatch(slot -> slot.content() instanceof SlotContent.Unread)) {
            compare(slots, memory.total().get());
        }
    }

    private void compare(List<ObservedSlot> slots, Capacity total) {
        Capacity sum = Capacity.NONE;
        for (ObservedSlot slot : slots) {
            sum = sum.plus(slot.content().capacity());
        }
        if (sum.equals(total)) {
            return;
        }
        boolean usable = sum.atLeast(total) && sum.minus(total).times(8).compareTo(sum) <= 0;
        Doubt doubt = usable
                ? Doubt.note("total-is-usable-part", ("The total is %s, the modules add up to %s; probably the "
                        + "total is what the operating system can use.").formatted(total, sum), sum.toString(),
                                "Nothing.")
                : Doubt.warning("total-differs", "The total is %s, but the modules add up to %s."
                        .formatted(total, sum), "numbers that agree", "Look into the machine; the modules were used.");
        findings.accept(doubt.at(row.place(Field.MEMORY), row.text(Field.MEMORY)));
    }
}
