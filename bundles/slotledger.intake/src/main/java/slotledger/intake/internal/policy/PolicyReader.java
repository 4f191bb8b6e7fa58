package slotledger.intake.internal.policy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.model.finding.Finding;
import slotledger.model.task.Progress;
import slotledger.model.trade.Policy;

/** Reads a policy from a text file or a spreadsheet. */
public final class PolicyReader {

    private final SheetFile sheets;

    public PolicyReader(SheetFile sheets) {
        this.sheets = sheets;
    }

    public Reading<Policy> read(Path file) throws IntakeException {
        String name = String.valueOf(file.getFileName());
        List<Finding> findings = new ArrayList<>();
        PolicyDraft draft = new PolicyDraft(findings::add);
        if (name.toLowerCase(Locale.ROOT).matches(".*\\.(ya?ml|txt)")) {
            new PolicyYaml(file, draft).read();
        } else {
            sheets.read(file, new PolicySheets(name, draft), Progress.NONE);
        }
        return new Reading<>(new PolicyBuilder(name, draft).build(), List.of(), findings);
    }
}
