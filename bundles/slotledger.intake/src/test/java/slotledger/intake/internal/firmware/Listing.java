package slotledger.intake.internal.firmware;

import java.util.ArrayList;
import java.util.List;

/**
 * Listings of invented machines as text. A slot is a line such as
 * {@code DIMM A | 8 GB | DIMM | DDR4 | 2666 MT/s | 64 | 64}: locator, size or "empty", form, type, rate, data width and
 * whole width; what follows are further lines as a lister prints them.
 */
final class Listing {

    private String maker = "Kestrin";
    private String model = "KB-510";
    private String serial = "S-4711";
    private String limit = "64 GB";
    private String correction = "None";
    private int counted = -1;
    private final List<String> devices = new ArrayList<>();

    static Listing of(String... slots) {
        Listing listing = new Listing();
        for (String slot : slots) {
            listing.device(slot);
        }
        return listing;
    }

    Listing machine(String theMaker, String theModel, String theSerial) {
        maker = theMaker;
        model = theModel;
        serial = theSerial;
        return this;
    }

    Listing array(String most, String corrects, int slots) {
        limit = most;
        correction = corrects;
        counted = slots;
        return this;
    }

    private void device(String slot) {
        String[] cells = slot.split("\\|");
        String[] names = {"Locator", "Size", "Form Factor", "Type", "Speed", "Data Width", "Total Width"};
        StringBuilder text = new StringBuilder("Handle 0x%04X, DMI type 17, 40 bytes\nMemory Device\n"
                .formatted(0x20 + devices.size())).append("\tArray Handle: 0x0010\n");
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i].strip();
            if (i >= names.length) {
                text.append('\t').append(cell).append('\n');
            } else if (!cell.isEmpty()) {
                text.append('\t').append(names[i]).append(": ")
                        .append(cell.equals("empty") ? "No Module Installed" : cell)
                        .append(names[i].endsWith("Width") ? " bits\n" : "\n");
            }
        }
        devices.add(text.append('\n').toString());
    }

    @Override
    public String toString() {
        return """
                # dmidecode 3.4
                SMBIOS 3.1.1 present.

                Handle 0x0001, DMI type 1, 27 bytes
                System Information
                \tManufacturer: %s
                \tProduct Name: %s
                \tSerial Number: %s

                Handle 0x0004, DMI type 4, 48 bytes
                Processor Information
                \tVersion: Corvid 5 8400

                Handle 0x0010, DMI type 16, 23 bytes
                Physical Memory Array
                \tUse: System Memory
                \tError Correction Type: %s
                \tMaximum Capacity: %s
                \tNumber Of Devices: %d

                """.formatted(maker, model, serial, correction, limit, counted < 0 ? devices.size() : counted)
                + String.join("", devices);
    }
}
