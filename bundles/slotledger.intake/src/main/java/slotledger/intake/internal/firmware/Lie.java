package slotledger.intake.internal.firmware;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.source.Place;

/**
 * What firmware is known to say wrongly, and what is made of it. Source: 162,327 tables of the public collection
 * linuxhw/DMI, counted; how many there say so stands beside each where it was counted.
 */
enum Lie {
    /** 130 machines of it with DDR4. */
    RIMM(Severity.NOTE, "The firmware says RIMM of modules that are no RDRAM; they were taken for registered DIMMs.",
            "RIMM only for RDRAM", "Look at the label of one of them when the machine is opened."),
    LOW_POWER_FORM(Severity.NOTE, "The firmware says a socket's form of low-power memory; it was taken for soldered.",
            "soldered chips", "Check that the board has no socket for it."),
    FORM(Severity.WARNING, "The firmware says a form in which this memory is not made; the form is left unknown.",
            "a form in which the memory is made", "Look at one of the modules."),
    UNIT(Severity.WARNING, "The firmware counts KB where MB are meant; the size was taken a thousand times larger.",
            "a size in which modules are made", "Compare it with what the operating system counts."),
    LIMIT_UNIT(Severity.NOTE, "The most that the board is said to take is in a unit a thousand times too small; it was"
            + " corrected.", "at least what is installed", "Look up the board's document."),
    /** 6,620 machines. */
    LIMIT(Severity.NOTE, "More is installed than the board is said to take; what it takes is left unknown.",
            "at least what is installed", "Look up the board's document."),
    NO_MAIN_MEMORY(Severity.NOTE, "The firmware counts a chip among the memory that is none; it was left out.",
            "main memory", "Nothing."),
    PERSISTENT(Severity.WARNING, "This module keeps its data without power; no plan moves it.",
            "memory that forgets", "Treat it as storage: ask its owner before it is taken out."),
    NAMELESS(Severity.NOTE, "The firmware doesn't name the slots.", "the names printed on the board",
            "Note the printed names when the machine is opened."),
    /** 27,284 machines by slot name alone, 2,337 with the bank's name too. */
    SAME_NAME(Severity.NOTE, "The firmware gives several slots one name; their banks differ, and both were joined.",
            "a name of its own for each slot", "Note the printed names when the machine is opened."),
    SAME_NAMES(Severity.WARNING, "The firmware gives several slots one name; which is which can't be told.",
            "a name of its own for each slot", "Note the printed names when the machine is opened."),
    /** Machines whose array counts other than the table lists: 6,697. */
    COUNT(Severity.WARNING, "The number of slots that the firmware counts is not the number it lists; those listed were"
            + " used.", "one entry for each slot", "Count the slots when the machine is opened."),
    SWAPPED_WIDTHS(Severity.NOTE, "The firmware has swapped the width of the data and the whole width.",
            "a whole width not below that of the data", "Nothing; the module has check bits."),
    WIDTHS(Severity.NOTE, "The widths that the firmware tells don't go together; whether the module has check bits is"
            + " left unknown.", "64 of 64 bits, or 64 of 72", "Look at the label, or read the module's SPD."),
    /** 770 of the 4,861 machines with such modules. */
    CHECKS_UNUSED(Severity.NOTE, "The modules have check bits, and the firmware says that nothing is corrected.",
            "modules without, or a board that corrects",
            "Ask the operating system whether errors are counted; the table alone proves nothing."),
    /** 2,247 machines. */
    CHECKS_MISSING(Severity.NOTE, "The firmware says that errors are corrected, and no module has check bits.",
            "modules with check bits",
            "Ask the operating system whether errors are counted; the table alone proves nothing."),
    MIXED_CHECKS(Severity.WARNING, "Modules with and without check bits are in one machine.",
            "modules of one sort", "Look at the labels; without the same bits everywhere nothing is corrected."),
    TYPE_AND_RATE(Severity.WARNING, "The kind of memory and its rate don't go together; the kind is left unknown.",
            "a rate at which this memory is made", "Look at the label of one of the modules."),
    /** 8,523 machines. */
    TYPE(Severity.WARNING, "The firmware doesn't say what kind of memory it is.", "a kind such as DDR4",
            "Look at the label of one of the modules, or at the board's document."),
    SIZE(Severity.WARNING, "Something is in the slot, and the firmware doesn't say how large it is.", "a size",
            "Look at the label."),
    ODD_SIZE(Severity.WARNING, "Modules are not made in the size that the firmware tells.", "1, 2, 4, 8, 16 ... GB",
            "Look at the label; perhaps firmware or graphics hold back a part.");

    private static final int MOST_SHOWN = 8;

    private final Severity severity;
    private final String message;
    private final String expected;
    private final String remedy;

    Lie(Severity severity, String message, String expected, String remedy) {
        this.severity = severity;
        this.message = message;
        this.expected = expected;
        this.remedy = remedy;
    }

    /** The code of its finding: "firmware-same-name". */
    String code() {
        return "firmware-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @param seen what stands there, slot by slot */
    Finding at(Place place, AssetTag machine, List<String> seen) {
        String shown = String.join("; ", seen.subList(0, Math.min(seen.size(), MOST_SHOWN)))
                + (seen.size() > MOST_SHOWN ? "; and " + (seen.size() - MOST_SHOWN) + " more" : "");
        return new Finding(severity, code(), place, Optional.of(machine), shown, message, expected, remedy);
    }
}
