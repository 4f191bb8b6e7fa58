package slotledger.intake.internal.value;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slotledger.model.module.Generation;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * The name on a module's label. Grammar of DDR3 labels: System x3550 M4 guide, page 46 (L = 1.35 V specified, 1.5 V
 * operable; E, L, R, U = ECC UDIMM, LRDIMM, RDIMM, UDIMM); of the other generations: from memory of JESD21-C 4.20.
 */
final class LabelName {

    /** What may follow a name after a dash: SE1, A0, 10, 555, 30331, 1010, 32P, XT, U; but no 2GB and no X8. */
    private static final String PIECE = "-(?:[A-WYZ]{1,2}\\d{1,2}|\\d{1,2}P|\\d{1,5}(?!\\s?(?:" + CapacityUnit.WORDS
            + ")" + ModuleText.AFTER + ")|XT|NT|[A-WYZ])" + ModuleText.AFTER;

    /**
     * PC4-21300 | PC4-2400T-SE1 | PC4-2666V-U | PC3L-12800R | PC3-10600U-09-10-A0 | PC2-5300 | PC2-5300F-555-11 |
     * PC3200 | PC3200U-30331 | PC133 | PC100-322-620 | PC800-45 | PC5-4800B-UA0-1010-XT | PC4-25600 SODIMM.
     */
    static final Pattern PATTERN = Pattern.compile(ModuleText.BEFORE
            + "PC(?:([2345])(?:([LU])[ -]?|[ -]))?[ -]?(\\d{2,5})([A-Z]{0,2})((?:" + PIECE + "){0,5})"
            + ModuleText.AFTER);

    /** Above this a number is a bandwidth, not a rate, by generation digit. */
    private static final int[] LARGEST_RATE = {0, 0, 1200, 2400, 5000, 10_000};

    private static final Voltage ULTRA_LOW = Voltage.ofMillivolts(1250);
    private static final Voltage LOW = Voltage.ofMillivolts(1350);
    private static final Voltage NORMAL = Voltage.ofMillivolts(1500);

    private LabelName() {
    }

    /** Whether the match is a name that makes sense. */
    static boolean read(MatchResult match, Facts facts, Remaining text) {
        int number = Integer.parseInt(match.group(3));
        LabelTail tail = new LabelTail(match, facts, text);
        if (match.group(1) == null) {
            return withoutDigit(number, facts, tail);
        }
        int digit = Integer.parseInt(match.group(1));
        Generation generation = generation(digit);
        facts.generation(generation);
        rate(generation, digit, number, facts);
        if (match.group(2) != null && digit == 3) {
            lowVoltage(match.group(2), facts);
        }
        if (generation.compareTo(Generation.DDR3) <= 0) {
            tail.typeThenTimings(generation);
        } else {
            tail.binThenType(generation, number > LARGEST_RATE[digit]);
        }
        return true;
    }

    /** DDR3L modules are made for 1.35 V and also work at 1.5 V; what DDR3U does above 1.25 V is not known here. */
    static void lowVoltage(String letter, Facts facts) {
        if (letter.equals("U")) {
            facts.voltage(ULTRA_LOW);
        } else {
            facts.voltage(LOW);
            facts.voltage(NORMAL);
        }
    }

    private static Generation generation(int digit) {
        return switch (digit) {
            case 2 -> Generation.DDR2;
            case 3 -> Generation.DDR3;
            case 4 -> Generation.DDR4;
            case 5 -> Generation.DDR5;
            default -> throw new IllegalArgumentException("The digit (%d) must be from 2 to 5.".formatted(digit));
        };
    }

    private static void rate(Generation generation, int digit, int number, Facts facts) {
        if (number <= LARGEST_RATE[digit]) {
            facts.rate(new RawRate(number, false));
            return;
        }
        OptionalInt grade = Grades.ofBandwidth(Optional.of(generation), number);
        if (grade.isPresent()) {
            facts.rate(Rate.of(grade.getAsInt()));
        } else {
            unknown("PC" + digit + "-" + number, facts);
        }
    }

    private static boolean withoutDigit(int number, Facts facts, LabelTail tail) {
        switch (number) {
            case 66, 100, 133 -> {
                facts.generation(Generation.SDR);
                facts.rate(Rate.of(number));
                tail.typeThenTimings(Generation.SDR);
            }
            case 600, 700, 800, 1066, 1200 -> {
                facts.generation(Generation.RDRAM);
                facts.rate(new RawRate(number, false));
                tail.accessTime();
            }
            case 1600, 2100, 2700, 3200 -> {
                facts.generation(Generation.DDR);
                facts.rate(Rate.of(Grades.ofBandwidth(Optional.of(Generation.DDR), number).orElseThrow()));
                tail.typeThenTimings(Generation.DDR);
            }
            default -> {
                OptionalInt grade = Grades.ofBandwidth(Optional.empty(), number);
                if (number < 4000 || grade.isEmpty()) {
                    return false;
                }
                facts.rate(new RawRate(grade.getAsInt(), false));
                facts.doubt(Doubt.warning("name-without-generation",
                        "PC-%d does not say of which generation it is; only the rate (%d MT/s) was taken from it."
                                .formatted(number, grade.getAsInt()),
                        "a name such as PC3-12800 or PC4-21300", "Look at the label of the module."));
            }
        }
        return true;
    }

    private static void unknown(String name, Facts facts) {
        facts.doubt(Doubt.warning("unknown-rate", "%s is no bandwidth name known here; the rate is left unknown."
                .formatted(name), "a name such as PC3-12800 or PC4-21300", "Look at the label of the module."));
    }
}
