package slotledger.firmware.internal.words;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Words that firmware leaves in a field that nobody filled in. Common practice, no standard: counted among the tables
 * of public collections.
 */
public final class Placeholders {

    private static final Set<String> NOTHING = Set.of("", "unknown", "reserved", "undefined", "not specified",
            "not provided",
            "none", "n/a", "na", "--", "no dimm", "[empty]", "empty", "not available", "notavailable",
            "to be filled by o.e.m.", "to be filled by o.e.m", "default string", "system manufacturer",
            "system product name", "system version", "system serial number", "jedec id:", "(no info)", "no info",
            "<bad index>", "<out of spec>", "not installed", "not present", "not settable", "no module installed",
            "fill by oem", "o.e.m.");

    private Placeholders() {
    }

    /** What a text says, without the blanks around it; empty where it is blank or a placeholder. */
    public static Optional<String> meaning(String text) {
        String stripped = text.strip();
        return NOTHING.contains(stripped.toLowerCase(Locale.ROOT)) || isNumbered(stripped)
                ? Optional.empty() : Optional.of(stripped);
    }

    /** "PartNum0", "Array1_PartNumber0", "SerNum3", "AssetTagNum2", "Manufacturer1", "ManufacturerX". */
    private static boolean isNumbered(String text) {
        return text.matches("(?i)(array\\d+_)?(part ?num(ber)?|ser(ial)? ?num(ber)?|asset ?tag ?(num(ber)?)?|"
                + "manufacturer|module ?manufacturer|module ?part ?number)_?(\\d+|x)");
    }
}
