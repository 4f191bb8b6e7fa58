package slotledger.intake.internal.value;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slotledger.model.module.ErrorCheck;
import slotledger.model.unit.Capacity;

/** Reads capacities and counts out of a module text. */
final class Sizes {

    private static final String UNIT = "(" + CapacityUnit.WORDS + ")";
    private static final String NUMBER = "(\\d{1,9}(?:[.,]\\d{1,3})?)";
    /** 1Gx72 | 128Mx64: words times bits, 72 bits with ECC. */
    private static final Pattern WORDS_TIMES_BITS =
            Pattern.compile(ModuleText.BEFORE + "(\\d{1,4})([MG])X(64|72)" + ModuleText.AFTER);
    /** 2x4 GB | 2*4096MB | 4 x 1,5 GB. */
    private static final Pattern COUNT_TIMES_SIZE =
            Pattern.compile(ModuleText.BEFORE + "(\\d{1,2})\\s?(?:[X*]|MAL)\\s?" + NUMBER + "\\s?" + UNIT
                    + ModuleText.AFTER);
    /** 4GB x 2 | 8 GB*2. */
    private static final Pattern SIZE_TIMES_COUNT =
            Pattern.compile(ModuleText.BEFORE + NUMBER + "\\s?" + UNIT + "\\s?[X*]\\s?(\\d{1,2})" + ModuleText.AFTER);
    /** 8GB | 8 GiB | 8192 MB | 0.5GB | 1,5 GB | 4Go. */
    private static final Pattern SIZE = Pattern.compile(ModuleText.BEFORE + NUMBER + "\\s?" + UNIT + ModuleText.AFTER);
    /** 2x8, without a unit. */
    private static final Pattern BARE_PRODUCT =
            Pattern.compile("^\\s*(\\d{1,2})\\s?[X*]\\s?" + NUMBER + "(?=\\s|$|[,;)])");
    /** 8 | 8192 | 0,5, with nothing else left. */
    private static final Pattern BARE = Pattern.compile("^[\\s(,;-]*" + NUMBER + "[\\s),;-]*$");
    /** kit of 2 | Kit 2 | 2er Kit | 2-piece kit | kit de 2. */
    private static final Pattern KIT = Pattern.compile(ModuleText.BEFORE
            + "(?:(?:KIT|SET)(?: (?:OF|DE|VON|À|DI|VAN))? ?(\\d{1,2})|"
            + "(\\d{1,2})[ -]?(?:ER|PIECE|PCS|STK|X)?[ -]?(?:KIT|SET))"
            + ModuleText.AFTER);
    /** 8.192 MB | 1,024 MB: nobody counts thousandths of a megabyte. */
    private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
    private static final BigDecimal LARGEST_BARE_GB = BigDecimal.valueOf(64);
    private static final BigDecimal SMALLEST_BARE_MB = BigDecimal.valueOf(256);

    private Sizes() {
    }

    /** Takes capacity and count; returns the count, 0 where the text doesn't count. */
    static int read(Remaining rest, Facts facts, Optional<CapacityUnit> unit, List<Doubt> doubts) {
        int[] count = {0};
        rest.take(WORDS_TIMES_BITS, match -> {
            CapacityUnit words = CapacityUnit.ofWord(match.group(2));
            words.of(new BigDecimal(match.group(1)).multiply(BigDecimal.valueOf(8))).ifPresent(facts::capacity);
            facts.errorCheck(match.group(3).equals("72") ? ErrorCheck.ECC : ErrorCheck.NONE);
        });
        rest.take(COUNT_TIMES_SIZE, match -> {
            facts.capacity(capacity(match, 2, 3));
            count[0] = Integer.parseInt(match.group(1));
        });
        rest.take(SIZE_TIMES_COUNT, match -> {
            facts.capacity(capacity(match, 1, 2));
            count[0] = Integer.parseInt(match.group(3));
        });
        rest.take(SIZE, match -> single(capacity(match, 1, 2), count[0], facts));
        if (facts.capacity().isEmpty()) {
            rest.takeIf(BARE_PRODUCT, match -> {
                boolean taken = bare(match.group(2), facts, unit, doubts);
                count[0] = taken ? Integer.parseInt(match.group(1)) : count[0];
                return taken;
            });
        }
        if (facts.capacity().isEmpty()) {
            rest.takeIf(BARE, match -> bare(match.group(1), facts, unit, doubts));
        }
        rest.take(KIT, match -> kit(match, count, doubts));
        return count[0];
    }

