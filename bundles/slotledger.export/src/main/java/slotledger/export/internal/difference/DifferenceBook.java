package slotledger.export.internal.difference;

import java.nio.file.Path;
import slotledger.export.ExportException;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.difference.Difference;

/** The workbook of what is different between two plans. */
public final class DifferenceBook {

    private final Difference difference;

    public DifferenceBook(Difference difference) {
        this.difference = difference;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("What changed: " + difference.after().title(),
                    difference.after().policy().currency())) {
                DifferencePage.add(workbook, difference);
                workbook.save(out);
            }
        });
    }
}
