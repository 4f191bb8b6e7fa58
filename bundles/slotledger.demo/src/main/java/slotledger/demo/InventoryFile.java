package slotledger.demo;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * fleet.xlsx: every site keeps its own sheet in its own way, and each has the dirt such sheets have. The marks "dirt:"
 * say what is wrong on purpose.
 */
final class InventoryFile {

    private static final long SEED = 11;

    private final Random random = new Random(SEED);
    private final List<DemoMachine> machines;

    InventoryFile(List<DemoMachine> machines) {
        this.machines = machines;
    }

    void write(Path file) throws IOException {
        try (Workbook book = new XSSFWorkbook()) {
            upperSchool(book);
            harbourCampus(book);
            millLane(book);
            machineRooms(book);
            try (OutputStream out = Files.newOutputStream(file)) {
                book.write(out);
            }
        }
    }

    /** Merged two-row headings, a column a slot, a title above, sums and remarks below. */
    private void upperSchool(Workbook book) {
        SheetPen pen = new SheetPen(book, "Upper School");
        pen.row("Ellerby Vale Schools - computers of the Upper School");
        pen.merge(0, 14);
        pen.row("kept by Nerys Caddow, last walk-through September 2026");
        pen.blank();
        pen.headings("Machine", "", "", "", "Place and use", "", "", "", "", "Memory (GB in each slot)", "", "", "", "",
                "");
        pen.merge(0, 3);
        pen.merge(4, 8);
        pen.merge(9, 14);
        pen.headings("Asset tag", "Serial no.", "Make", "Model", "Campus", "Room", "Use", "Cost centre", "OS", "Slot 1",
                "Slot 2", "Slot 3", "Slot 4", "Type", "Total RAM (GB)");
        List<DemoMachine> rows = at("Upper School", false);
        for (int i = 0; i < rows.size(); i++) {
            Row row = upperSchoolRow(pen, rows.get(i), i);
            upperSchoolDirt(book, pen, row, rows.get(i), i);
        }
        pen.blank();
        pen.row("Total machines", rows.size());
        pen.row("Room U-104: ask Mr Tolland before touching anything during the exhibition.");
        pen.sheet().setColumnHidden(1, true);
        pen.sheet().createFreezePane(0, 5);
        pen.widths(12, 16, 12, 18, 14, 18, 18, 20, 30, 10, 10, 10, 10, 22, 14);
    }

    private Row upperSchoolRow(SheetPen pen, DemoMachine machine, int index) {
        List<Object> cells = new ArrayList<>(List.of(machine.tag(), machine.serial(), machine.board().maker(),
                machine.model(), machine.site(), machine.room(), machine.use(), machine.costCentre(),
                machine.system()));
        boolean soldered = machine.board().sockets() == 0;
        for (int slot = 0; slot < 4; slot++) {
            cells.add(slot < machine.board().sockets() ? slotText(machine.modules().get(slot), index) : "n/a");
        }
        if (soldered) {
            cells.set(9, "onboard 8 GB");
        }
        cells.add(machine.board().type());
        cells.add(machine.total());
        return pen.row(cells.toArray());
    }

    private Object slotText(double gigabytes, int index) {
        if (gigabytes == 0) {
            return List.of("empty", "-", "empty", "n/a").get(random.nextInt(4));
        }
        return switch (index % 5) {
            case 0 -> DemoMachine.gigabytes(gigabytes) + "GB";
            case 1 -> DemoMachine.gigabytes(gigabytes) + " GB";
            case 2 -> (long) (gigabytes * 1024) + " MB";
            default -> gigabytes;
        };
    }

    private void upperSchoolDirt(Workbook book, SheetPen pen, Row row, DemoMachine machine, int index) {
        switch (index) {
            case 5 -> SheetPen.set(row, 0, "U-1004"); // dirt: an asset tag that stands two rows above
            case 17 -> SheetPen.set(row, 14, machine.total() + 4); // dirt: a total that does not add up
            case 23 -> SheetPen.set(row, 3, "KB-510S"); // dirt: no such board
            case 31 -> SheetPen.set(row, 9, "80 GB"); // dirt: an impossible size
            case 40 -> { // dirt: a spreadsheet made a date of "4-4"
                CellStyle date = book.createCellStyle();
                date.setDataFormat((short) 14);
                row.createCell(9).setCellValue(LocalDate.of(2026, 4, 4));
                row.getCell(9).setCellStyle(date);
            }
            case 52 -> row.createCell(14).setCellFormula("1/0"); // dirt: a formula with an error
            case 66 -> SheetPen.set(row, 0, "=U-1067"); // dirt: a tag that looks like a formula
            case 74 -> SheetPen.set(row, 0, "U/1075"); // dirt: a tag with a path separator
            case 90 -> SheetPen.set(row, 14, DemoMachine.gigabytes(machine.total())); // dirt: a number stored as text
            case 101 -> SheetPen.set(row, 3, "Desk 42O"); // dirt: the letter O for a zero
            case 118 -> SheetPen.set(row, 9, "??"); // dirt: nobody could read it
            case 133 -> pen.row("", "", "", "", "", "U-201 Languages (continued)"); // dirt: a heading between the rows
            case 165 -> SheetPen.set(row, 0, ""); // dirt: no tag
            default -> { }
        }
    }

