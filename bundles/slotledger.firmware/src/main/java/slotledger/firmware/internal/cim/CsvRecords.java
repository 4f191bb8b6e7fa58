package slotledger.firmware.internal.cim;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads comma, semicolon or tab separated lists with a line of names. Several lists may follow each other, each with
 * its names; a line with a shell's "#TYPE" and blank lines between them are passed over.
 */
final class CsvRecords {

    private static final List<String> NAMES = List.of("Capacity", "MemoryDevices");

    private CsvRecords() {
    }

    static List<CimRecord> read(String text) {
        List<CimRecord> records = new ArrayList<>();
        List<String> names = List.of();
        char separator = ',';
        for (String line : (Iterable<String>) text.lines()::iterator) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            char likely = separator(line);
            List<String> cells = cells(line, likely);
            if (NAMES.stream().anyMatch(name -> cells.stream().anyMatch(name::equalsIgnoreCase))) {
                names = cells;
                separator = likely;
            } else if (!names.isEmpty()) {
                Map<String, String> values = new HashMap<>();
                List<String> row = cells(line, separator);
                for (int i = 0; i < Math.min(names.size(), row.size()); i++) {
                    values.put(names.get(i), row.get(i));
                }
                records.add(new CimRecord(values));
            }
        }
        return records;
    }

    private static char separator(String line) {
        for (char one : new char[] {'\t', ';'}) {
            if (line.indexOf(one) >= 0) {
                return one;
            }
        }
        return ',';
    }

    /** Cells with quotes around them where the separator is in them; two quotes mean one. */
    private static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char one = line.charAt(i);
            if (one == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(one);
                i++;
            } else if (one == '"') {
                quoted = !quoted;
            } else if (one == separator && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(one);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
