package slotledger.firmware.internal.lister;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.smbios.TypeDetail;

/** Reads quantities as the lister prints them. */
final class Quantities {

    private static final Pattern NUMBER = Pattern.compile("(0x[0-9A-Fa-f]{1,7}|\\d{1,9})(?:\\s.*)?");
    private static final Pattern SIZE = Pattern.compile("(\\d{1,15})\\s*(bytes?|[kKMGTPE]i?B)(?:\\s.*)?");
    private static final Pattern VOLTS = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,4})?)\\s*V");
    private static final List<String> UNITS = List.of("b", "k", "m", "g", "t", "p", "e");
    private static final Set<String> NOTHING = Set.of("no module installed", "not installed", "not enabled", "none");
    private static final int STEP_BITS = 10;

    private Quantities() {
    }

    /** "0x0003", "72 bits", "2400 MT/s", "1333 MHz (0.8 ns)", "60 ns", "None" of a set. */
    static Optional<Integer> number(String text) {
        if (text.strip().equalsIgnoreCase("none")) {
            return Optional.of(0);
        }
        Matcher matcher = NUMBER.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        return Optional.of(Integer.decode(matcher.group(1).startsWith("0x") ? matcher.group(1)
                : matcher.group(1).replaceFirst("^0+(?=\\d)", "")));
    }

    /** "8192 MB", "8 GB", "512 kB", "256 MB (Double-bank Connection)", "No Module Installed". */
    static Optional<ByteCount> size(String text) {
        if (NOTHING.contains(text.strip().toLowerCase(Locale.ROOT))) {
            return Optional.of(ByteCount.NOTHING);
        }
        Matcher matcher = SIZE.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int unit = UNITS.indexOf(matcher.group(2).substring(0, 1).toLowerCase(Locale.ROOT));
        return Optional.of(ByteCount.ofShifted(Long.parseLong(matcher.group(1)), STEP_BITS * unit));
    }

    /** "1.35 V", "1.5 V". */
    static Optional<Integer> millivolts(String text) {
        Matcher matcher = VOLTS.matcher(text.strip());
        return matcher.matches() ? Optional.of(new BigDecimal(matcher.group(1)).movePointRight(3).intValue())
                : Optional.empty();
    }

    /** "Synchronous Registered (Buffered)"; "None". Empty for "Unknown" alone. */
    static Optional<TypeDetail> detail(String text) {
        Set<TypeDetail.Trait> traits = EnumSet.noneOf(TypeDetail.Trait.class);
        String rest = text;
        for (TypeDetail.Trait trait : TypeDetail.Trait.values()) {
            if (rest.contains(trait.text())) {
                traits.add(trait);
                rest = rest.replace(trait.text(), "");
            }
        }
        return traits.isEmpty() && !text.strip().equals("None") ? Optional.empty()
                : Optional.of(new TypeDetail(traits));
    }

    /** Versions differ in capitals, blanks and hyphens ("SO-DIMM", "SODIMM"), and in "Optane DC". */
    static boolean alike(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s_-]", "").toLowerCase(Locale.ROOT).replace("optanedc", "optane");
    }
}
