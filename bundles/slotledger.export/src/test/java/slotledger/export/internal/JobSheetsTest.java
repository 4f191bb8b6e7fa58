package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.PlanBook;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.JobSheets;
import slotledger.export.internal.job.Line;
import slotledger.export.internal.job.SlotState;
import slotledger.model.board.BoardForm;
import slotledger.model.task.Progress;

class JobSheetsTest {

    @TempDir
    private Path folder;

    private static JobSheet sheet(String tag) {
        return new JobSheets(SchoolPlan.book()).all().stream()
                .filter(sheet -> sheet.machine().tag().value().equals(tag))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> steps(String tag) {
        return sheet(tag).steps().stream().map(Line::toString).toList();
    }

    private PDDocument printed(PlanBook book) throws Exception {
        return Loader.loadPDF(new JobSheetExporter().write(book, folder, Progress.NONE).get(0).toFile());
    }

    @Test
    void stepsTakeEverythingOutBeforeAnythingGoesIn() {
        assertEquals(List.of(
                "Take the 4 GB DDR4-2400 out of slot DIMM1. Put it into a bag for the shelf; "
                        + "write this machine's tag on the bag.",
                "Take the 4 GB DDR4-2400 out of slot DIMM2. Keep it at hand: it goes to slot DIMM4 of this machine.",
                "Put one 8 GB DDR4-2666 into slot DIMM1. It is new: order from Byte & Board: [Sons]/'Co', "
                        + "part DD4-8-26.",
                "Put one 8 GB DDR4-2666 into slot DIMM3. It is new: order from Byte & Board: [Sons]/'Co', "
                        + "part DD4-8-26.",
                "Put one 4 GB DDR4-2400 into slot DIMM4. It is the one you took out of slot DIMM2 in step 2.",
                "Check that all latches are closed, put back what you took off, close the machine."),
                steps("LAB-01"));
    }

    @Test
    void donorAndReceiverNameEachOther() {
        assertEquals("Take the 4 GB DDR4-2400 out of slot DIMM2. Put it into the bag for machine LAB-03 (slot DIMM1).",
                steps("OFF-7").get(0));
        assertEquals("Put one 4 GB DDR4-2400 into slot DIMM1. It comes from machine OFF-7, slot DIMM2, "
                + "in this machine's bag.",
                steps("LAB-03").get(0));
        assertEquals("Do these first, modules come from them: OFF-7 (site Main).",
                sheet("LAB-03").heed().get(0).toString());
    }

    @Test
    void aPictureMarksWhatHappensToEachSlot() {
        assertEquals("DIMM1 take out, DIMM2 moves, DIMM3 empty, DIMM4 empty", marks(sheet("LAB-01").before()));
        assertEquals("DIMM1 put in, DIMM2 empty, DIMM3 put in, DIMM4 moved in", marks(sheet("LAB-01").after()));
        assertEquals("DIMM1 stays, DIMM2 take out, DIMM3 stays, DIMM4 take out", marks(sheet("OFF-7").before()));
        assertEquals("On board soldered, SODIMM put in", marks(sheet("NB-2").after()));
    }

    private static String marks(List<SlotState> states) {
        return String.join(", ", states.stream()
                .map(state -> state.slot().label() + " " + state.mark().word()).toList());
    }

    @Test
    void aNotebookIsPartedFromItsBattery() {
        assertTrue(sheet("NB-2").cautions().stream().anyMatch(line -> line.contains("battery")));
        assertTrue(sheet("LAB-01").cautions().stream().noneMatch(line -> line.contains("battery")));
        assertTrue(sheet("SRV-1").cautions().stream().anyMatch(line -> line.contains("blanks")));
    }

    @Test
    void sheetsAreSortedBySiteAndRoom() {
        List<String> places = new JobSheets(SchoolPlan.book()).all().stream().map(JobSheet::place).toList();
        assertEquals(List.of("Annexe / Cart", "Annexe / Cart", "Annexe / Lab 9", "Main / Lab 1", "Main / Lab 1",
                "Main / Lab 1", "Main / Office 2", "Main / Rack"), places);
    }

    @Test
    void aDesktopTakesOnePageAndAServerTwo() throws Exception {
        int pages = new JobSheets(SchoolPlan.book()).all().stream()
                .mapToInt(sheet -> sheet.board().form() == BoardForm.SERVER ? 2 : 1).sum();
        try (PDDocument document = printed(SchoolPlan.book())) {
            assertEquals(pages, document.getNumberOfPages());
        }
    }

    @Test
    void theCodeOnEverySheetScansAsItsTag() throws Exception {
        List<String> tags = new JobSheets(SchoolPlan.book()).all().stream()
                .map(sheet -> sheet.machine().tag().value()).toList();
        try (PDDocument document = printed(SchoolPlan.book())) {
            List<String> scanned = new ArrayList<>();
            for (int page = 0; page < tags.size(); page++) {
                scanned.add(scan(new PDFRenderer(document).renderImageWithDPI(page, 300)));
            }
            assertEquals(tags, scanned);
        }
    }

    /** Looks at the upper right of a sheet, where its code is. */
    private static String scan(BufferedImage page) throws Exception {
        BufferedImage part = page.getSubimage(page.getWidth() / 2, 0, page.getWidth() / 2, page.getHeight() / 6);
        int[] pixels = part.getRGB(0, 0, part.getWidth(), part.getHeight(), null, 0, part.getWidth());
        BinaryBitmap bitmap = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(part.getWidth(), part.getHeight(), pixels)));
        return new MultiFormatReader().decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true)).getText();
    }

    @Test
    void textOfAllAlphabetsOfEuropeIsPrinted() throws Exception {
        try (PDDocument document = printed(SchoolPlan.book())) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("NB-\u0416-1"), "Cyrillic");
            assertTrue(text.contains("\u0394\u03BF\u03BA\u03B9\u03BC\u03AE"), "Greek");
            assertFalse(text.contains("\u202E"), "marks that turn the writing direction");
        }
    }

    @Test
    void bookmarksLeadToSiteRoomAndMachine() throws Exception {
        try (PDDocument document = printed(SchoolPlan.book())) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem site : document.getDocumentCatalog().getDocumentOutline().children()) {
                for (PDOutlineItem room : site.children()) {
                    room.children().forEach(machine ->
                            titles.add(site.getTitle() + " > " + room.getTitle() + " > " + machine.getTitle()));
                }
            }
            assertEquals("Annexe > Cart > NB-\u0416-1", titles.get(0));
            assertEquals("Main > Rack > SRV-1", titles.get(7));
        }
    }

    @Test
    void aPlanWithoutWorkStillGivesAReadableDocument() throws Exception {
        try (PDDocument document = printed(SchoolPlan.emptyBook())) {
            assertTrue(new PDFTextStripper().getText(document).contains("No machine needs to be opened"));
        }
    }
}
