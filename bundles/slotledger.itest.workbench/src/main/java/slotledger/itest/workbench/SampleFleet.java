package slotledger.itest.workbench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.app.Project;
import slotledger.app.Stored;
import slotledger.app.Survey;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.delivery.TradeState;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Form;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.project.Change;
import slotledger.model.project.Original;
import slotledger.model.project.PlanVersion;
import slotledger.model.project.ProjectState;
import slotledger.model.source.Place;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;
import slotledger.model.work.WorkState;

/** A fleet made up for the tests: desktops PC-1 to PC-30, notebooks NB-1 to NB-9, and one machine of unknown board. */
final class SampleFleet {

    static final AssetTag UNRESOLVED = new AssetTag("OLD-1");
    static final Currency EURO = Currency.getInstance("EUR");

    private static final String FILE = "fleet.xlsx";
    private static final int DESKTOPS = 30;
    private static final int NOTEBOOKS = 9;

    private SampleFleet() {
    }

    static Survey survey(Project project) {
        List<Machine> machines = new ArrayList<>();
        for (int number = 1; number <= DESKTOPS; number++) {
            Population now = Population.empty(SampleBoards.DESKTOP).with("A2", SampleBoards.kind(4, Form.DIMM));
            machines.add(machine("PC-" + number, "North", "Lab " + (number % 3 + 1), SampleBoards.DESKTOP,
                    number % 5 == 0 ? now.with("B2", new SlotContent.Unread("4G?")) : now, machines.size()));
        }
        for (int number = 1; number <= NOTEBOOKS; number++) {
            machines.add(machine("NB-" + number, "South", "Staff room", SampleBoards.NOTEBOOK,
                    Population.empty(SampleBoards.NOTEBOOK), machines.size()));
        }
        return new Survey(project, List.of(), machines.size() + 1, List.of(SampleBoards.DESKTOP, SampleBoards.NOTEBOOK),
                new Fleet(machines, Map.of(SampleBoards.DESKTOP.id(), SampleBoards.DESKTOP,
                        SampleBoards.NOTEBOOK.id(), SampleBoards.NOTEBOOK)),
                List.of(unresolved()), Market.NONE, Shelf.EMPTY, Optional.of(policy()), findings());
    }

    /** A project that keeps its history, with one plan. */
    static Project project(Path folder) {
        String title = folder.getFileName().toString();
        LocalDate day = LocalDate.of(2026, 3, 2);
        PlanVersion kept = new PlanVersion(1, 2,
                new Change.Planned(new Original("plan.json", "0".repeat(64), 1), title, day, 1));
        return new Project(title, List.of(folder.resolve(FILE)), Optional.empty(), List.of(), List.of(), List.of(),
                Optional.empty(), Optional.empty(), day, Optional.of(new Stored(folder,
                        new ProjectState(title, 2, Map.of(), List.of(kept), List.of(), WorkState.NONE,
                                TradeState.NONE))));
    }

    private static Machine machine(String tag, String site, String room, Board board, Population now, int row) {
        return new Machine(new AssetTag(tag), "S" + row, new Whereabouts(site, room), "IT", "teaching", board.id(), 1,
                Optional.empty(), Optional.empty(), Redundancy.NONE, now, Place.ofRow(FILE, "Machines", row + 2));
    }

    private static ObservedMachine unresolved() {
        Place place = Place.ofRow(FILE, "Machines", DESKTOPS + NOTEBOOKS + 2);
        return new ObservedMachine(UNRESOLVED, "", "Tarn", "4200?", new Whereabouts("North", "Store"), "IT", "teaching",
                "", "", OptionalInt.empty(), "", OptionalInt.of(2), Optional.of(Capacity.ofGiB(2)),
                List.of(new ObservedSlot(Optional.of("DIMM1"), SlotContent.of(SampleBoards.kind(2, Form.DIMM)), "", "",
                        place)), place);
    }

    private static Policy policy() {
        return new Policy(EURO, List.of(Target.of("teaching", Capacity.ofGiB(8))), Optional.empty(), Map.of(),
                new Money(1500, EURO), new Money(200, EURO), 0, false, true, false, Policy.LeaveAlone.NONE);
    }

    private static List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding(Severity.NOTE, "hidden-columns", Place.ofFile(FILE), Optional.empty(), "",
                "Two columns are hidden and were read all the same.", "", "Nothing, unless they should not count."));
        for (int number = 5; number <= DESKTOPS; number += 5) {
            findings.add(new Finding(Severity.WARNING, "unreadable-module",
                    Place.ofRow(FILE, "Machines", number + 1).atColumn(6, "RAM 4"),
                    Optional.of(new AssetTag("PC-" + number)), "4G?", "The size of a module can't be read.",
                    "a size such as 8 GB", "Look at the machine and write the size into the cell."));
        }
        findings.add(new Finding(Severity.ERROR, "unknown-board",
                Place.ofRow(FILE, "Machines", DESKTOPS + NOTEBOOKS + 2), Optional.of(UNRESOLVED), "Tarn 4200?",
                "No board of this name is known.", "", "Read the model on the label at the back of the machine."));
        return findings;
    }
}
