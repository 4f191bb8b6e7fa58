package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.ExportException;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.model.task.CancelledException;
import slotledger.model.task.Progress;

class JobPagesTest {

    private static final Pattern FROM_OUTSIDE = Pattern.compile(
            "(src=|href=\"(?!index.html\"|[A-Za-z0-9_-]+\\.html\")|@import|url\\()");

    @TempDir
    private Path folder;

    private List<Path> written() throws Exception {
        Path index = new JobPageExporter().write(SchoolPlan.book(), folder, Progress.NONE).get(0);
        assertEquals(folder.resolve("job-sheets").resolve("index.html"), index);
        try (Stream<Path> pages = Files.list(index.getParent())) {
            return pages.sorted().toList();
        }
    }

    private String page(String name) throws Exception {
        written();
        return Files.readString(folder.resolve("job-sheets").resolve(name));
    }

    @Test
    void thereIsAPageForEveryOpenedMachineAndAnIndex() throws Exception {
        assertEquals(SchoolPlan.book().plan().work().size() + 1, written().size());
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of("job-sheets"), left.map(path -> path.getFileName().toString()).toList());
        }
    }

    @Test
    void everyLinkOfTheIndexLeadsToAPage() throws Exception {
        Matcher links = Pattern.compile("href=\"([^\"]+)\"").matcher(page("index.html"));
        int found = 0;
        while (links.find()) {
            assertTrue(Files.exists(folder.resolve("job-sheets").resolve(links.group(1))), links.group(1));
            found++;
        }
        assertEquals(SchoolPlan.book().plan().work().size(), found);
    }

    @Test
    void noPageNeedsAnythingFromOutside() throws Exception {
        for (Path page : written()) {
            Matcher outside = FROM_OUTSIDE.matcher(Files.readString(page));
            assertFalse(outside.find(), () -> page + ": " + outside.group());
        }
    }

    @Test
    void hostileTagsStayText() throws Exception {
        for (Path page : written()) {
            String text = Files.readString(page);
            assertFalse(text.contains("<script>&"), page.toString());
            assertEquals(1, text.split("<script>", -1).length - 1, page.toString());
        }
    }

    @Test
    void everyStepHasABoxToTickAndEveryNewModuleRoomForItsSerialNumber() throws Exception {
        String page = page("LAB-01.html");
        assertEquals(6 + 3, page.split("type=\"checkbox\"", -1).length - 1);
        assertTrue(page.contains("Serial number of the module in slot DIMM1 (8 GB DDR4-2666)"));
        assertTrue(page.contains("width=device-width"));
    }

    @Test
    void aFolderThatIsThereIsNotTouched() throws Exception {
        Path mine = Files.writeString(Files.createDirectory(folder.resolve("job-sheets")).resolve("mine.txt"), "mine");
        assertThrows(ExportException.class, this::written);
        assertTrue(Files.exists(mine));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(1, left.count());
        }
    }

    @Test
    void aStopLeavesNothingBehind() throws Exception {
        Progress stopped = new Progress() {
            @Override
            public void step(String what, double done) {
                // not watched
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancelledException.class,
                () -> new JobPageExporter().write(SchoolPlan.book(), folder, stopped));
        assertThrows(CancelledException.class,
                () -> new OrderWorkbookExporter().write(SchoolPlan.book(), folder, stopped));
        assertThrows(CancelledException.class,
                () -> new JobSheetExporter().write(SchoolPlan.book(), folder, stopped));
        assertThrows(CancelledException.class, () -> new RoundExporter().write(SchoolPlan.book(), folder, stopped));
        assertThrows(CancelledException.class, () -> new PlanFileExporter().write(SchoolPlan.book(), folder, stopped));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(), left.toList());
        }
    }
}
