package slotledger.demo;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** offers.xlsx: three suppliers, a sheet each; prices without tax, in euro, all invented. */
final class OffersFile {

    /** Its prices from 10 and from 50 hold for the packs from there on only. */
    private static final Set<String> FURTHER = Set.of("QF-D4S8");
    /** Cheap, and delivered after the day the policy names. */
    private static final String LATE = "ND-4U8-2N";

    void write(Path file) throws IOException {
        try (Workbook book = new XSSFWorkbook()) {
            quillfen(book);
            nordvik(book);
            pellStreet(book);
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    private void quillfen(Workbook book) {
        SheetPen pen = new SheetPen(book, "Quillfen Components");
        pen.row("Quotation Q-26-1187 for Ellerby Vale Schools, prices in EUR without tax");
        pen.headings("Supplier", "Part", "Module", "Pack size", "Price (EUR)", "Price from 10 (EUR)",
                "Price from 50 (EUR)", "Stock", "Lead time (days)", "Price rule", "Shipping (EUR)",
                "Free shipping from (EUR)", "Price date", "Valid until");
        Object[][] rows = {
            {"QF-D4U8", "8GB 1Rx8 DDR4-2666 UDIMM non-ECC unbuffered 8Gbit 1.2V", 1, 19.80, 18.90, 17.60, 400, 3},
            {"QF-D4U16", "16GB 2Rx8 DDR4-2666 UDIMM non-ECC unbuffered 8Gbit 1.2V", 1, 36.50, 34.90, 33.20, 200, 3},
            {"QF-D4S8", "8GB 1Rx8 DDR4-2666 SO-DIMM non-ECC unbuffered 8Gbit 1.2V", 1, 20.40, 19.60, 18.80, 150, 3},
            {"QF-D4S16", "16GB 2Rx8 DDR4-2666 SO-DIMM non-ECC unbuffered 8Gbit 1.2V", 1, 37.20, 35.80, 34.10, 60, 3},
            {"QF-D4S8-32", "8GB 1Rx8 DDR4-3200 SO-DIMM non-ECC unbuffered 8Gbit 1.2V", 1, 21.90, 21.10, 20.30, 80, 3},
            {"QF-D3LS4", "4GB 1Rx8 DDR3L-1600 SO-DIMM non-ECC unbuffered 4Gbit 1.35V", 1, 9.90, 9.20, 8.60, 120, 5},
            {"QF-D3LS8", "8GB 2Rx8 DDR3L-1600 SO-DIMM non-ECC unbuffered 4Gbit 1.35V", 1, 18.40, 17.70, 16.90, 40, 5},
            {"QF-D3LU8", "8GB 2Rx8 DDR3L-1600 UDIMM non-ECC unbuffered 4Gbit 1.35V", 1, 17.60, 16.90, 16.20, 60, 5},
            {"QF-D5U16", "16GB 1Rx8 DDR5-4800 UDIMM non-ECC unbuffered 16Gbit 1.1V", 1, 52.00, 50.50, 48.90, 90, 4},
            {"QF-D5U32", "32GB 2Rx8 DDR5-4800 UDIMM non-ECC unbuffered 16Gbit 1.1V", 1, 98.00, 95.50, 92.00, 40, 4},
        };
        for (Object[] row : rows) {
            pen.row("Quillfen Components", row[0], row[1], row[2], row[3], row[4], row[5], row[6], row[7],
                    FURTHER.contains(row[0]) ? "further packs" : "all packs", 12.00, 500.00, "2026-11-02",
                    "2027-01-31");
        }
        pen.widths(22, 16, 58, 10, 12, 18, 18, 8, 16, 14, 14, 22, 12, 12);
    }

    private void nordvik(Workbook book) {
        SheetPen pen = new SheetPen(book, "Nordvik & Daughters");
        pen.headings("Supplier", "Part number", "Description", "Modules per pack", "Unit price", "Currency",
                "Available", "Delivery days", "Delivery charge", "Valid until");
        Object[][] rows = {
            {"ND-4U8-2", "Kit 2x8GB DDR4-2666 DIMM 1Rx8 non-ECC unbuffered 1.2V 8Gbit chips", 2, 36.20, 150},
            {LATE, "Kit 2x8GB DDR4-2666 DIMM 1Rx8 non-ECC unbuffered 1.2V 8Gbit chips, next container", 2, 31.00, 500},
            {"ND-4U16-2", "Kit 2x16GB DDR4-2666 DIMM 2Rx8 non-ECC unbuffered 1.2V 8Gbit chips", 2, 68.80, 40},
            {"ND-4U16-X4", "16GB DDR4-2666 DIMM 2Rx4 non-ECC unbuffered 1.2V 4Gbit chips, high density", 1, 24.90, 300},
            {"ND-4S8", "8GB DDR4-2666 SO-DIMM 1Rx8 non-ECC unbuffered 1.2V 8Gbit chips", 1, 18.90, 30},
            {"ND-4S16", "16GB DDR4-3200 SO-DIMM 2Rx8 non-ECC unbuffered 1.2V 8Gbit chips", 1, 36.90, 50},
            {"ND-3U4", "4GB DDR3-1600 DIMM 2Rx8 non-ECC unbuffered 1.5V 2Gbit chips", 1, 7.90, 60},
            {"ND-3U8", "8GB DDR3-1600 DIMM 2Rx8 non-ECC unbuffered 1.5V 4Gbit chips", 1, 14.90, 45},
            {"ND-3S8", "8GB DDR3-1600 SO-DIMM 2Rx8 non-ECC unbuffered 1.5V 4Gbit chips", 1, 12.40, 200},
            {"ND-4E8", "8GB DDR4-2666 DIMM 1Rx8 ECC unbuffered 1.2V 8Gbit chips", 1, 19.90, 90},
            {"ND-5S16", "16GB DDR5-5600 SO-DIMM 1Rx8 non-ECC unbuffered 1.1V 16Gbit chips", 1, 51.00, 30},
            {"ND-5S8", "8GB DDR5-5600 SO-DIMM 1Rx16 non-ECC unbuffered 1.1V 16Gbit chips", 1, 29.50, 30},
        };
        for (Object[] row : rows) {
            pen.row("Nordvik & Daughters", row[0], row[1], row[2], row[3], "EUR", row[4],
                    row[0].equals(LATE) ? 45 : 7, 9.50, "2026-12-31");
        }
        pen.row("Prices for one pack. Used modules are tested for 24 hours.");
        pen.widths(22, 16, 66, 16, 12, 10, 10, 14, 16, 12);
    }

    private void pellStreet(Workbook book) {
        SheetPen pen = new SheetPen(book, "Pell Street Parts");
        pen.row("Pell Street Parts - server memory, refurbished DDR2 and DDR3");
        pen.blank();
        pen.headings("Supplier", "SKU", "Capacity", "Type", "Form", "Ranks", "Chip width", "Chip size", "ECC",
                "Buffering", "Voltage", "Price", "Stock", "Valid until");
        Object[][] rows = {
            {"PS-R4-16", "16 GB", "DDR4-2400", "DIMM", "2", "x4", "8 Gbit", "ECC", "registered",
                "1.2 V", "€ 24,00", 64},
            {"PS-R4-32", "32 GB", "DDR4-2400", "DIMM", "2", "x4", "8 Gbit", "ECC", "registered",
                "1.2 V", "€ 46,00", 64},
            {"PS-R4-32N", "32 GB", "DDR4-2933", "DIMM", "2", "x4", "8 Gbit", "ECC", "registered",
                "1.2 V", "€ 58,00", 48},
            {"PS-R5-32", "32 GB", "DDR5-4800", "DIMM", "1", "x4", "16 Gbit", "ECC", "registered",
                "1.1 V", "€ 139,00", 16},
            {"PS-R3-8", "8 GB", "DDR3-1333", "DIMM", "2", "x4", "2 Gbit", "ECC", "registered",
                "1.5 V", "€ 9,00", 30},
            {"PS-E3-4", "4 GB", "DDR3-1333", "DIMM", "2", "x8", "2 Gbit", "ECC", "unbuffered",
                "1.5 V", "€ 8,50", 24},
            {"PS-U2-2", "2 GB", "DDR2-667", "DIMM", "2", "x8", "1 Gbit", "none", "unbuffered",
                "1.8 V", "€ 4,80", 40},
            {"PS-U2-2F", "2 GB", "DDR2-800", "DIMM", "2", "x8", "1 Gbit", "none", "unbuffered",
                "1.8 V", "€ 4,20", 40},
            {"PS-S2-2", "2 GB", "DDR2-667", "SO-DIMM", "2", "x8", "1 Gbit", "none", "unbuffered",
                "1.8 V", "€ 5,20", 10},
            {"PS-U1-1", "1 GB", "DDR-400", "DIMM", "2", "x8", "512 Mbit", "none", "unbuffered",
                "2.5 V", "€ 6,00", 12},
            {"PS-U3-8", "8 GB", "DDR3-1600", "DIMM", "2", "x8", "4 Gbit", "none", "unbuffered",
                "1.5 V", "€ 11,90", 28},
        };
        for (Object[] row : rows) {
            pen.row("Pell Street Parts", row[0], row[1], row[2], row[3], row[4], row[5], row[6], row[7], row[8], row[9],
                    row[10], row[11], "2027-03-31");
        }
        pen.widths(22, 12, 12, 14, 12, 8, 12, 12, 8, 14, 10, 12, 8, 12);
    }
}
