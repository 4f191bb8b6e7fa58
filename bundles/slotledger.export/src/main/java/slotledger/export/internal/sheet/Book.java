package slotledger.export.internal.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import slotledger.export.internal.text.Texts;

/** A workbook under way. */
public final class Book implements AutoCloseable {

    private static final int SHEET_NAME_LIMIT = 31;

    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Looks looks;
    private final String title;
    private final Set<String> names = new HashSet<>();
    private final List<Page> pages = new ArrayList<>();

    /**
     * @param title    for the footer of every page
     * @param currency of all money in it
     */
    public Book(String title, Currency currency) {
        this.title = Texts.line(title);
        this.looks = new Looks(workbook, currency);
        workbook.getProperties().getCoreProperties().setTitle(Texts.xml(this.title));
        workbook.getProperties().getCoreProperties().setCreator("Slotledger");
    }

    /** A workbook without money. */
    public Book(String title) {
        this(title, Currency.getInstance("XXX"));
    }

    /**
     * Adds a sheet under a name a spreadsheet program takes, made unique.
     *
     * @param widths of the columns, in characters
     */
    public Page page(String wanted, int... widths) {
        XSSFSheet sheet = workbook.createSheet(sheetName(wanted));
        Page page = new Page(sheet, looks, widths);
        page.setUp(title);
        pages.add(page);
        return page;
    }

    private String sheetName(String wanted) {
        String base = WorkbookUtil.createSafeSheetName(Texts.line(wanted), ' ').replaceAll(" +", " ").strip();
        if (base.isEmpty()) {
            base = "Sheet";
        }
        String name = base;
        for (int number = 2; !names.add(name.toLowerCase(Locale.ROOT)); number++) {
            String ending = " " + number;
            name = base.substring(0, Math.min(base.length(), SHEET_NAME_LIMIT - ending.length())) + ending;
        }
        return name;
    }

    /** Writes it, after computing every formula and comparing it with the value the writer gave. */
    public void save(OutputStream out) throws IOException {
        FormulaCheck.check(workbook);
        pages.forEach(Page::finish);
        workbook.setForceFormulaRecalculation(false);
        workbook.write(out);
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }
}
