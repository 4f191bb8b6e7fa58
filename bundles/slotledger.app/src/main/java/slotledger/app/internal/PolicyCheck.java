package slotledger.app.internal;

import java.nio.file.Path;
import java.util.Optional;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.trade.Policy;

/** No money is spent by a policy that is missing, or of which a part could not be read. */
final class PolicyCheck {

    private PolicyCheck() {
    }

    static Policy usable(Survey survey) throws DeskException {
        Policy policy = survey.policy().orElseThrow(() -> new DeskException(Trouble.INPUT, "The project "
                + survey.project().title() + " has no policy, so there is no target to plan for. Add a file whose "
                + "name begins with \"policy\"; the command \"template\" writes one to fill in."));
        Optional<Finding> wrong = survey.findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR && isInPolicy(finding, survey))
                .findFirst();
        if (wrong.isPresent()) {
            throw new DeskException(Trouble.INPUT,
                    "The policy can't be followed before it is corrected: " + wrong.get());
        }
        return policy;
    }

    private static boolean isInPolicy(Finding finding, Survey survey) {
        Optional<Path> file = survey.project().policy();
        return file.isPresent() && file.get().endsWith(finding.place().file());
    }
}
