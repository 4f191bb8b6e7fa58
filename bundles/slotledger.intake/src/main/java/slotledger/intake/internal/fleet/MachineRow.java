package slotledger.intake.internal.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Readings;
import slotledger.intake.internal.value.SlotReading;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Whereabouts;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;

/** Makes a machine of a row, or a finding that says why it is none. */
final class MachineRow {

    /** A row that names no machine and has hardly anything else in it is a note somebody left. */
    private static final int FEW_CELLS = 2;

    private final CellReader cells;
    private final Readings readings = new Readings();
    private final SlotContents contents;
    private final SlotColumns slots;
    private final boolean hasTags;
    private final List<Finding> raised = new ArrayList<>();
    private final Consumer<Finding> findings;

    MachineRow(Table table, Consumer<Finding> findings) {
        this.findings = findings;
        this.cells = new CellReader(raised::add);
        this.contents = new SlotContents(readings, raised::add);
        this.slots = new SlotColumns(table, cells, contents, raised::add);
        this.hasTags = table.has(Field.ASSET_TAG);
    }

    /** Reads a row; exactly one of a machine and a finding about the whole row comes of it. */
    Optional<ObservedMachine> read(TableRow row) {
        raised.clear();
        Optional<Doubt> aside = aside(row);
        if (aside.isPresent()) {
            findings.accept(aside.get().at(row.place(), row.shown()));
            return Optional.empty();
        }
        cells.reportErrors(row);
        Optional<ObservedMachine> machine = machine(row);
        for (Finding finding : raised) {
            findings.accept(machine.map(known -> finding.about(known.tag())).orElse(finding));
        }
        return machine;
    }

    /** What the row is, where it is no machine but also no mistake. */
    private Optional<Doubt> aside(TableRow row) {
        String tag = row.text(Field.ASSET_TAG);
        String first = row.cells().stream().map(cell -> Texts.tidy(cell.text())).filter(text -> !text.isEmpty())
                .findFirst().orElse("");
        boolean named = !nothing(row.text(Field.SERIAL)) || !nothing(row.text(Field.MODEL))
                || !nothing(row.text(Field.COMPUTER_NAME));
        boolean thin = !named || row.filled() <= FEW_CELLS;
        if (thin && Words.TOTAL.begins(first) && (nothing(tag) || tag.equals(first))) {
            return Optional.of(Doubt.note("totals-row", "This row is a sum, not a machine.", "", "Nothing."));
        }
        boolean sentence = row.filled() == 1 && first.split(" ").length > (named ? 3 : 2);
        if (sentence || !named && ( nothing(tag) && row.filled() <= FEW_CELLS && texts(row))) {
            return Optional.of(Doubt.note("note-row", "This row is a note, not a machine.", "",
                    "Nothing, unless a machine is meant; then give it an asset tag and a model."));
        }
        return Optional.empty();
    }

    private static boolean nothing(String text) {
        return text.isEmpty() || Words.sayNothing(text) || Texts.withoutInvisible(text).isBlank();
    }

    private static boolean texts(TableRow row) {
        return row.cells().stream().allMatch(cell -> cell.type() == Cell.Type.TEXT || cell.text().isBlank());
    }

    private Optional<ObservedMachine> machine(TableRow row) {
        String tag = cells.text(row, Field.ASSET_TAG);
        String serial = cells.text(row, Field.SERIAL);
        Optional<String> name = name(row, tag, serial);
        if (name.isEmpty()) {
            raised.add(Doubt.error("row-without-name",
                    "This row has neither asset tag nor serial number and was left out.",
                    "an asset tag", "Look the machine up and write its tag or its serial number.")
                    .at(row.place(Field.ASSET_TAG), row.shown()));
            return Optional.empty();
        }
        OptionalInt slotCount = cells.count(row, Field.SLOT_COUNT);
        MemoryCell memory = MemoryCell.read(row, cells, readings, raised::add);
        List<ObservedSlot> observed = observed(row, slotCount, memory);
        MemoryChecks checks = new MemoryChecks(row, contents, raised::add);
        observed = checks.single(observed, memory, cells.count(row, Field.MODULE_COUNT));
        OptionalInt count = checks.slotCount(slotCount, cells.count(row, Field.FREE_SLOTS), observed);
        checks.check(observed, count, memory);
        return Optional.of(new ObservedMachine(new AssetTag(name.get()), serial, cells.text(row, Field.MAKER),
                cells.text(row, Field.MODEL),
                new Whereabouts(cells.text(row, Field.SITE), cells.text(row, Field.ROOM)),
                cells.text(row, Field.COST_CENTRE), cells.text(row, Field.ROLE),
                cells.text(row, Field.OPERATING_SYSTEM), cells.text(row, Field.PROCESSOR), processors(row),
                cells.text(row, Field.MEMORY_MODE), count, memory.total(), observed, row.place()));
    }

    private OptionalInt processors(TableRow row) {
        OptionalInt count = cells.count(row, Field.PROCESSOR_COUNT);
        return count.isPresent() && count.getAsInt() > 0 ? count : OptionalInt.empty();
    }

    private Optional<String> name(TableRow row, String tag, String serial) {
        if (!tag.isEmpty()) {
            special(row, tag);
            return Optional.of(tag);
        }
        String stand = serial.isEmpty() ? cells.text(row, Field.COMPUTER_NAME) : serial;
        if (stand.isEmpty()) {
            return Optional.empty();
        }
        if (hasTags) {
            raised.add(Doubt.warning("asset-tag-missing", "This machine has no asset tag; its %s stands in."
                    .formatted(serial.isEmpty() ? "computer name" : "serial number"), "an asset tag",
                    "Write the tag, or stick a new one on the machine.").at(row.place(Field.ASSET_TAG), stand));
        }
        return Optional.of(stand);
    }

    private void special(TableRow row, String tag) {
        if (tag.matches("(?s)[=+@-].*") || tag.contains("/") || tag.contains("\\") || tag.contains("..")) {
            raised.add(Doubt.note("tag-with-special-characters",
                    "The tag holds characters with a meaning in file names or formulas; it was kept.",
                    "letters, digits and hyphens", "Nothing needs to be done; check that it is what the label says.")
                    .at(row.place(Field.ASSET_TAG), tag));
        }
    }

    private List<ObservedSlot> observed(TableRow row, OptionalInt slotCount, MemoryCell memory) {
        Optional<Integer> count = slotCount.isPresent() ? Optional.of(slotCount.getAsInt()) : Optional.empty();
        List<ObservedSlot> single = slots.read(row, count, memory.common());
        if (!single.isEmpty()) {
            return single;
        }
        List<ObservedSlot> inWords = new ArrayList<>();
        for (SlotReading reading : memory.slots()) {
            SlotReading whole = new SlotReading(reading.label(), reading.state(), reading.facts().or(memory.common()),
                    reading.filler(), reading.part(), reading.text(), reading.doubts());
            inWords.add(contents.observe(reading.label(), whole, "", row.place(memory.words().orElseThrow())));
        }
        return inWords;
    }
}
