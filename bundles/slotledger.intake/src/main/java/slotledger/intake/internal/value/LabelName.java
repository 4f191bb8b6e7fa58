package slotledger.intake.internal.value;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * The name on a module's label. Grammar of DDR3 labels: System x3550 M4 guide, page 46 (L = 1.35 V specified, 1.5 V
 * operable; E, L, R, U = ECC UDIMM, LRDIMM, RDIMM, UDIMM); of the other generations: from memory of JESD21-C 4.20.
 */
final class LabelName {

    /**
     * PC4-21300 | PC4-2400T-SE1 | PC4-2666V-U | PC3L-12800R | PC3-10600U-09-10-A0 | PC2-5300 | PC2-5300F | PC3200 |
     *  PC133 |
     * PC4-25600 SODIMM.
     */
    static final Pattern PATTERN = Pattern.compile(ModuleText.BEFORE
            + "PC(?:([2345])(?:([LU])[ -]?|[ -]))?[ -]?(\\d{2,5})([A-Z]{0,2})((?:-(?:[A-Z]{1,2}\\d|\\d{2,3}|[USERLT])"
            + ModuleText.AFTER + "){0,4})" + ModuleText.AFTER);

    /** Above this a number is a bandwidth, not a rate, by generation digit. */
    private static final int[] LARGEST_RATE = {0, 0, 1200, 2400, 5000, 10_000};

    private static final Voltage LOW = Voltage.ofMillivolts(1350);
    private static final Voltage NORMAL = Voltage.ofMillivolts(1500);

    private LabelName() {
    }

    /** Whether the match is a name that makes sense. */
    static boolean read(MatchResult match, Facts facts) {
        int number = Integer.parseInt(match.group(3));
        if (match.group(1) == null) {
            return withoutDigit(number, facts);
        }
        int digit = Integer.parseInt(match.group(1));
        Generation generation = generation(digit);
        facts.generation(generation);
        rate(generation, digit, number, facts);
        if ("L".equals(match.group(2)) && digit == 3) {
            lowVoltage(facts);
        }
        String suffix = match.group(4);
        String tail = match.group(5);
        if (digit <= 3) {
            module(suffix, facts);
        } else if (tail.length() > 1 && Character.isLetter(tail.charAt(1))) {
            module(tail.substring(1, 2), facts);
        }
        return true;
    }

    /** DDR3L modules are made for 1.35 V and also work at 1.5 V. */
    static void lowVoltage(Facts facts) {
        facts.voltage(LOW);
        facts.voltage(NORMAL);
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

    private static boolean withoutDigit(int number, Facts facts) {
        switch (number) {
            case 66, 100, 133 -> {
                facts.generation(Generation.SDR);
                facts.rate(Rate.of(number));
            }
            case 600, 700, 800, 1066, 1200 -> {
                facts.generation(Generation.RDRAM);
                facts.rate(new RawRate(number, false));
            }
            case 1600, 2100, 2700, 3200 -> {
                facts.generation(Generation.DDR);
                facts.rate(Rate.of(Grades.ofBandwidth(Optional.of(Generation.DDR), number).orElseThrow()));
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

    private static void module(String letters, Facts facts) {
        if (letters.isEmpty()) {
            return;
        }
        switch (letters.charAt(0)) {
            case 'U' -> kind(facts, Form.DIMM, Buffering.UNBUFFERED, ErrorCheck.NONE);
            case 'E' -> kind(facts, Form.DIMM, Buffering.UNBUFFERED, ErrorCheck.ECC);
            case 'S' -> kind(facts, Form.SO_DIMM, Buffering.UNBUFFERED, ErrorCheck.NONE);
            case 'T' -> kind(facts, Form.SO_DIMM, Buffering.UNBUFFERED, ErrorCheck.ECC);
            case 'R', 'P' -> kind(facts, Form.DIMM, Buffering.REGISTERED, ErrorCheck.ECC);
            case 'L' -> kind(facts, Form.DIMM, Buffering.LOAD_REDUCED, ErrorCheck.ECC);
            case 'F' -> kind(facts, Form.DIMM, Buffering.FULLY_BUFFERED, ErrorCheck.ECC);
            default -> facts.doubt(Doubt.note("unknown-module-letter",
                    "The letter %s after the name of the module is not known here.".formatted(letters),
                    "U, E, S, T, R, L or F", "Check whether the module is registered or has ECC."));
        }
    }

    private static void kind(Facts facts, Form form, Buffering buffering, ErrorCheck check) {
        facts.form(form);
        facts.buffering(buffering);
        facts.errorCheck(check);
    }
}
