package slotledger.catalog.internal.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.source.Place;

/** Gathers what is wrong in one board file. */
final class Problems {

    private static final int LONGEST_SEEN = 120;

    private final String file;
    private final List<Finding> findings = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    Place place(Optional<Mark> mark) {
        return mark.map(at -> Place.ofRow(file, "", at.getLine() + 1).atColumn(at.getColumn() + 1, ""))
                .orElse(Place.ofFile(file));
    }

    void error(String code, Place place, String seen, String message, String expected, String remedy) {
        findings.add(new Finding(
                Severity.ERROR, code, place, Optional.empty(), shortened(seen), message, expected, remedy));
    }

    boolean isEmpty() {
        return findings.isEmpty();
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }

    private static String shortened(String seen) {
        return seen.length() <= LONGEST_SEEN ? seen : seen.substring(0, LONGEST_SEEN) + "…";
    }
}
