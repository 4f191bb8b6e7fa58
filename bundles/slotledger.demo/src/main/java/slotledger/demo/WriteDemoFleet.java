package slotledger.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Writes the files of demo-fleet that are made by a program; the boards and the policy are written by hand. */
public final class WriteDemoFleet {

    private WriteDemoFleet() {}

    /** Takes the folder to write to. */
    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]));
    }

    static void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<DemoMachine> machines = new DemoMachines().make();
        new InventoryFile(machines).write(folder.resolve("fleet.xlsx"));
        new NightCollegeFile(machines).write(folder.resolve("fleet-night-college.csv"));
        new OffersFile().write(folder.resolve("offers.xlsx"));
        new ShelfFile().write(folder.resolve("shelf.csv"));
    }
}