    private static Capacity capacity(MatchResult match, int number, int unit) {
        CapacityUnit written = CapacityUnit.ofWord(match.group(unit));
        String digits = match.group(number);
        if (written == CapacityUnit.MB && THOUSANDS.matcher(digits).matches()) {
            digits = digits.replaceAll("[.,]", "");
        }
        return written.of(decimal(digits)).orElse(Capacity.NONE);
    }

    /** A size beside a product is the sum, 16GB (2x8GB), or says it again, 8GB 2x8GB. */
    private static void single(Capacity size, int count, Facts facts) {
        boolean sum = count > 0 && facts.capacity().map(each -> each.times(count).equals(size)).orElse(false);
        if (!sum) {
            facts.capacity(size);
        }
    }

    private static void kit(MatchResult match, int[] count, List<Doubt> doubts) {
        int pieces = Integer.parseInt(match.group(1) != null ? match.group(1) : match.group(2));
        if (count[0] == pieces) {
            return;
        }
        doubts.add(Doubt.error("kit-size-ambiguous",
                "A kit of %d: the text does not say whether the capacity is that of one module or of the kit."
                        .formatted(pieces),
                "a text such as %dx8GB".formatted(pieces), "Write the kit as count times capacity of one module."));
        count[0] = pieces;
    }

    private static boolean bare(String number, Facts facts, Optional<CapacityUnit> unit, List<Doubt> doubts) {
        BigDecimal amount = decimal(number);
        Optional<CapacityUnit> taken = unit.or(() -> assumed(amount));
        if (taken.isEmpty()) {
            doubts.add(Doubt.warning("unit-missing", "%s may be MB or GB.".formatted(number),
                    "a capacity with its unit",
                    "Write the unit after the number or in the heading."));
            return false;
        }
        if (unit.isPresent() && !believable(amount, unit.get())) {
            doubts.add(Doubt.warning("unit-doubtful", "%s %s is not believable, so the number was not used."
                    .formatted(number, unit.get()), "a capacity in " + unit.get() + ", as the heading says",
                    "Write the unit after the number."));
            return false;
        }
        Optional<Capacity> capacity = taken.get().of(amount);
        capacity.ifPresent(facts::capacity);
        if (unit.isEmpty() && capacity.isPresent() && !capacity.get().isNone()) {
            doubts.add(Doubt.note("unit-assumed", "%s was taken for %s.".formatted(number, capacity.get()),
                    "a capacity with its unit", "Write the unit after the number or in the heading."));
        }
        return capacity.isPresent();
    }

    /** Nobody has 64 MB and no unit in mind today, nor 256 GB; between the two it can be either. */
    private static Optional<CapacityUnit> assumed(BigDecimal amount) {
        if (amount.compareTo(LARGEST_BARE_GB) <= 0) {
            return Optional.of(CapacityUnit.GB);
        }
        return amount.compareTo(SMALLEST_BARE_MB) >= 0 ? Optional.of(CapacityUnit.MB) : Optional.empty();
    }

    /** A heading's unit holds unless 8192 stands in a GB column or 8 in an MB column. */
    private static boolean believable(BigDecimal amount, CapacityUnit unit) {
        return switch (unit) {
            case GB -> amount.compareTo(BigDecimal.valueOf(4096)) < 0;
            case MB -> amount.signum() == 0 || amount.compareTo(BigDecimal.valueOf(32)) >= 0;
            case KB -> amount.signum() == 0 || amount.compareTo(BigDecimal.valueOf(256)) >= 0;
            case TB -> amount.compareTo(BigDecimal.valueOf(64)) < 0;
        };
    }

    private static BigDecimal decimal(String number) {
        return new BigDecimal(number.replace(',', '.'));
    }
}
