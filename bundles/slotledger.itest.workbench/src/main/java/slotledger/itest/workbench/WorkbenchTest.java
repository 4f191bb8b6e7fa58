package slotledger.itest.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.layer.CompositeLayer;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobState;

/** One window, used as a person would: the tests follow on one another. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class WorkbenchTest {

    private static final int MACHINES = 40;

    @TempDir
    static Path projects;

    private static PrivateScreen screen;
    private static Workbench workbench;

    @BeforeAll
    static void openTheSampleProject() throws Exception {
        Assumptions.assumeTrue(SWT.getPlatform().equals("gtk"), "Windows are tested on Linux only.");
        try {
            screen = PrivateScreen.open();
        } catch (IOException e) {
            Assumptions.assumeTrue(System.getenv("DISPLAY") != null,
                    "There is no display and Xvfb can't be started, so no window is tested: " + e.getMessage());
        }
        workbench = Workbench.start(Files.createDirectory(projects.resolve("Spring order")));
        // Whatever an earlier run left open.
        workbench.perspective("slotledger.workbench.perspective");
        workbench.await("the fleet", () -> lines() > 0);
    }

    @AfterAll
    static void closeTheScreen() {
        // A window that is still open takes the process with its screen, and with it what went wrong.
        if (screen != null && !PlatformUI.isWorkbenchRunning()) {
            screen.close();
        }
    }

    @Test
    @Order(1)
    void theProjectOfTheCommandLineFillsTheGrid() {
        assertEquals(MACHINES, lines());
        assertTrue(text("fleet.summary").startsWith("40 machines · 1 can’t be judged"), text("fleet.summary"));
        assertEquals("Slotledger – Spring order", workbench.on(() ->
                PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell().getText()));
    }

    @Test
    @Order(2)
    void theGridIsReallyPainted() {
        assertTrue(colours("fleet.grid") > 10, "The grid has hardly any colours: " + colours("fleet.grid"));
    }

    @Test
    @Order(3)
    void theFilterLeavesTheMachinesThatMatchAllWords() {
        filter("nb- south");
        assertEquals(9, lines());
        filter("");
        assertEquals(MACHINES, lines());
    }

    @Test
    @Order(4)
    void aClickOnAHeadingSortsAndAnotherOneTurnsTheOrder() {
        click("fleet.grid", 40, 8);
        assertEquals("NB-1", firstTag());
        click("fleet.grid", 40, 8);
        assertEquals("PC-30", firstTag());
    }

    @Test
    @Order(5)
    void aLineOfTheGridLeadsToItsSlots() {
        filter("pc-1 420");
        click("fleet.grid", 40, 30);
        String heading = text("slots.heading");
        assertTrue(heading.startsWith(firstTag() + " · North / Lab "), heading);
        assertTrue(heading.endsWith(" · Tarn 420 Tower"), heading);
        filter("");
    }

    @Test
    @Order(6)
    void theWorstFindingComesFirstAndLeadsToItsMachine() {
        String severity = workbench.on(() -> {
            Table table = workbench.widget(Table.class, "findings.table");
            table.setSelection(0);
            table.notifyListeners(SWT.Selection, event(table));
            return table.getItem(0).getText(0);
        });
        assertEquals("error", severity);
        assertTrue(text("slots.heading").startsWith("OLD-1"), text("slots.heading"));
        assertTrue(selectedInGrid("OLD-1"));
    }

    @Test
    @Order(7)
    void aPlanChangesTheGridAndThePictureOfTheSlots() throws Exception {
        select("PC-1");
        long before = ink("slots.canvas");
        workbench.command("slotledger.workbench.plan");
        workbench.await("the plan", () -> text("fleet.summary").contains("reach it by the plan"));
        assertTrue(ink("slots.canvas") > before * 3 / 2, "The picture of the slots after the work is missing.");
        assertTrue(accessibleName().contains("+ new: from the order"), accessibleName());
        assertTrue(accessibleName().contains("→ moved: to B2"), accessibleName());
    }

    @Test
    @Order(8)
    void theReasonsNameTheirSource() {
        String source = workbench.on(() ->
                workbench.widget(Tree.class, "why.tree").getItem(1).getItem(0).getText(1));
        assertEquals("a person's word", source);
    }

    @Test
    @Order(9)
    void theFilterOfTheFindingsLeavesThoseThatMatch() {
        int all = workbench.on(() -> workbench.widget(Table.class, "findings.table").getItemCount());
        workbench.on(() -> {
            workbench.widget(Text.class, "findings.filter").setText("old-1");
            return null;
        });
        int left = workbench.on(() -> workbench.widget(Table.class, "findings.table").getItemCount());
        assertTrue(left > 0 && left < all, left + " of " + all);
        assertTrue(text("findings.summary").startsWith(left + " shown · "), text("findings.summary"));
    }

    @Test
    @Order(10)
    void aBudgetIsChosenOnTheCurveByKeys() throws Exception {
        workbench.on(() -> PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage()
                .showView("slotledger.workbench.curve"));
        workbench.command("slotledger.workbench.workOutCurve");
        workbench.await("the curve", () -> text("curve.summary").startsWith("4 budgets"));
        assertTrue(colours("curve.canvas") > 2, "The curve is not painted.");
        workbench.on(() -> {
            Canvas canvas = workbench.widget(Canvas.class, "curve.canvas");
            for (int press = 0; press < 2; press++) {
                Event key = event(canvas);
                key.keyCode = SWT.ARROW_RIGHT;
                canvas.notifyListeners(SWT.KeyDown, key);
            }
            return null;
        });
        String words = workbench.on(() ->
                (String) workbench.widget(Canvas.class, "curve.canvas").getData("slotledger.words"));
        assertTrue(words.startsWith("EUR 500.00 bring 19 machines"), words);
    }

    @Test
    @Order(11)
    void thePlaceForOrderingShowsOrderAndPlan() throws Exception {
        workbench.perspective("slotledger.workbench.ordering");
        workbench.await("the order", () -> workbench.on(() ->
                PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage()
                        .findView("slotledger.workbench.order") != null));
        assertEquals("The plan buys nothing.", text("order.summary"));
        assertTrue(text("plan.summary").startsWith("Plan of "), text("plan.summary"));
        assertEquals("Money", workbench.on(() -> workbench.widget(Tree.class, "plan.tree").getItem(0).getText(0)));
    }

    @Test
    @Order(12)
    void aTagThatIsTypedLeadsToItsJobWhichIsTickedAndEnded() throws Exception {
        workbench.perspective("slotledger.workbench.handsOn");
        workbench.await("the rounds", () -> text("work.summary").startsWith("3 machines to open, 0 of them through"));
        type("work.tag", "pc-1");
        assertEquals("PC-1 · 4 GB to 8 GB", text("job.heading"));
        press("job.step.1", true);
        workbench.on(() -> {
            workbench.widget(Text.class, "job.serial.A2").setText("00AB12");
            workbench.widget(Text.class, "job.serial.A2").notifyListeners(SWT.FocusOut, new Event());
            return null;
        });
        assertFalse(workbench.on(() -> workbench.widget(Button.class, "job.becomes.failed").isEnabled()));
        workbench.on(() -> {
            workbench.widget(Text.class, "job.words").setText("the fan is loose");
            return null;
        });
        press("job.note", false);
        workbench.await("the deviation", () -> text("job.state").contains("Other than planned: the fan is loose"));
        press("job.becomes.done", false);
        workbench.await("the next machine", () -> text("work.summary").startsWith("3 machines to open, 1 of them"));
        assertEquals("PC-2 · 4 GB to 8 GB", text("job.heading"));
        FakeWork work = service(FakeWork.class);
        Job job = work.job(projects, new AssetTag("PC-1"));
        assertEquals(JobState.DONE, job.state());
        assertEquals(Set.of(1), job.ticked());
        assertEquals(Map.of("A2", "00AB12"), job.serials());
    }

    @Test
    @Order(13)
    void aTagThatSeveralMachinesHaveNamesThem() {
        type("work.tag", "c-1");
        assertTrue(text("work.summary").startsWith("“c-1” may mean PC-1, PC-12."), text("work.summary"));
        type("work.tag", "zz");
        assertTrue(text("work.summary").startsWith("The plan opens no machine with “zz”"), text("work.summary"));
    }

    @Test
    @Order(14)
    void theWindowClosesWithoutAComplaint() throws Exception {
        assertEquals(0, workbench.close());
        assertFalse(PlatformUI.isWorkbenchRunning());
    }

    private static void type(String field, String words) {
        workbench.on(() -> {
            Text text = workbench.widget(Text.class, field);
            text.setText(words);
            text.notifyListeners(SWT.DefaultSelection, new Event());
            return null;
        });
    }

    private static void press(String button, boolean selected) {
        workbench.on(() -> {
            Button pressed = workbench.widget(Button.class, button);
            pressed.setSelection(selected);
            pressed.notifyListeners(SWT.Selection, new Event());
            return null;
        });
    }

    private static <T> T service(Class<T> type) {
        BundleContext context = FrameworkUtil.getBundle(WorkbenchTest.class).getBundleContext();
        return context.getService(context.getServiceReference(type));
    }

    /** All lines of the grid, whether or not they are scrolled into sight. */
    private static int lines() {
        return workbench.on(() -> {
            CompositeLayer all = (CompositeLayer) workbench.widget(NatTable.class, "fleet.grid").getLayer();
            return ((ViewportLayer) all.getChildLayerByRegionName(GridRegion.BODY)).getScrollableLayer().getRowCount();
        });
    }

    private static String firstTag() {
        return workbench.on(() ->
                (String) workbench.widget(NatTable.class, "fleet.grid").getDataValueByPosition(0, 1));
    }

    private static boolean selectedInGrid(String tag) {
        return workbench.on(() -> {
            NatTable grid = workbench.widget(NatTable.class, "fleet.grid");
            for (int row = 1; row < grid.getRowCount(); row++) {
                if (tag.equals(grid.getDataValueByPosition(0, row))) {
                    return "SELECT".equals(grid.getDisplayModeByPosition(0, row).toString());
                }
            }
            return false;
        });
    }

    private static void select(String tag) {
        filter(tag);
        int y = workbench.on(() -> {
            NatTable grid = workbench.widget(NatTable.class, "fleet.grid");
            int row = 1;
            while (!tag.equals(grid.getDataValueByPosition(0, row))) {
                row++;
            }
            return grid.getStartYOfRowPosition(row) + 3;
        });
        click("fleet.grid", 40, y);
        assertTrue(text("slots.heading").startsWith(tag + " "), text("slots.heading"));
        filter("");
    }

    private static String text(String label) {
        return workbench.on(() -> workbench.widget(Label.class, label).getText());
    }

    private static void filter(String text) {
        workbench.on(() -> {
            workbench.widget(Text.class, "fleet.filter").setText(text);
            return null;
        });
    }

    private static void click(String widget, int x, int y) {
        workbench.on(() -> {
            Control control = workbench.widget(Control.class, widget);
            for (int type : new int[] {SWT.MouseMove, SWT.MouseDown, SWT.MouseUp}) {
                Event event = event(control);
                event.x = x;
                event.y = y;
                event.button = type == SWT.MouseMove ? 0 : 1;
                event.count = 1;
                control.notifyListeners(type, event);
            }
            return null;
        });
        settle();
    }

    /** The grid tells a click from a double click by waiting. */
    private static void settle() {
        try {
            Thread.sleep(400);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        workbench.on(() -> null);
    }

    private static Event event(Control control) {
        Event event = new Event();
        event.widget = control;
        event.display = control.getDisplay();
        return event;
    }

    private static String accessibleName() {
        return workbench.on(() -> {
            Canvas canvas = workbench.widget(Canvas.class, "slots.canvas");
            return (String) canvas.getData("slotledger.words");
        });
    }

    private static int colours(String widget) {
        return pixels(widget).colours();
    }

    private static long ink(String widget) {
        return pixels(widget).ink();
    }

    private static Pixels pixels(String widget) {
        settle();
        return workbench.on(() -> Pixels.of(workbench.widget(Control.class, widget)));
    }
}
