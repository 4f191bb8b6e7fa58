package slotledger.app.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slotledger.app.Label;
import slotledger.app.Mixup;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.LabelReading;
import slotledger.model.observed.ModuleFact;
import slotledger.model.verdict.MissingFact;
import slotledger.rules.MemoryRules;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Stacks;

/** Looks up the family of a label, and what the rules will ask that the label doesn't tell. */
final class Labels {

    private final LabelReading reading;
    private final Optional<ModuleKind> kind;
    private final List<Family> families;
    private final Set<MissingFact> missing = new LinkedHashSet<>();

    private Labels(LabelReading reading) {
        this.reading = reading;
        kind = reading.piece().filter(ModuleKind.class::isInstance).map(ModuleKind.class::cast);
        families = Families.all().stream().filter(this::fits).toList();
    }

    static Label of(LabelReading reading, MemoryRules rules) {
        List<Mixup> mixups = reading.piece().map(rules::lookAlikes).orElse(List.of()).stream()
                .map(alike -> new Mixup(alike.one(), alike.other(), alike.oneForOther().map(mistake ->
                        mistake.sight().text() + ". " + mistake.sentence()), alike.byEye(), alike.byLabel(),
                        alike.source()))
                .toList();
        boolean isFiller = reading.piece().filter(Filler.class::isInstance).isPresent();
        if (isFiller || !reading.isUnderstood()) {
            return new Label(reading, List.of(), List.of(), mixups);
        }
        Labels labels = new Labels(reading);
        labels.ask();
        boolean few = reading.generation().isPresent() || reading.form().isPresent();
        return new Label(reading, few ? labels.families : List.of(), new ArrayList<>(labels.missing),
                mixups);
    }

    private boolean fits(Family family) {
        Optional<Buffering> buffering =
                kind.isPresent() ? ModuleFacts.buffering(kind.get()) : reading.buffering();
        return (reading.generation().isEmpty() || family.generations().contains(reading.generation().get()))
                && (reading.form().isEmpty() ? family.form() != Form.SOLDERED : family.form() == reading.form().get())
                && (buffering.isEmpty() || family.bufferings().isEmpty()
                        || family.bufferings().contains(buffering.get()));
    }

    private void ask() {
        ask(ModuleFact.CAPACITY, MissingFact.CAPACITY, true);
        ask(ModuleFact.GENERATION, MissingFact.GENERATION, true);
        ask(ModuleFact.FORM, MissingFact.FORM, true);
        long bufferings = families.stream().flatMap(family -> family.bufferings().stream()).distinct().count();
        ask(ModuleFact.BUFFERING, MissingFact.BUFFERING,
                bufferings > 1 && kind.flatMap(ModuleFacts::buffering).isEmpty());
        ask(ModuleFact.ERROR_CHECK, MissingFact.ERROR_CHECK, kind.flatMap(ModuleFacts::checkBits).isEmpty()
                && families.stream().anyMatch(family -> !family.checkBits().isEmpty()));
        boolean checked = kind.flatMap(ModuleKind::errorCheck).filter(check -> check == ErrorCheck.ECC).isPresent();
        ask(ModuleFact.CHECK_BITS, MissingFact.CHECK_BITS, checked && isOnly(Generation.DDR5)
                && families.stream().anyMatch(family -> family.checkBits().size() > 1));
        boolean old = !families.isEmpty() && families.stream().allMatch(family -> family.grades().isEmpty());
        ask(ModuleFact.RATE, MissingFact.RATE, !old);
        ask(ModuleFact.ACCESS_TIME, MissingFact.ACCESS_TIME, old);
        chips(old);
        ask(ModuleFact.VOLTAGE, MissingFact.VOLTAGE, families.stream()
                .anyMatch(family -> family.voltages().size() > 1 && family.form() != Form.SOLDERED));
        ask(ModuleFact.CONTACTS, MissingFact.CONTACTS,
                reading.form().filter(form -> form == Form.SIMM_30 || form == Form.SIMM_72).isPresent());
        ask(ModuleFact.CAS_LATENCY, MissingFact.LATENCY, !old && !isOnly(Generation.RDRAM));
    }

    /** Chips of a RIMM are counted by size alone; SIMMs are told apart without them. */
    private void chips(boolean old) {
        boolean ranked = !old && !isOnly(Generation.RDRAM);
        ask(ModuleFact.RANKS, MissingFact.RANKS, ranked && kind.filter(this::knowsRanks).isEmpty());
        ask(ModuleFact.CHIP_WIDTH, MissingFact.CHIP_WIDTH,
                ranked && kind.flatMap(ModuleFacts::chipWidth).isEmpty());
        ask(ModuleFact.CHIP_SIZE, MissingFact.CHIP_SIZE, !old && kind.flatMap(ModuleFacts::chipSize).isEmpty());
        ask(ModuleFact.STACK, MissingFact.STACK, kind.filter(each -> Stacks.most(each) > Stacks.least(each))
                .isPresent());
    }

    private boolean knowsRanks(ModuleKind known) {
        return ModuleFacts.ranks(known).isPresent();
    }

    private boolean isOnly(Generation generation) {
        return reading.generation().equals(Optional.of(generation));
    }

    private void ask(ModuleFact fact, MissingFact missingFact, boolean matters) {
        if (matters && !reading.facts().containsKey(fact)) {
            missing.add(missingFact);
        }
    }
}
