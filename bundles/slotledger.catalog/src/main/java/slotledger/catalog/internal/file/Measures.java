package slotledger.catalog.internal.file;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.model.board.RedundancyTerms.Share;
import slotledger.model.module.ChipSize;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** Reads amounts with their units as board files write them. */
final class Measures {

    static final String CAPACITY = "a capacity such as \"8 GB\" or \"512 MB\"";
    static final String CHIP_SIZE = "a chip size such as \"8 Gbit\" or \"512 Mbit\"";
    static final String VOLTAGE = "a voltage such as \"1.35 V\"";
    static final String ACCESS_TIME = "an access time such as \"60 ns\"";
    static final String SHARE = "a share such as \"1/2\"";
    static final String RATE = "a rate in MT/s without a unit, such as 2666";

    /** "8 GB", "1.5 TB", "512MB" */
    private static final Pattern AMOUNT =
            Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,3})?) ?(KB|MB|GB|TB|Mbit|Gbit|V|ns)");
    /** "1/2" */
    private static final Pattern PARTS = Pattern.compile("([1-9][0-9]?)/([1-9][0-9]?)");

    private static final Map<String, Long> CAPACITY_UNITS =
            Map.of("KB", 1L, "MB", 1L << 10, "GB", 1L << 20, "TB", 1L << 30);
    private static final Map<String, Long> CHIP_UNITS = Map.of("Mbit", 1L, "Gbit", 1L << 10);
    private static final Map<String, Long> VOLT_UNITS = Map.of("V", 1000L);
    private static final Map<String, Long> TIME_UNITS = Map.of("ns", 1L);
    private static final int LEAST_MILLIVOLTS = 500;
    private static final int MOST_MILLIVOLTS = 12_000;
    private static final int MOST_NANOSECONDS = 500;
    private static final int MOST_RATE = 20_000;
    private static final int MOST_CHIP = 1 << 20;

    private Measures() {
    }

    static Optional<Capacity> capacity(String text) {
        return amount(text, CAPACITY_UNITS).filter(amount -> amount > 0).map(Capacity::ofKiB);
    }

    static Optional<ChipSize> chipSize(String text) {
        return amount(text, CHIP_UNITS)
                .filter(amount -> amount > 0 && amount <= MOST_CHIP)
                .map(amount -> ChipSize.ofMbit(amount.intValue()));
    }

    static Optional<Voltage> voltage(String text) {
        return amount(text, VOLT_UNITS)
                .filter(amount -> amount >= LEAST_MILLIVOLTS && amount <= MOST_MILLIVOLTS)
                .map(amount -> Voltage.ofMillivolts(amount.intValue()));
    }

    static Optional<AccessTime> accessTime(String text) {
        return amount(text, TIME_UNITS)
                .filter(amount -> amount > 0 && amount <= MOST_NANOSECONDS)
                .map(amount -> AccessTime.ofNanoseconds(amount.intValue()));
    }

    static Optional<Share> share(String text) {
        Matcher matcher = PARTS.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int parts = Integer.parseInt(matcher.group(1));
        int of = Integer.parseInt(matcher.group(2));
        return parts <= of ? Optional.of(new Share(parts, of)) : Optional.empty();
    }

    static Optional<Rate> rate(String text) {
        if (!text.matches("[0-9]{1,5}")) {
            return Optional.empty();
        }
        return Optional.of(Integer.parseInt(text)).filter(rate -> rate > 0 && rate <= MOST_RATE).map(Rate::of);
    }

    private static Optional<Long> amount(String text, Map<String, Long> units) {
        Matcher matcher = AMOUNT.matcher(text);
        if (!matcher.matches() || !units.containsKey(matcher.group(2))) {
            return Optional.empty();
        }
        BigDecimal amount = new BigDecimal(matcher.group(1)).multiply(BigDecimal.valueOf(units.get(matcher.group(2))));
        return amount.stripTrailingZeros().scale() <= 0 ? Optional.of(amount.longValueExact()) : Optional.empty();
    }
}