    /** One text for all slots, maker and model in one column, a title. */
    private void harbourCampus(Workbook book) {
        SheetPen pen = new SheetPen(book, "Harbour Campus");
        pen.row("HARBOUR CAMPUS IT LIST v7 FINAL");
        pen.headings("No", "Inventory no", "Computer", "Campus", "Room", "Purpose", "Budget code", "Operating system",
                "RAM installed", "RAM slots", "Remarks");
        List<DemoMachine> rows = at("Harbour Campus", false);
        for (int i = 0; i < rows.size(); i++) {
            DemoMachine machine = rows.get(i);
            String memory = together(machine, i);
            Object slots = machine.board().sockets();
            String remark = "";
            switch (i) {
                case 7 -> memory = "3x8GB DDR4-2400"; // dirt: more modules than slots
                case 19 -> memory = "";  // dirt: nothing is said of the memory
                case 33 -> slots = 4; // dirt: the board has two
                case 48 -> memory = "2x4GB DDR4-2666 + something"; // dirt: half of it can't be read
                case 60 -> remark = "staff swapped RAM in May?";
                case 77 -> memory = "4 GB DDR4"; // dirt: the board takes DDR3L
                default -> { }
            }
            pen.row(i + 1, i == 25 ? "H-1025" : machine.tag(), machine.board().maker() + " " + machine.model(),
                    machine.site(), machine.room(), machine.use(), machine.costCentre(), machine.system(), memory,
                    slots, remark);
            if (i == 110) {
                pen.row("", "", "", "", "", "", "", "", "subtotal", 111, ""); // dirt: a sum in the middle
            }
        }
        pen.row("", "", "Note: trolley machines are counted at night.");
        pen.widths(6, 14, 28, 18, 18, 18, 22, 30, 34, 10, 28);
    }

    private String together(DemoMachine machine, int index) {
        List<Double> filled = machine.modules().stream().filter(size -> size > 0).toList();
        String soldered = switch (machine.board().key()) {
            case "n250" -> "4 GB onboard";
            case "n340" -> "8 GB onboard";
            default -> "";
        };
        if (filled.isEmpty()) {
            return soldered + ", 1 empty";
        }
        String size = DemoMachine.gigabytes(filled.get(0));
        // dirt: now and then a size without a count, which may be one module or the sum of several
        String modules = filled.size() == 1 && index % 16 == 5
                ? size + "GB " + machine.board().type()
                : filled.size() + "x" + size + " GB " + machine.board().type();
        int empty = machine.board().sockets() - filled.size();
        return (soldered.isEmpty() ? "" : soldered + " + ") + modules
                + (empty > 0 && index % 2 == 0 ? ", " + empty + " empty" : "");
    }

    /** Everything in MB, a column a module, columns in an order of their own. */
    private void millLane(Workbook book) {
        SheetPen pen = new SheetPen(book, "Mill Lane");
        pen.headings("School", "Room", "PC model", "Manufacturer", "Role", "Tag", "Department", "RAM 1 (MB)",
                "RAM 2 (MB)", "RAM 3 (MB)", "RAM 4 (MB)", "RAM type", "System");
        List<DemoMachine> rows = at("Mill Lane", false);
        for (int i = 0; i < rows.size(); i++) {
            DemoMachine machine = rows.get(i);
            List<Object> cells = new ArrayList<>(List.of(machine.site(), machine.room(), machine.model(),
                    machine.board().maker(), machine.use(), machine.tag(), machine.costCentre()));
            for (int slot = 0; slot < 4; slot++) {
                double size = slot < machine.modules().size() ? machine.modules().get(slot) : 0;
                cells.add(size > 0 ? size * 1024 : slot < machine.modules().size() ? 0 : "");
            }
            cells.add(i == 12 ? "DDR" : machine.board().type()); // dirt: once only half the type
            cells.add(machine.system());
            if (i == 30) {
                cells.set(5, "M-1029"); // dirt: the tag of the row before
            }
            pen.row(cells.toArray());
            if (i == 20) {
                pen.blank();
            }
        }
        pen.widths(14, 14, 20, 14, 18, 12, 22, 12, 12, 12, 12, 22, 30);
    }

    /** Servers of all sites, with processors. */
    private void machineRooms(Workbook book) {
        SheetPen pen = new SheetPen(book, "Servers");
        pen.headings("Asset", "Serial number", "Vendor", "Model", "Site", "Room", "Role", "Cost center", "OS", "CPUs",
                "Memory modules", "Installed memory");
        for (DemoMachine machine : machines) {
            if (machine.use().equals("Server")) {
                pen.row(machine.tag(), machine.serial(), machine.board().maker(), machine.model(), machine.site(),
                        machine.room(), machine.use(), machine.costCentre(), machine.system(),
                        machine.board().processors(), together(machine, 3),
                        DemoMachine.gigabytes(machine.total()) + " GB");
            }
        }
        pen.widths(12, 18, 14, 18, 18, 18, 12, 22, 28, 8, 34, 16);
        Row extra = pen.row("S-9001", "", "Dunmarsk", "Harbour S500", "Upper School", "U-Machine room", "Server",
                "CC-500 Services", "Debian 12", 2, "4x32GB DDR5-4800 RDIMM ECC", "128 GB"); // dirt: no such board
        extra.setHeightInPoints(15);
    }

    private List<DemoMachine> at(String site, boolean servers) {
        return machines.stream()
                .filter(machine -> machine.site().equals(site) && machine.use().equals("Server") == servers)
                .toList();
    }
}
