package slotledger.intake.internal.value;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.model.unit.Capacity;

/** Units capacities are written in; all are powers of 1024, as everywhere in the trade of memory modules. */
public enum CapacityUnit {
    KB(1),
    MB(1024),
    GB(1024 * 1024),
    TB(1024L * 1024 * 1024);

    /** Words for the units; French counts in octets. */
    static final String WORDS = "TIB|TB|TO|GIB|GIG|GB|GO|G|MIB|MEG|MB|MO|M|KIB|KB|KO";

    /** RAM (GB) | Speicher [MB] | Memory in GB | Mémoire Go | ram_mb. */
    private static final Pattern IN_HEADING = Pattern.compile(
            "(?:[(\\[][^)\\]]*\\b(TIB|TB|GIB|GB|GO|MIB|MB|MO|KIB|KB|KO)\\b[^)\\]]*[)\\]]"
                    + "|(?:^|[ _/,-])(?:IN )?(TIB|TB|GIB|GB|GO|MIB|MB|MO|KIB|KB)$)");

    private final long kibibytes;

    CapacityUnit(long kibibytes) {
        this.kibibytes = kibibytes;
    }

    static CapacityUnit ofWord(String word) {
        return switch (word.charAt(0)) {
            case 'T' -> TB;
            case 'G' -> GB;
            case 'M' -> MB;
            case 'K' -> KB;
            default -> throw new IllegalArgumentException("The word %s must be a unit of capacity.".formatted(word));
        };
    }

    /** The unit a heading states. */
    public static Optional<CapacityUnit> ofHeading(String heading) {
        Matcher matcher = IN_HEADING.matcher(Texts.upper(heading));
        return matcher.find()
                ? Optional.of(ofWord(matcher.group(1) != null ? matcher.group(1) : matcher.group(2)))
                : Optional.empty();
    }

    /** The capacity, rounded to whole KiB; empty where it is beyond all reason. */
    public Optional<Capacity> of(BigDecimal amount) {
        BigDecimal exact = amount.multiply(BigDecimal.valueOf(kibibytes)).setScale(0, RoundingMode.HALF_UP);
        return exact.signum() < 0 || exact.precision() > 15
                ? Optional.empty()
                : Optional.of(Capacity.ofKiB(exact.longValueExact()));
    }
}
