package slotledger.intake.internal.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import slotledger.intake.IntakeException;
import slotledger.model.observed.Comparison;
import slotledger.model.observed.Reconciliation;
import slotledger.model.observed.Testimony;

/** Writes what was compared, one fact a row, with each source's word and place. */
public final class ReconciliationCsv {

    private ReconciliationCsv() {
    }

    public static void write(Reconciliation reconciliation, Path file) throws IntakeException {
        WholeFile.write(file, out -> write(reconciliation, out));
    }

    private static void write(Reconciliation reconciliation, OutputStream out) throws IOException {
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        // Spreadsheet programs take a file for UTF-8 only where it begins so.
        writer.write('\uFEFF');
        try (CSVPrinter csv = new CSVPrinter(writer, CSVFormat.RFC4180)) {
            csv.printRecord("Asset tag", "Fact", "Outcome", "Believed source", "Believed", "Believed place",
                    "Other source", "Other", "Other place");
            for (Comparison each : reconciliation.comparisons()) {
                Testimony believed = each.believed();
                Testimony other = each.said().size() > 1 ? each.said().get(1) : believed;
                csv.printRecord(safe(each.machine().value()), safe(each.fact()), each.outcome().text(),
                        believed.ground().text(), safe(believed.text()), safe(believed.place().toString()),
                        other.ground().text(), safe(other.text()), safe(other.place().toString()));
            }
        }
    }

    private static String safe(String text) {
        return SafeCells.looksLikeFormula(text) ? "'" + text : text;
    }
}
