package slotledger.cli.internal;

import java.util.Locale;
import slotledger.app.Label;
import slotledger.app.Mixup;
import slotledger.model.family.Family;
import slotledger.model.finding.Finding;
import slotledger.model.observed.LabelPart;
import slotledger.model.observed.LabelReading;

/** A label in words, part by part. */
final class LabelText {

    private static final String INDENT = " ".repeat(13);
    private static final int FACT = 33;
    /** More families than these are no answer. */
    private static final int FEW = 6;

    private final Label label;
    private final Answer.Builder answer = new Answer.Builder();

    LabelText(Label label) {
        this.label = label;
    }

    Answer.Builder answer() {
        LabelReading reading = label.reading();
        block("Label", reading.text());
        block("Module", reading.piece().map(Object::toString)
                .orElse("not known as a whole: the capacity is not told"));
        answer.line("");
        int width = reading.parts().stream().mapToInt(part -> part.text().length()).max().orElse(0) + 2;
        String word = "Read as";
        for (LabelPart part : reading.parts()) {
            block(word, part.text(), width,
                    part.meaning().isEmpty() ? "says nothing about the module" : part.meaning());
            word = "";
        }
        if (!reading.rest().isEmpty()) {
            block("Not read", reading.rest());
        }
        if (!reading.facts().isEmpty()) {
            answer.line("");
            String[] heading = {"Facts"};
            reading.facts().forEach((fact, value) -> {
                block(heading[0], fact.text(), FACT, value);
                heading[0] = "";
            });
        }
        family();
        findings();
        missing();
        mixups();
        return answer;
    }

    private void family() {
        if (label.families().isEmpty()) {
            return;
        }
        answer.line("");
        if (label.families().size() == 1) {
            Family family = label.families().get(0);
            block("Family", family.name());
            FamilyText.row(family).forEach(line -> answer.line(INDENT + "  " + line));
            block("", "All of it with sources: slotledger families " + family.id());
        } else {
            String names = String.join("; ", label.families().stream().limit(FEW).map(each -> each.name()).toList());
            block("Family", "one of " + label.families().size() + ": " + names
                    + (label.families().size() > FEW ? "; ..." : ""));
        }
    }

    private void mixups() {
        if (label.mixups().isEmpty()) {
            return;
        }
        answer.line("");
        String word = "Mixed up";
        for (Mixup mixup : label.mixups()) {
            block(word, "easily taken for " + mixup.other());
            below(mixup.happens().map(happens -> "Where that is wanted: " + happens)
                    .orElse("Where that is wanted, this one does no harm."));
            below("By eye: " + mixup.byEye() + " On the label: " + mixup.byLabel());
            below("[" + mixup.source() + "]");
            word = "";
        }
    }

    private void below(String text) {
        Wrapped.behind(INDENT + "  ", text).forEach(answer::line);
    }

    private void findings() {
        if (!label.reading().findings().isEmpty()) {
            answer.line("");
        }
        String word = "Doubts";
        for (Finding finding : label.reading().findings()) {
            block(word, finding.severity().name().toLowerCase(Locale.ROOT) + ": " + finding.message() + " "
                    + finding.remedy());
            word = "";
        }
    }

    private void missing() {
        answer.line("");
        if (label.missing().isEmpty()) {
            block("Missing", "nothing that the rules ask for");
            return;
        }
        String word = "Missing";
        for (var missing : label.missing()) {
            block(word, missing.text());
            below(missing.cheapestWay());
            word = "";
        }
    }

    private void block(String word, String text) {
        Wrapped.behind(Wrapped.cell(word, INDENT.length()), text).forEach(answer::line);
    }

    private void block(String word, String name, int width, String text) {
        Wrapped.behind(Wrapped.cell(word, INDENT.length()) + Wrapped.cell(name, width), text).forEach(answer::line);
    }
}
