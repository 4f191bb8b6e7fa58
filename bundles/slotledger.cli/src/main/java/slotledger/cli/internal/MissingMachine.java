package slotledger.cli.internal;

import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;

/** A machine that is asked for and can't be judged: what is known of it. */
final class MissingMachine {

    private MissingMachine() {
    }

    static DeskException of(Survey survey, String machine) {
        String why = survey.findings().stream()
                .filter(finding -> finding.machine().map(AssetTag::value).orElse("").equals(machine))
                .map(Finding::toString)
                .reduce("", (all, each) -> all + System.lineSeparator() + "    " + each);
        return new DeskException(Trouble.INPUT, "No machine with the asset tag " + machine + " can be judged."
                + (why.isEmpty() ? " The inventory does not list it; \"check\" shows what it lists." : why));
    }
}
