package slotledger.intake.internal.policy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Policy;

/** Reads a policy from a text file or a spreadsheet. */
public final class PolicyReader {

    private static final long LARGEST = 1_000_000;

    private final SheetFile sheets;

    public PolicyReader(SheetFile sheets) {
        this.sheets = sheets;
    }

    public Reading<Policy> read(Path file) throws IntakeException {
        String name = String.valueOf(file.getFileName());
        List<Finding> findings = new ArrayList<>();
        PolicyDraft draft = new PolicyDraft(findings::add);
        if (name.toLowerCase(Locale.ROOT).matches(".*\\.(ya?ml|txt)")) {
            new PolicyYaml(name, draft).read(text(file, name));
        } else {
            sheets.read(file, new PolicySheets(name, draft), Progress.NONE);
        }
        return new Reading<>(new PolicyBuilder(name, draft).build(), List.of(), findings);
    }

    private static String text(Path file, String name) throws IntakeException {
        try {
            if (Files.size(file) > LARGEST) {
                throw new IOException("larger than %d bytes".formatted(LARGEST));
            }
            return Files.readString(file, StandardCharsets.UTF_8).replace("\uFEFF", "");
        } catch (IOException e) {
            throw new IntakeException(Doubt.error("policy-not-readable", "The policy can't be read: %s."
                    .formatted(e.getMessage()), "a text file in UTF-8", "Check its name and save it as UTF-8 text.")
                    .at(Place.ofFile(name), ""), e);
        }
    }
}
