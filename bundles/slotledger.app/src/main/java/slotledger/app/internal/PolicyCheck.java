package slotledger.app.internal;

import java.nio.file.Path;
import java.util.Optional;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.trade.Policy;

/** No money is spent by a policy that is missing, or by a policy or choices of which a part could not be read. */
final class PolicyCheck {

    private PolicyCheck() {
    }

    static Policy usable(Survey survey) throws DeskException {
        Policy policy = survey.policy().orElseThrow(() -> new DeskException(Trouble.INPUT, "The project "
                + survey.project().title() + " has no policy, so there is no target to plan for. Add a file whose "
                + "name begins with \"policy\"; the command \"template\" writes one to fill in."));
        Optional<Finding> wrong = firstError(survey, survey.project().policy());
        if (wrong.isPresent()) {
            throw new DeskException(Trouble.INPUT,
                    "The policy can't be followed before it is corrected: " + wrong.get());
        }
        Optional<Finding> undecided = firstError(survey, survey.project().choices());
        if (undecided.isPresent()) {
            throw new DeskException(Trouble.INPUT,
                    "The choices can't be kept before they are corrected: " + undecided.get());
        }
        return policy;
    }

    private static Optional<Finding> firstError(Survey survey, Optional<Path> file) {
        return survey.findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .filter(finding -> file.isPresent() && file.get().endsWith(finding.place().file()))
                .findFirst();
    }
}
