package slotledger.app.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.app.Project;
import slotledger.app.internal.Decisions.Made;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Decision.Mute;

/** Makes notes of the warnings that somebody looked at; one that is about something else now stays a warning. */
final class Mutes {

    private final List<Made<Mute>> mutes;

    Mutes(Project project) {
        mutes = Decisions.of(project, Mute.class);
    }

    /** What a mute of this finding is. */
    static Mute of(Finding finding) {
        return new Mute(finding.code(), finding.machine().map(AssetTag::value).orElse(""), finding.seen());
    }

    List<Finding> applied(List<Finding> findings) {
        if (mutes.isEmpty()) {
            return findings;
        }
        List<Finding> all = new ArrayList<>();
        for (Finding finding : findings) {
            all.add(finding.severity() == Severity.WARNING ? applied(finding) : finding);
        }
        return all;
    }

    private Finding applied(Finding finding) {
        Mute mute = of(finding);
        Optional<Made<Mute>> same = mutes.stream().filter(each -> each.decision().equals(mute)).findFirst();
        if (same.isPresent()) {
            return said(finding, Severity.NOTE, "Muted: " + same.get().by() + ".");
        }
        Optional<Made<Mute>> other = mutes.stream().filter(each -> !mute.machine().isEmpty()
                && each.decision().code().equals(mute.code())
                && each.decision().machine().equals(mute.machine())).findFirst();
        return other.map(each -> said(finding, Severity.WARNING, "Not muted: when " + each.by()
                + ", \"" + each.decision().seen() + "\" was seen.")).orElse(finding);
    }

    private static Finding said(Finding finding, Severity severity, String words) {
        return new Finding(severity, finding.code(), finding.place(), finding.machine(), finding.seen(),
                finding.message() + " " + words, finding.expected(), finding.remedy());
    }
}
