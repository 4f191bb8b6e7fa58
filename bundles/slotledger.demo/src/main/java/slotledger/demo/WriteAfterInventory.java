package slotledger.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes after/inventory-after.csv: what an inventory lists after the work of a plan, which went nearly as planned. */
public final class WriteAfterInventory {

    private WriteAfterInventory() {}

    /** Takes the plan.json and the folder of the demo fleet, which holds the boards. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), Path.of(arguments[1]));
    }

    static void write(Path plan, Path folder) throws IOException {
        JsonNode machines = new ObjectMapper().readTree(plan.toFile()).path("plan").path("machines");
        if (machines.isEmpty()) {
            throw new IOException("The file %s must list the machines of a plan. Maybe it is another file."
                    .formatted(plan));
        }
        Files.createDirectories(folder.resolve("after"));
        new AfterFile(machines, BoardNames.read(folder.resolve("boards")))
                .write(folder.resolve("after").resolve("inventory-after.csv"));
    }
}
