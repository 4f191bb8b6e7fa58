package slotledger.intake.internal.offer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.intake.internal.fleet.ModuleSize;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.CapacityUnit;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Facts;
import slotledger.intake.internal.value.FillerWords;
import slotledger.intake.internal.value.ModuleReading;
import slotledger.intake.internal.value.ModuleText;
import slotledger.intake.internal.value.Words;
import slotledger.model.family.Families;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;

/**
 * Reads what module or filler a row of a price or shelf list is about, from one text column, from several, or both.
 */
public final class KindReader {

    private static final List<Field> COLUMNS = List.of(Field.MODULE, Field.CAPACITY, Field.GENERATION, Field.FORM,
            Field.RATE, Field.ECC, Field.BUFFERING, Field.ORGANISATION, Field.RANKS, Field.CHIP_WIDTH, Field.CHIP_SIZE,
            Field.VOLTAGE, Field.LATENCY);

    /** 2 x continuity module | 10x CRIMM. */
    private static final Pattern TIMES = Pattern.compile("(\\d{1,2})\\s?[x×*]\\s?(?=\\p{L})");

    private final Consumer<Finding> findings;

    public KindReader(Consumer<Finding> findings) {
        this.findings = findings;
    }

    /**
     * What a row speaks of.
     *
     * @param piece what was understood
     * @param count how many the text counts, 1 where it doesn't
     */
    public record Read(Piece piece, int count) {}

    /** The module or filler; empty, with a finding of the row, where it is not clear enough to buy or use. */
    public Optional<Read> read(TableRow row) {
        Optional<Read> filler = filler(row.text(Field.MODULE));
        return filler.isPresent() ? filler : module(row);
    }

    /** A filler has no capacity; "on-die termination" is said of modules too. */
    private static Optional<Read> filler(String text) {
        Optional<Filler> filler = FillerWords.read(text)
                .filter(known -> ModuleText.read(text, Optional.empty()).facts().capacity().isEmpty());
        Matcher times = TIMES.matcher(text.strip());
        int count = times.lookingAt() ? Integer.parseInt(times.group(1)) : 1;
        return filler.map(known -> new Read(known, Math.max(1, count)));
    }

    private Optional<Read> module(TableRow row) {
        Facts facts = new Facts();
        int count = 1;
        boolean usable = true;
        for (Field field : COLUMNS) {
            Optional<Column> column = row.table().column(field);
            String text = row.text(field);
            if (column.isEmpty() || text.isEmpty() || field != Field.ECC && Words.sayNothing(text)) {
                continue;
            }
            if (row.cell(field).orElseThrow().type() == Cell.Type.DATE) {
                findings.accept(Doubt.warning("date-for-number",
                        "A date stands here; the spreadsheet program may have made "
                        + "it of something else.", "a fact about the module",
                                "Format the column as text and type it again.")
                        .at(row.place(column.get()), text));
                continue;
            }
            ModuleReading reading = ModuleText.read(worded(field, text), unit(field, column.get()));
            facts = facts.and(reading.facts());
            count = Math.max(count, reading.count());
            usable &= report(row, field, column.get(), reading);
        }
        return usable ? kind(row, facts, count) : Optional.empty();
    }

    private static Optional<CapacityUnit> unit(Field field, Column column) {
        return field == Field.CAPACITY || field == Field.MODULE ? column.unit() : Optional.empty();
    }

    /** Gives a bare value of a column the word that the heading stands for. */
    private static String worded(Field field, String text) {
        boolean number = text.matches("\\d+([.,]\\d+)?");
        return switch (field) {
            case RATE -> number ? text + " MT/s" : text;
            case RANKS -> number ? text + " ranks" : text;
            case CHIP_WIDTH -> number ? "x" + text : text;
            case CHIP_SIZE -> number ? text + " Gbit" : text;
            case VOLTAGE -> number ? text + " V" : text;
            case LATENCY -> number ? "CL" + text : text;
            case ECC -> Words.decide(text).map(yes -> yes ? "ECC" : "non-ECC")
                    .orElse(Words.sayNothing(text) ? "" : text);
            case BUFFERING -> Words.decide(text).map(yes -> yes ? "registered" : "unbuffered").orElse(text);
            default -> text;
        };
    }

    private boolean report(TableRow row, Field field, Column column, ModuleReading reading) {
        boolean usable = true;
        for (Doubt doubt : reading.doubts()) {
            findings.accept(doubt.at(row.place(column), row.text(column)));
            usable &= doubt.severity() != Severity.ERROR;
        }
        if (!reading.rest().isEmpty() && field != Field.MODULE) {
            findings.accept(reading.restDoubt().at(row.place(column), row.text(column)));
        }
        return usable;
    }

    private Optional<Read> kind(TableRow row, Facts facts, int count) {
        Field at = row.table().has(Field.MODULE) ? Field.MODULE : Field.CAPACITY;
        List<Doubt> doubts = new ArrayList<>();
        Optional<ModuleKind> kind = facts.kind(doubts);
        Optional<Doubt> size = kind.flatMap(ModuleSize::check);
        size.ifPresent(doubts::add);
        doubts.forEach(doubt -> findings.accept(doubt.at(row.place(at), row.text(at))));
        if (kind.isEmpty() || kind.get().generation().isEmpty()) {
            findings.accept(Doubt.error("module-not-understood", kind.isEmpty()
                    ? "It is not clear what the capacity of the module is; the row was left out."
                    : "It is not clear of which type (DDR3, DDR4 ...) the module is; the row was left out.",
                    "a text such as 8GB 1Rx8 PC4-2666V-U, or columns for capacity and type",
                    "Complete the row.").at(row.place(at), row.text(at)));
            return Optional.empty();
        }
        if (size.isPresent()) {
            return Optional.empty();
        }
        unknown(row, kind.get(), at);
        return Optional.of(new Read(kind.get(), count));
    }

    private void unknown(TableRow row, ModuleKind kind, Field at) {
        List<String> missing = new ArrayList<>();
        if (kind.form().isEmpty()) {
            missing.add("form (DIMM or SO-DIMM)");
        }
        if (kind.errorCheck().isEmpty()) {
            missing.add("ECC or not");
        }
        if (kind.buffering().isEmpty() && kind.form().map(form -> bufferings(kind, form) > 1).orElse(true)) {
            missing.add("registered or unbuffered");
        }
        boolean byAccessTime = kind.generation().filter(known -> Families.grades(known).isEmpty()).isPresent();
        if (byAccessTime && kind.accessTime().isEmpty()) {
            missing.add("access time in ns");
        } else if (!byAccessTime && kind.rate().isEmpty()) {
            missing.add("rate");
        }
        if (!missing.isEmpty()) {
            findings.accept(Doubt.note("facts-missing", "Not stated: " + String.join(", ", missing)
                    + "; a module is only planned where nothing hangs on that.", "all facts of the module",
                    "Ask the supplier or read the label.").at(row.place(at), row.text(at)));
        }
    }

    /** In how many ways modules of this generation and form are sold; SIMMs and RIMMs in one. */
    private static long bufferings(ModuleKind kind, Form form) {
        return kind.generation().stream()
                .flatMap(generation -> Families.of(generation, form).stream())
                .flatMap(family -> family.bufferings().stream())
                .distinct()
                .count();
    }
}
