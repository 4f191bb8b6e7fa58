package slotledger.firmware.internal.spd;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rate that part numbers of the three large makers of chips name: Samsung's and SK Hynix's letters and Micron's
 * digits, after their published guides to part numbers of DDR4 modules.
 */
final class PartRate {

    /** "M393A2K43BB1-CRC". */
    private static final Pattern SAMSUNG = Pattern.compile("M3\\d\\dA\\w+-C(\\w\\w).*");
    private static final Map<String, Integer> SAMSUNG_RATES =
            Map.of("PB", 2133, "RC", 2400, "TD", 2666, "VF", 2933, "WE", 3200);
    /** "HMA42GR7MFR4N-TF". */
    private static final Pattern HYNIX = Pattern.compile("HMA\\w+-(\\w\\w).*");
    private static final Map<String, Integer> HYNIX_RATES =
            Map.of("TF", 2133, "UH", 2400, "VK", 2666, "WM", 2933, "XN", 3200);
    /** "36ASF4G72PZ-2G6E1". */
    private static final Pattern MICRON = Pattern.compile("\\d+AS[FQ]\\w+-(\\dG\\d).*");
    private static final Map<String, Integer> MICRON_RATES =
            Map.of("2G1", 2133, "2G3", 2400, "2G4", 2400, "2G6", 2666, "2G9", 2933, "3G2", 3200);

    private PartRate() {
    }

    /** In MT/s; empty for a part number of another form. */
    static Optional<Integer> of(String part) {
        return of(part, SAMSUNG, SAMSUNG_RATES).or(() -> of(part, HYNIX, HYNIX_RATES))
                .or(() -> of(part, MICRON, MICRON_RATES));
    }

    private static Optional<Integer> of(String part, Pattern pattern, Map<String, Integer> rates) {
        Matcher matcher = pattern.matcher(part);
        return matcher.matches() ? Optional.ofNullable(rates.get(matcher.group(1))) : Optional.empty();
    }
}
