package slotledger.intake.internal.template;

import java.util.List;

/** What the templates ask for. */
final class TemplateSheets {

    static final String MODULE =
            "The module in any usual notation: 8GB 1Rx8 PC4-2666V-U, 8GB DDR4-2666 SO-DIMM non-ECC, "
            + "4GB PC3L-12800S. The more it says (form, ECC, registered, ranks, chips), the more can be planned.";

    static final List<TemplateColumn> FLEET = List.of(
            column("Asset tag",
                    "The label on the machine. Each tag once. Where it is missing, the serial number stands in.",
                    "EXAMPLE-0001"),
            column("Serial number", "The machine's serial number.", "5XK20731"),
            column("Maker", "Who made it. May stand in the model column instead.", "Halden"),
            column("Model", "The exact model, as on the label; it leads to the board.", "Halden Office 310"),
            column("Site", "Campus or building.", "Main"),
            column("Room", "Room in it.", "101"),
            column("Cost centre", "Who pays.", "4711"),
            column("Role", "What it is used for; the policy sets a target for each role.", "classroom"),
            column("Operating system", "With edition, since some hold little memory.", "Windows 10 Pro 64-bit"),
            column("Processor", "As the machine names it.", "i5-8400"),
            column("Processors", "How many processors; empty means one.", "1"),
            column("Memory mode",
                    "Of servers: mirrored or spare where the firmware keeps memory back, else empty.", ""),
            column("Slots", "How many memory slots the machine has.", "4"),
            column("Total memory (GB)", "What the machine says is installed; compared with the modules.", "8"),
            column("Slot 1",
                    "The module in the slot, or empty. Rename the column as the board prints it, such as DIMM A1. "
                    + "Add or delete slot columns as you need.", "4GB DDR4-2666 1Rx8"),
            column("Slot 2", "As before.", "4GB DDR4-2666 1Rx8"),
            column("Slot 3", "As before.", "empty"),
            column("Slot 4", "As before.", "empty"),
            column("Remarks", "Not used.", "delete this row"));

    static final List<TemplateColumn> OFFERS = List.of(
            column("Supplier", "Who sells. Leave the column out if each sheet is named after its supplier.",
                    "EXAMPLE Memory Trade"),
            column("Part number", "The supplier's number for it; each once.", "MT-8D4-26"),
            column("Maker", "Who makes the module; may be empty. What people decided (choices.yaml) can name makers.",
                    "Example Works"),
            column("Module", MODULE, "8GB 1Rx8 PC4-2666V-U non-ECC"),
            column("Pack size", "How many modules are in a pack; empty means one.", "1"),
            column("Price (EUR)", "Price of one pack without tax, in the currency the heading names.", "21.90"),
            column("Price from 10", "Price of one pack if at least 10 packs are ordered; more such columns may follow.",
                    "20.50"),
            column("Price from 50", "As before.", "19.90"),
            column("Price rule", "Whether a price from a quantity on holds for all packs ordered (all packs), or only "
                    + "for the packs from that quantity on (further packs); empty means all packs.", "all packs"),
            column("Tax percent", "Tax on it where it differs from that of the policy; never part of the price.", ""),
            column("Stock", "Packs that can be had; empty means as many as wanted.", "200"),
            column("Lead time (days)", "Days until delivery.", "3"),
            column("Valid until", "Last day the offer holds, as year-month-day.", "2027-06-30"),
            column("Price date", "Day of the price.", "2026-11-02"),
            column("Shipping", "Charge for one delivery of this supplier.", "6.90"),
            column("Free from", "Order value from which delivery is free.", "250"),
            column("Minimum order", "Smallest order value.", "50"));

    static final List<TemplateColumn> SHELF = List.of(
            column("Module", MODULE + " Continuity modules and airflow blanks may be listed too.",
                    "4GB 1Rx8 PC4-2400T-U non-ECC"),
            column("Count", "How many there are.", "12"),
            column("Remarks", "Not used.", "EXAMPLE - delete this row"));

    static final List<List<String>> POLICY = List.of(
            List.of("settings"),
            List.of("currency", "EUR"),
            List.of("budget", "12000"),
            List.of("labour per machine", "12.50"),
            List.of("labour per module", "2"),
            List.of("spares percent", "2"),
            List.of("spares at least one", "yes"),
            List.of("reuse pulled", "yes"),
            List.of("harvest", "no"),
            List.of("tax percent", "19"),
            List.of("budget includes tax", "no"),
            List.of("needed by", "2027-06-30"),
            List.of("prices after validity", "leave out"),
            List.of("exchange rates of", "2026-11-02"),
            List.of(),
            List.of("exchange rates"),
            List.of("USD", "0.92"),
            List.of(),
            List.of("targets"),
            List.of("role", "memory", "dual channel", "ECC", "rate", "weight"),
            List.of("classroom", "8 GB", "no", "no", "", "1"),
            List.of("design lab", "16 GB", "yes", "no", "", "3"),
            List.of("server", "64 GB", "no", "yes", "", "5"),
            List.of(),
            List.of("cost centre budgets"),
            List.of("4711", "3000"),
            List.of("4712", "1500"),
            List.of(),
            List.of("leave alone"),
            List.of("tag", "LH-0001", "LH-0002"),
            List.of("room", "Main / Exam office"),
            List.of("role", "kiosk"));

    static final List<List<String>> POLICY_HELP = List.of(
            List.of("currency", "The currency of every amount here: three letters of ISO 4217."),
            List.of("budget", "The most that may be spent on goods and delivery in all; delete the row for no limit."),
            List.of("labour per machine", "What it costs to open one machine."),
            List.of("labour per module", "What it costs to handle one module."),
            List.of("spares percent", "Spare modules of each kind bought, in percent, rounded up."),
            List.of("spares at least one", "Whether at least one spare of each kind is bought."),
            List.of("reuse pulled", "Whether modules pulled from machines may be used again."),
            List.of("harvest", "Whether machines above their target may be opened for their modules."),
            List.of("tax percent", "Tax on goods and delivery, shown apart; prices are without it."),
            List.of("budget includes tax", "Whether the budgets here are meant with tax."),
            List.of("needed by", "The last day on which modules may arrive; delete the row if any day will do."),
            List.of("prices after validity", "What becomes of an offer after its last day: leave out, or keep, to "
                    + "reckon with its last price."),
            List.of("exchange rates", "What one unit of another currency is worth in the currency of the policy; the "
                    + "setting \"exchange rates of\" may say of which day."),
            List.of("waves", "Several times of work: a row of headings (name, date, budget, needed by, cost centre "
                    + "4711), and a row a wave. Delete the section to do all at once."),
            List.of("targets",
                    "One row a role, as the inventory writes it; * stands for any other role. Memory is the least "
                    + "usable memory, rate the least rate in MT/s, weight from 1 to 1000; more is more urgent."),
            List.of("cost centre budgets", "The most for single cost centres, as the inventory names them."),
            List.of("leave alone",
                    "Machines nobody touches: a tag, a room or a role a row; several may stand side by side."));

    private TemplateSheets() {
    }

    private static TemplateColumn column(String heading, String explanation, String example) {
        return new TemplateColumn(heading, explanation, example);
    }
}
