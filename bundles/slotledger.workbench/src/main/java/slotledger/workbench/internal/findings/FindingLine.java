package slotledger.workbench.internal.findings;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.source.Place;
import slotledger.workbench.internal.Texts;

/**
 * One finding as a line of a table.
 *
 * @param severity how much it matters
 * @param machine  the machine concerned, where there is one
 * @param place    where it was seen; may be empty
 * @param message  what is the matter, with what was seen and expected
 * @param remedy   what to do
 */
public record FindingLine(
        Severity severity, Optional<AssetTag> machine, String place, String message, String remedy) {

    public FindingLine {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(remedy, "remedy");
    }

    /** Findings of the files and remarks of the plan, worst first. */
    public static List<FindingLine> of(Survey survey, Optional<Plan> plan) {
        Stream<Finding> remarks = plan.stream().flatMap(made -> made.remarks().stream());
        return Stream.concat(survey.findings().stream(), remarks).distinct()
                .sorted(Comparator.comparing(Finding::severity)).map(FindingLine::of).toList();
    }

    /** Everything the line says, one thing below the other. */
    public String inFull() {
        return Stream.of(message, remedy, place).filter(text -> !text.isEmpty()).collect(Collectors.joining("\n"));
    }

    private static FindingLine of(Finding finding) {
        StringBuilder message = new StringBuilder(finding.message());
        if (!finding.seen().isEmpty()) {
            message.append(' ').append(Texts.with(Texts.finding_seen, finding.seen()));
        }
        if (!finding.expected().isEmpty()) {
            message.append(' ').append(Texts.with(Texts.finding_expected, finding.expected()));
        }
        return new FindingLine(finding.severity(), finding.machine(),
                finding.place().equals(Place.NOWHERE) ? "" : finding.place().toString(), message.toString(),
                finding.remedy());
    }
}
