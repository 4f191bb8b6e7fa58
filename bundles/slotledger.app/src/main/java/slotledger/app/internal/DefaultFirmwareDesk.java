package slotledger.app.internal;

import java.nio.file.Path;
import java.util.List;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.DraftedBoards;
import slotledger.app.FirmwareDesk;
import slotledger.app.Project;
import slotledger.app.Reconciled;
import slotledger.catalog.BoardDrafter;
import slotledger.catalog.Catalog;
import slotledger.catalog.CatalogException;
import slotledger.catalog.CatalogReader;
import slotledger.firmware.FirmwareReading;
import slotledger.intake.Intake;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.model.observed.BoardReport;
import slotledger.model.observed.Reconciliation;
import slotledger.model.task.Progress;

/** Orders the steps of what concerns firmware. */
final class DefaultFirmwareDesk implements FirmwareDesk {

    private final Intake intake;
    private final CatalogReader catalogs;
    private final BoardDrafter drafter;

    DefaultFirmwareDesk(Intake intake, CatalogReader catalogs, BoardDrafter drafter) {
        this.intake = intake;
        this.catalogs = catalogs;
        this.drafter = drafter;
    }

    @Override
    public List<FirmwareReading> read(List<Path> paths) throws DeskException {
        return Firmware.read(paths);
    }

    @Override
    public DraftedBoards draftBoards(Project project, Path folder, boolean force, Progress progress)
            throws DeskException {
        try {
            Catalog catalog = catalogs.read(project.boards()).catalog();
            List<BoardReport> reports = intake.readBoards(project.inventories(), progress).value();
            if (reports.isEmpty()) {
                throw new DeskException(Trouble.INPUT, "The project holds no firmware to draft boards from. Collect"
                        + " tables into its folder \"firmware\"; the command \"kit\" writes the scripts for it.");
            }
            return DraftFiles.write(drafter.draft(reports, catalog), folder, force);
        } catch (IntakeException | CatalogException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    @Override
    public Reconciled reconcile(Project project, Progress progress) throws DeskException {
        try {
            Reading<Reconciliation> reading = intake.reconcile(project.inventories(), project.mapping(), progress);
            return new Reconciled(reading.value(), reading.findings());
        } catch (IntakeException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }

    @Override
    public void writeReconciliation(Reconciliation reconciliation, Path file, boolean force) throws DeskException {
        OutputFile.mayWrite(file, force);
        try {
            intake.writeReconciliation(reconciliation, file);
        } catch (IntakeException problem) {
            throw new DeskException(Trouble.OUTPUT, problem.getMessage(), problem);
        }
    }

    @Override
    public List<Path> writeKit(Path folder, boolean force) throws DeskException {
        return KitFiles.write(folder, force);
    }
}
