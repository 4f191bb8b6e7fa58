package slotledger.demo;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** fleet-night-college.csv: German headings, semicolons, Windows-1252, decimal commas. */
final class NightCollegeFile {

    private final List<DemoMachine> machines;

    NightCollegeFile(List<DemoMachine> machines) {
        this.machines = machines;
    }

    void write(Path file) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("Inventarnummer;Seriennummer;Hersteller;Modell;Standort;Raum;Nutzung;Kostenstelle;Betriebssystem;"
                + "Arbeitsspeicher;Bemerkung");
        int index = 0;
        for (DemoMachine machine : machines) {
            if (!machine.site().equals("Night College")) {
                continue;
            }
            String remark = switch (index) {
                case 3 -> "Gerät läuft langsam; siehe \"Ticket 88\"";
                case 9 -> "Prüfungsraum";
                default -> "";
            };
            lines.add(String.join(";", machine.tag(), machine.serial(), machine.board().maker(), machine.model(),
                    machine.site(), machine.room(), machine.use(), machine.costCentre(), machine.system(),
                    memory(machine, index), quoted(remark)));
            index++;
        }
        Files.write(file, String.join("\r\n", lines).concat("\r\n").getBytes(Charset.forName("windows-1252")));
    }

    private static String memory(DemoMachine machine, int index) {
        List<Double> filled = machine.modules().stream().filter(size -> size > 0).toList();
        String size = DemoMachine.gigabytes(filled.get(0)).replace('.', ',');
        if (index == 15) {
            return "unbekannt"; // dirt: nobody knows
        }
        String text = filled.size() + " x " + size + " GB " + machine.board().type();
        int empty = machine.modules().size() - filled.size();
        return empty > 0 && index % 2 == 0 ? text + ", " + empty + " frei" : text;
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "" : '"' + text.replace("\"", "\"\"") + '"';
    }
}
