package slotledger.intake.internal.value;

import java.util.List;
import java.util.OptionalInt;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.Form;

/** What the table of families adds to the facts of a module, and where the two contradict each other. */
final class FamilyCheck {

    private FamilyCheck() {
    }

    static void of(Facts facts, OptionalInt pins, List<Doubt> notices) {
        List<Family> families = Families.all().stream()
                .filter(each -> facts.generation().isEmpty() || each.generations().contains(facts.generation().get()))
                .filter(each -> facts.form().isEmpty() || each.form() == facts.form().get())
                .toList();
        if (families.isEmpty() && facts.form().get() != Form.SOLDERED) {
            notices.add(Doubt.warning("no-such-module", "Nobody makes %s as %s; one of the two is wrong."
                    .formatted(facts.generation().orElseThrow().text(), facts.form().orElseThrow().text()),
                    "a form in which the generation is made", "Look at the label of the module."));
        }
        if (pins.isEmpty() || families.isEmpty()) {
            return;
        }
        List<Family> fitting = families.stream().filter(each -> each.pins().equals(pins)).toList();
        if (fitting.isEmpty()) {
            notices.add(Doubt.warning("pins-contradict", "%d pins do not go with %s.".formatted(pins.getAsInt(),
                    facts.form().map(Form::text).or(() -> facts.generation().map(each -> each.text()))
                            .orElse("any module known here")),
                    "the number of pins of the module, such as " + families.stream().flatMapToInt(each ->
                            each.pins().stream()).distinct().limit(4).mapToObj(String::valueOf).toList(),
                    "Look at the label of the module; don't go by the pins."));
            return;
        }
        List<Form> forms = fitting.stream().map(Family::form).distinct().toList();
        if (facts.generation().isPresent() && facts.form().isEmpty() && forms.size() == 1) {
            facts.form(forms.get(0));
        }
    }
}
