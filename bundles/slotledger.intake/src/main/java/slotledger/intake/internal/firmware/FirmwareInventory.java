package slotledger.intake.internal.firmware;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.fact.Problem;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.spi.InventoryReader;
import slotledger.intake.spi.ReaderName;
import slotledger.model.finding.Finding;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;

/**
 * Reads what machines say of themselves: a folder or archive with a file for each machine, named by its asset tag or
 * serial number, or one list of many machines. Asked before the reader of spreadsheets, since lists of firmware have
 * their endings too.
 */
@Component(property = "service.ranking:Integer=10")
@ReaderName("firmware tables")
public final class FirmwareInventory implements InventoryReader {

    @Activate
    public FirmwareInventory() {
        // Needs nothing.
    }

    @Override
    public boolean canRead(Path file) {
        return FirmwareFiles.isFirmware(file);
    }

    @Override
    public Ground ground() {
        return Ground.FIRMWARE;
    }

    @Override
    public Reading<ObservedFleet> read(Path file, Optional<Path> mapping, Progress progress) throws IntakeException {
        List<ObservedMachine> machines = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        read(file, found -> machines.add(found.machine()), findings, progress);
        return new Reading<>(new ObservedFleet(machines, findings), List.of(), findings);
    }

    /** What each machine says of its board. */
    public static List<BoardReport> boards(Path file, Progress progress) throws IntakeException {
        List<BoardReport> reports = new ArrayList<>();
        read(file, found -> reports.add(found.report()), new ArrayList<>(), progress);
        return reports;
    }

    /** Takes machines. */
    @FunctionalInterface
    interface Taker {
        void take(MachineReader.Found found);
    }

    /** Every file is a machine for the taker, or a finding. */
    static void read(Path file, Taker taker, List<Finding> findings, Progress progress) throws IntakeException {
        MachineReader reader = new MachineReader(findings::add);
        FirmwareFiles.each(file, "Reading firmware tables", (reading, place) -> {
            if (reading instanceof FirmwareReading.OfTable table) {
                reader.read(table.table(), place).ifPresent(taker::take);
            } else if (reading instanceof FirmwareReading.OfModule) {
                findings.add(Doubt.note("firmware-module", "This is a module, not a machine; it was left out.",
                        "the table of a machine", "Put it into the folder shelf if the module is in no machine.")
                        .at(place, ""));
            } else {
                findings.add(refused(reading, place));
            }
        }, progress);
    }

    private static Finding refused(FirmwareReading reading, Place place) {
        Problem problem = reading.problems().stream().findFirst()
                .orElseGet(() -> Problem.of("the file", "nothing in it", "a table"));
        return Doubt.error("firmware-not-understood", "This is no firmware table that is known: %s."
                .formatted(problem.seen()), problem.expected(), "Collect it again, or move the file away.")
                .at(place, "");
    }
}
