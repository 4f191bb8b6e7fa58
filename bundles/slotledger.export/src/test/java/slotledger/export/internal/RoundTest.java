package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.PlanBook;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.round.Bag;
import slotledger.export.internal.round.BenchWords;
import slotledger.export.internal.round.Partners;
import slotledger.export.internal.round.Round;
import slotledger.export.internal.round.Stop;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.task.Progress;

class RoundTest {

    @TempDir
    private Path folder;

    @Test
    void theOrderOfWorkIsCutIntoVisits() {
        List<String> walk = new ArrayList<>();
        for (Stop stop : Round.of(SchoolPlan.book().plan())) {
            walk.add(stop.where() + (stop.again() ? " again: " : ": ") + stop.machines().size());
        }
        assertEquals(List.of("Main / Lab 1: 3", "Main / Office 2: 1", "Main / Rack: 1", "Annexe / Cart: 2",
                "Annexe / Lab 9: 1"), walk);
    }

    @Test
    void theRoundSaysHowMuchLiesReadyAndWhatIsCarriedToAnotherSite() {
        List<String> lines = BenchWords.of(SchoolPlan.book().plan());
        assertEquals(List.of("At most 2 pulled modules and fillers lie ready at once for machines further on, in 1 bag"
                        + " or tray; most after machine OFF-7.",
                "2 pulled modules and fillers are carried from one site to another in all; the lists name the site."),
                lines);
        MachinePlan receiver = SchoolPlan.book().plan().find(new AssetTag("LAB-03")).orElseThrow();
        assertEquals("from OFF-7 (site Main)", new Partners(SchoolPlan.book().plan()).of(receiver));
    }

    @Test
    void everyOpenedMachineIsOnTheRoundOnce() {
        PlanBook book = SchoolPlan.book();
        List<String> tags = Round.of(book.plan()).stream()
                .flatMap(stop -> stop.machines().stream()).map(plan -> plan.machine().tag().value()).sorted().toList();
        assertEquals(book.plan().work().stream().map(plan -> plan.machine().tag().value()).sorted().toList(), tags);
    }

    @Test
    void bagsHoldWhatArrivesAndTheFetchListSumsThem() {
        PlanBook book = SchoolPlan.book();
        List<Bag> bags = Bag.of(book, Round.of(book.plan()));
        int all = bags.stream().flatMap(bag -> bag.items().stream()).mapToInt(Bag.Item::count).sum();
        int fetched = Bag.toFetch(bags).stream().mapToInt(Bag.Item::count).sum();
        assertEquals(6 + 2 + 8 + 2, all, "desktops, notebooks, server, receiver");
        assertEquals(6 + 2 + 8, fetched, "all but those another machine gives");
    }

    @Test
    void theDocumentSaysWhatIsLeftAndWhoIsNotHelpedAndWhy() throws Exception {
        List<Path> files = new RoundExporter().write(SchoolPlan.book(), folder, Progress.NONE);
        try (PDDocument document = Loader.loadPDF(files.get(0).toFile())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            for (String part : List.of("Pick list", "Leftovers", "disposal", "+44 OLD", "Only another machine.",
                    "EUR 19.99 more would do.", "MYST-9", "Look at the label inside the machine.")) {
                assertTrue(text.contains(part), part);
            }
        }
    }

    @Test
    void theWorkbookHasTheSameLists() throws Exception {
        List<Path> files = new RoundExporter().write(SchoolPlan.book(), folder, Progress.NONE);
        try (InputStream in = Files.newInputStream(files.get(1)); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            List<String> names = new ArrayList<>();
            workbook.forEach(sheet -> names.add(sheet.getSheetName()));
            assertEquals(List.of("Round", "To fetch", "Bags", "Leftovers", "Not helped", "Not planned"), names);
            assertEquals("OFF-7", workbook.getSheet("Round").getRow(9).getCell(3).getStringCellValue());
        }
    }

    @Test
    void aPlanWithoutWorkStillGivesBothFiles() throws Exception {
        for (Path file : new RoundExporter().write(SchoolPlan.emptyBook(), folder, Progress.NONE)) {
            assertTrue(Files.size(file) > 0, file.toString());
        }
    }
}
