package slotledger.demo;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Makes the machines of the demo fleet from rooms.txt and boards.txt; always the same ones. */
final class DemoMachines {

    private static final long SEED = 4107;
    private static final int PERCENT = 100;

    private final Random random = new Random(SEED);
    private final Map<String, DemoBoard> boards = new LinkedHashMap<>();
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    List<DemoMachine> make() throws IOException {
        for (String line : lines("boards.txt")) {
            DemoBoard board = DemoBoard.of(line);
            boards.put(board.key(), board);
        }
        List<DemoMachine> machines = new ArrayList<>();
        for (String line : lines("rooms.txt")) {
            String[] cells = line.split("\\s*\\|\\s*");
            int count = Integer.parseInt(cells[5]);
            for (int i = 0; i < count; i++) {
                machines.add(machine(cells, i));
            }
        }
        return machines;
    }

    private DemoMachine machine(String[] cells, int index) {
        DemoBoard board = boards.get(cells[4]);
        String site = cells[0];
        int number = numbers.merge(site, 1, Integer::sum);
        String tag = site.charAt(0) + "-" + (1000 + number);
        String serial = board.key().toUpperCase(Locale.ROOT) + "-" + (100_000 + random.nextInt(900_000));
        return new DemoMachine(tag, serial, board, mostly(board.names()), site, cells[1], cells[2], cells[3],
                mostly(board.systems()), population(cells[6], index * PERCENT / Integer.parseInt(cells[5]), board));
    }

    /** The first in seven of ten cases. */
    private String mostly(List<String> choices) {
        return random.nextInt(10) < 7 ? choices.get(0) : choices.get(random.nextInt(choices.size()));
    }

    private static List<Double> population(String shares, int share, DemoBoard board) {
        int sum = 0;
        String chosen = "";
        for (String part : shares.split(";\\s*")) {
            chosen = part.substring(part.indexOf(' ') + 1);
            sum += Integer.parseInt(part.substring(0, part.indexOf('%')));
            if (share < sum) {
                break;
            }
        }
        List<Double> modules = new ArrayList<>();
        for (String module : chosen.split("\\+")) {
            modules.add(module.equals("-") ? 0 : Double.parseDouble(module));
        }
        while (modules.size() < board.sockets()) {
            modules.add(0.0);
        }
        return modules;
    }

    static List<String> lines(String name) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                DemoMachines.class.getResourceAsStream(name), StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
        }
    }
}
