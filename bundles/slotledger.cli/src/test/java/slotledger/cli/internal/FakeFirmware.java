package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slotledger.app.DraftedBoards;
import slotledger.app.FirmwareDesk;
import slotledger.app.Project;
import slotledger.app.Reconciled;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.observed.Comparison;
import slotledger.model.observed.Comparison.Outcome;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.Reconciliation;
import slotledger.model.observed.Subject;
import slotledger.model.observed.Testimony;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;

/** A door to firmware with small fixed answers: one machine on which sources differ, one draft. */
final class FakeFirmware implements FirmwareDesk {

    private final List<String> calls;
    private final int bytes;

    /** @param bytes how many of a table's bytes are there */
    FakeFirmware(List<String> calls, int bytes) {
        this.calls = calls;
        this.bytes = bytes;
    }

    @Override
    public List<FirmwareReading> read(List<Path> paths) {
        calls.add("firmware " + paths);
        return new FirmwareReader().read("table.bin", SmallTable.bytes(bytes));
    }

    @Override
    public DraftedBoards draftBoards(Project project, Path folder, boolean force, Progress progress) {
        calls.add("draft " + folder + " " + force);
        return new DraftedBoards(List.of(new DraftedBoards.Drafted(new BoardId("kestrin-kb-930"), "Kestrin KB-930", 14,
                List.of("the largest total"), folder.resolve("kestrin-kb-930.draft.yaml"))),
                List.of(new Finding(Severity.WARNING, "draft-slots-differ", Place.ofFile("firmware/K-9.bin"),
                        Optional.empty(), "", "One machine tells other slots.", "", "Look at it.")));
    }

    @Override
    public Reconciled reconcile(Project project, Progress progress) {
        Testimony table = new Testimony(Ground.FIRMWARE, "8 GB", Place.ofFile("firmware/K-3.bin"));
        Testimony row = new Testimony(Ground.SPREADSHEET, "4 GB", Place.ofRow("fleet.xlsx", "PCs", 4));
        AssetTag machine = new AssetTag("K-3");
        return new Reconciled(new Reconciliation(new ObservedFleet(List.of(), List.of()), List.of(
                new Comparison(machine, Subject.MODEL, "model", List.of(row, table), Outcome.AGREE),
                new Comparison(machine, Subject.MEMORY, "total memory", List.of(table, row), Outcome.DIFFER)),
                List.of(new AssetTag("K-7")), List.of()), List.of());
    }

    @Override
    public void writeReconciliation(Reconciliation reconciliation, Path file, boolean force) {
        calls.add("compared " + file + " " + force);
    }

    @Override
    public List<Path> writeKit(Path folder, boolean force) {
        calls.add("kit " + folder + " " + force);
        return List.of(folder.resolve("README.txt"));
    }
}
