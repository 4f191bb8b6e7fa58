package slotledger.intake.internal.join;

import java.util.List;
import java.util.function.Consumer;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.observed.Comparison;
import slotledger.model.observed.Comparison.Outcome;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.Subject;
import slotledger.model.observed.Testimony;
import slotledger.model.observed.Trust;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;

/** Joins what a spreadsheet and the firmware say of one machine. */
final class MachineJoin {

    private final Trust trust;
    private final Consumer<Comparison> comparisons;
    private final Consumer<Finding> findings;

    MachineJoin(Trust trust, Consumer<Comparison> comparisons, Consumer<Finding> findings) {
        this.trust = trust;
        this.comparisons = comparisons;
        this.findings = findings;
    }

    ObservedMachine join(ObservedMachine sheet, ObservedMachine table) {
        String serial = text(Subject.SERIAL, sheet, sheet.serial(), table, table.serial());
        String maker = text(Subject.MAKER, sheet, sheet.maker(), table, table.maker());
        String model = text(Subject.MODEL, sheet, sheet.model(), table, table.model());
        String processor = text(Subject.PROCESSOR, sheet, sheet.processor(), table, table.processor());
        MemoryJoin.Side fromSheet = new MemoryJoin.Side(Ground.SPREADSHEET, sheet);
        MemoryJoin.Side fromTable = new MemoryJoin.Side(Ground.FIRMWARE, table);
        boolean sheetFirst = trust.prefers(Subject.MEMORY, Ground.SPREADSHEET, Ground.FIRMWARE);
        MemoryJoin memory = sheetFirst ? MemoryJoin.of(sheet.tag(), fromSheet, fromTable)
                : MemoryJoin.of(sheet.tag(), fromTable, fromSheet);
        memory.comparisons().forEach(this::report);
        return new ObservedMachine(sheet.tag(), serial, maker, model, sheet.where(), sheet.costCentre(), sheet.role(),
                sheet.operatingSystem(), processor,
                sheet.processors().isPresent() ? sheet.processors() : table.processors(), sheet.redundancy(),
                memory.slotCount(), memory.total(), memory.slots(), sheet.place());
    }

    private String text(Subject subject, ObservedMachine sheet, String written, ObservedMachine table, String told) {
        if (written.isBlank() && told.isBlank()) {
            return "";
        }
        boolean sheetFirst = trust.prefers(subject, Ground.SPREADSHEET, Ground.FIRMWARE);
        boolean takeSheet = told.isBlank() || !written.isBlank() && sheetFirst;
        Testimony one = new Testimony(Ground.SPREADSHEET, written, sheet.place());
        Testimony two = new Testimony(Ground.FIRMWARE, told, table.place());
        Outcome outcome = written.isBlank() || told.isBlank() ? Outcome.ONLY_ONE
                : NameText.alike(subject, written, told) ? Outcome.AGREE : Outcome.DIFFER;
        report(new Comparison(sheet.tag(), subject, subject.text(), takeSheet ? List.of(one, two) : List.of(two, one),
                outcome));
        return takeSheet ? written : told;
    }

    private void report(Comparison comparison) {
        comparisons.accept(comparison);
        if (comparison.outcome() == Outcome.DIFFER) {
            Testimony believed = comparison.said().get(0);
            Testimony other = comparison.said().get(1);
            findings.accept(Doubt.warning("sources-differ",
                    "Of the %s, the %s (%s) says \"%s\" and the %s (%s) says \"%s\"; the first was believed.".formatted(
                            comparison.fact(), believed.ground().text(), believed.place(), believed.text(),
                            other.ground().text(), other.place(), other.text()),
                    "sources that agree", "Look at the machine, then correct the one that is wrong; or write \"trust "
                            + comparison.subject().text() + " = ...\" into the mapping file.")
                    .at(place(comparison), "").about(comparison.machine()));
        }
    }

    /** The spreadsheet's place, since its copy with notes shows findings beside their cells. */
    private static Place place(Comparison comparison) {
        return comparison.said().stream().filter(each -> each.ground() == Ground.SPREADSHEET).findFirst()
                .orElse(comparison.believed()).place();
    }
}
