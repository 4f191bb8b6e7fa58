package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.app.DraftedBoards;
import slotledger.app.FleetDesk;
import slotledger.app.LookAt;
import slotledger.app.Project;
import slotledger.app.Reconciled;
import slotledger.app.Survey;
import slotledger.model.observed.Comparison;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.task.Progress;

/** The whole job from what machines say of themselves: draft the board, plan, prove. */
class FirmwareRunTest {

    private static final String TABLE = """
            Handle 0x0001, DMI type 1, 27 bytes
            System Information
            \tManufacturer: Kestrin
            \tProduct Name: KB-930
            \tSerial Number: %s

            Handle 0x0003, DMI type 3, 22 bytes
            Chassis Information
            \tType: Desktop

            Handle 0x0010, DMI type 16, 23 bytes
            Physical Memory Array
            \tUse: System Memory
            \tError Correction Type: None
            \tMaximum Capacity: 32 GB
            \tNumber Of Devices: 2

            """;
    private static final String MODULE = """
            Handle 0x00%d, DMI type 17, 40 bytes
            Memory Device
            \tArray Handle: 0x0010
            \tTotal Width: 64 bits
            \tData Width: 64 bits
            \tSize: %s
            \tForm Factor: DIMM
            \tLocator: DIMM%d
            \tType: DDR4
            \tType Detail: Synchronous Unbuffered (Unregistered)
            \tSpeed: 2666 MT/s
            \tRank: 1
            \tConfigured Voltage: 1.2 V

            """;
    private static final String EMPTY = """
            Handle 0x00%d, DMI type 17, 40 bytes
            Memory Device
            \tArray Handle: 0x0010
            \tSize: No Module Installed
            \tLocator: DIMM%d

            """;

    @TempDir
    Path top;

    private final FleetDesk desk = Demo.desk();
    private Path school;

    @BeforeEach
    void makeAProject() throws Exception {
        school = Files.createDirectory(top.resolve("school"));
        machines(school.resolve("firmware"), "8 GB", "");
        Files.writeString(school.resolve("fleet.csv"), """
                Asset tag;Serial;Model;Role;Room;RAM
                K-1;S1;Kestrin KB-930;lab;12;8 GB
                K-2;S2;Kestrin KB-930;lab;12;8 GB
                K-3;S3;Kestrin KB-930;lab;12;4 GB
                """);
        Files.writeString(school.resolve("policy.yaml"), """
                currency: EUR
                targets:
                  - role: lab
                    memory: 16 GB
                """);
        Files.writeString(school.resolve("offers.csv"), """
                Supplier;Part;Module;Price;Currency
                Tallow;T-8;8GB DDR4-2666 DIMM 1Rx8 8 Gbit non-ECC unbuffered 1.2 V CL19;20;EUR
                """);
    }

    private static void machines(Path folder, String first, String second) throws Exception {
        Files.createDirectories(folder);
        for (int i = 1; i <= 3; i++) {
            Files.writeString(folder.resolve("K-" + i + ".txt"), TABLE.formatted("S" + i)
                    + MODULE.formatted(11, first, 1)
                    + (second.isEmpty() ? EMPTY.formatted(12, 2) : MODULE.formatted(12, second, 2)));
        }
    }

    private Project open() throws Exception {
        return desk.open(school).at("school", LocalDate.of(2026, 11, 20));
    }

    @Test
    void machinesAreDraftedPlannedAndProvenFromTheirFirmware() throws Exception {
        Survey before = desk.survey(open(), Progress.NONE);
        assertEquals(3, before.unresolved().size(), "no board is known");
        DraftedBoards drafted = desk.firmware().draftBoards(open(), school.resolve("boards/drafts"), false,
                Progress.NONE);
        assertEquals(List.of(), drafted.findings());
        assertEquals(3, drafted.boards().get(0).machines());
        Survey survey = desk.survey(open(), Progress.NONE);
        assertEquals(List.of(), survey.unresolved(), survey.findings().toString());
        Plan plan = desk.plan(survey, Progress.NONE);
        assertEquals(3, plan.count(Outcome.REACHES_TARGET), plan.machines().toString());
        desk.export(survey, plan, top.resolve("plan"), false, Progress.NONE);
        machines(top.resolve("firmware-after"), "8 GB", "8 GB");
        Proof proof = desk.prove(top.resolve("plan/plan.json"), List.of(top.resolve("firmware-after")), open(),
                Progress.NONE);
        assertEquals(List.of(ProofOutcome.DONE, ProofOutcome.DONE, ProofOutcome.DONE),
                proof.machines().stream().map(each -> each.outcome()).toList());
    }

    @Test
    void differencesBetweenListAndFirmwareAreShownWithBothPlaces() throws Exception {
        Reconciled reconciled = desk.firmware().reconcile(open(), Progress.NONE);
        List<Comparison> differ = reconciled.reconciliation().of(Comparison.Outcome.DIFFER);
        assertEquals(1, differ.size(), differ.toString());
        assertEquals("K-3", differ.get(0).machine().value());
        assertEquals(List.of("firmware/K-3.txt", "fleet.csv, line 4"),
                differ.get(0).said().stream().map(said -> said.place().toString()).toList());
        Path csv = top.resolve("compared.csv");
        desk.firmware().writeReconciliation(reconciled.reconciliation(), csv, false);
        assertTrue(Files.readString(csv).contains("K-3,total memory,differ,firmware table,8 GB,firmware/K-3.txt,"
                + "spreadsheet,4 GB,"), Files.readString(csv));
    }

    @Test
    void aDraftThatAPersonCheckedIsNeverReplaced() throws Exception {
        Path drafts = school.resolve("boards/drafts");
        Path file = desk.firmware().draftBoards(open(), drafts, false, Progress.NONE).boards().get(0).file();
        Files.writeString(file, Files.readString(file).replaceAll("(?m)^source:.*$",
                "source: {document: Board manual KB-930, page: 12}"));
        String message = assertThrows(DeskException.class,
                () -> desk.firmware().draftBoards(open(), drafts, true, Progress.NONE)).getMessage();
        assertTrue(message.contains("checked"), message);
        assertEquals(Optional.empty(), desk.survey(open(), Progress.NONE).unresolved().stream().findFirst());
    }

    @Test
    void whatToLookAtFirstGathersMachinesThatAreAlike() throws Exception {
        desk.firmware().draftBoards(open(), school.resolve("boards/drafts"), false, Progress.NONE);
        Survey survey = desk.survey(open(), Progress.NONE);
        List<LookAt> list = desk.lookFirst(survey, desk.plan(survey, Progress.NONE));
        assertTrue(list.stream().allMatch(each -> each.machines().size() == 3), list.toString());
        assertTrue(list.stream().anyMatch(each -> each.stake().amount().intValue() == 60), list.toString());
    }
}
