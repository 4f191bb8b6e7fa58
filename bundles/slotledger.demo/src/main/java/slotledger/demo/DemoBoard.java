package slotledger.demo;

import java.util.List;

/**
 * What an inventory of the demo fleet writes of a board.
 *
 * @param key        short name used in rooms.txt
 * @param maker      maker as written
 * @param names      ways the model is written, the first most often
 * @param generation DDR4, DDR3L, ...
 * @param form       DIMM, SO-DIMM, RDIMM ECC, soldered
 * @param rate       MT/s of the modules in it
 * @param sockets    sockets a person counts
 * @param processors processors installed
 * @param systems    operating systems, the first most often
 */
record DemoBoard(
        String key,
        String maker,
        List<String> names,
        String generation,
        String form,
        int rate,
        int sockets,
        int processors,
        List<String> systems) {

    static DemoBoard of(String line) {
        String[] cells = line.split("\\s*\\|\\s*");
        return new DemoBoard(cells[0], cells[1], List.of(cells[2].split(";\\s*")), cells[3], cells[4],
                Integer.parseInt(cells[5]), Integer.parseInt(cells[6]), Integer.parseInt(cells[7]),
                List.of(cells[8].split(";\\s*")));
    }

    /** "DDR4-2666", "DDR3L-1600 SO-DIMM", "DDR4-2400 RDIMM ECC". */
    String type() {
        return generation + "-" + rate + (form.equals("DIMM") ? "" : " " + form);
    }
}
