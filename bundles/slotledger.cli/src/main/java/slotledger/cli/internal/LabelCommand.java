package slotledger.cli.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Label;
import slotledger.app.Mixup;
import slotledger.model.finding.Severity;
import slotledger.model.observed.LabelReading;
import slotledger.model.task.Progress;

/** Reads what is printed on a module. */
@Command(
        name = "label",
        description = "Read what is printed on a module: what each part means, which family it is, what is missing and "
                + "how to find it.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger label \"8GB 2Rx8 PC4-2400T-SE1\"",
            "  slotledger label 4x36-60",
            "  slotledger label PC800-45"
        })
final class LabelCommand extends DeskCommand {

    @Parameters(arity = "1..*", paramLabel = "TEXT", description = "As printed; best in quotes.")
    private List<String> words;

    LabelCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Label label = desk().readLabel(String.join(" ", words));
        LabelReading reading = label.reading();
        if (!reading.isUnderstood()) {
            throw new DeskException(Trouble.INPUT, "Nothing of \"" + reading.text() + "\" was understood. A label "
                    + "reads like \"8GB 2Rx8 PC4-2400T-SE1\", \"4x36-60\" or \"128MB PC800-45\"; leave out what the "
                    + "maker added.");
        }
        boolean clear = reading.piece().isPresent() && reading.rest().isEmpty()
                && reading.findings().stream().noneMatch(finding -> finding.severity() != Severity.NOTE);
        return new LabelText(label).answer().fact("label", facts(label)).end(clear ? ExitCode.OK : ExitCode.DIFFERS);
    }

    private static Map<String, Object> facts(Label label) {
        LabelReading reading = label.reading();
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("text", reading.text());
        reading.piece().ifPresent(piece -> facts.put("module", piece.toString()));
        Map<String, Object> told = new LinkedHashMap<>();
        reading.facts().forEach((fact, value) -> told.put(fact.text(), value));
        facts.put("facts", told);
        facts.put("parts", reading.parts().stream().map(part -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("from", part.from());
            one.put("text", part.text());
            one.put("meaning", part.meaning());
            return one;
        }).toList());
        facts.put("notUnderstood", reading.rest());
        facts.put("families", label.families().stream().map(FamilyText::facts).toList());
        facts.put("findings", reading.findings().stream().map(finding -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("severity", finding.severity().name());
            one.put("code", finding.code());
            one.put("message", finding.message());
            one.put("remedy", finding.remedy());
            return one;
        }).toList());
        facts.put("missing", label.missing().stream().map(missing -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("fact", missing.name());
            one.put("text", missing.text());
            one.put("cheapestWay", missing.cheapestWay());
            return one;
        }).toList());
        facts.put("mixups", label.mixups().stream().map(LabelCommand::facts).toList());
        return facts;
    }

    private static Map<String, Object> facts(Mixup mixup) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("one", mixup.one());
        facts.put("other", mixup.other());
        mixup.happens().ifPresent(happens -> facts.put("happens", happens));
        facts.put("byEye", mixup.byEye());
        facts.put("byLabel", mixup.byLabel());
        facts.put("source", mixup.source().toString());
        return facts;
    }
}
