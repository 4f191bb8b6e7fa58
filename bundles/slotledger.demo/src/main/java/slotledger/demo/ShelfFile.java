package slotledger.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** shelf.csv: what lies in the cupboard of the IT office. */
final class ShelfFile {

    private static final List<String> LINES = List.of(
            "Module,Count,Remark",
            "8GB 1Rx8 PC4-2666V-U DDR4 DIMM non-ECC 8Gbit,14,from scrapped desks",
            "4GB 1Rx8 PC4-2400T-U DDR4 DIMM non-ECC 4Gbit,22,pulled 2025",
            "8GB 1Rx8 PC4-2666V-S DDR4 SO-DIMM non-ECC 8Gbit,6,",
            "4GB 1Rx8 PC3L-12800S DDR3L SO-DIMM non-ECC 1.35V 4Gbit,18,pulled 2024",
            "4GB 2Rx8 PC3-12800U DDR3 DIMM non-ECC 1.5V 2Gbit,25,",
            "16GB 2Rx4 PC4-2400T-R DDR4 RDIMM ECC 8Gbit,4,spares of the machine room",
            "2GB 2Rx8 PC2-5300U DDR2 DIMM non-ECC 1.8V 1Gbit,8,old but good",
            "16GB 2Rx4 PC4-2666 DDR4 DIMM non-ECC 4Gbit,6,gift; nobody knows whether they work",
            "2GB 1Rx8 PC3L-12800S DDR3L SO-DIMM non-ECC 1.35V 2Gbit,9,too small for anything?");

    void write(Path file) throws IOException {
        Files.write(file, String.join("\n", LINES).concat("\n").getBytes(StandardCharsets.UTF_8));
    }
}
