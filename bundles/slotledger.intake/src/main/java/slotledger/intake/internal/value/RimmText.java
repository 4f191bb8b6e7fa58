package slotledger.intake.internal.value;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slotledger.model.family.Families;
import slotledger.model.family.Grade;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.unit.AccessTime;

/** What stands on a RIMM beside its name; from memory of such labels. */
final class RimmText {

    /** 184-pin RIMM | RIMM | 232 pin RIMM | RIMM 3200 | RIMM4200 32P; a RIMM without pin count is left open. */
    private static final Pattern RIMM = Pattern.compile(ModuleText.BEFORE
            + "(?:(\\d{3})[ -]?PINS? )?RIMMS?(?:[ -]?(\\d{4}))?(?:[ -](\\d{2})P?(?!\\s?(?:" + CapacityUnit.WORDS + ")"
            + ModuleText.AFTER + "))?" + ModuleText.AFTER);
    /** 800-45 | 1066-32P, where the text is about RDRAM. */
    private static final Pattern RATE =
            Pattern.compile(ModuleText.BEFORE + "(600|700|800|1066|1200)-(\\d{2})P?" + ModuleText.AFTER);
    /** 256MB/16 | 128MB/8: capacity / chips. */
    private static final Pattern CHIPS = Pattern.compile("(?<=B)\\s?/\\s?(\\d{1,2})" + ModuleText.AFTER);
    private static final Pattern ABOUT =
            Pattern.compile(ModuleText.BEFORE + "(?:RDRAM|RAMBUS|RIMMS?(?:[ -]?\\d{4})?|PC(?:600|700|800|1066|1200))"
                    + "(?!\\d)");
    private static final int SLOWEST = 60;
    private static final int MBIT_PER_KIB = 128;

    private RimmText() {
    }

    /** Words of the form, which must go before those of plain DIMMs. */
    static void form(Remaining rest, Facts facts) {
        rest.take(RIMM, match -> {
            facts.generation(Generation.RDRAM);
            if (match.group(1) != null) {
                FormWords.named(match.group(1), facts, Form.RIMM_184, Form.RIMM_232);
            }
            if (match.group(2) != null) {
                name(Integer.parseInt(match.group(2)), facts);
            }
            time(match.group(3), facts);
        });
    }

    private static void name(int number, Facts facts) {
        for (Grade grade : Families.of(Generation.RDRAM, Form.RIMM_232).get(0).grades()) {
            if (grade.name().equals("RIMM " + number)) {
                facts.form(Form.RIMM_232);
                facts.rate(grade.rate());
                return;
            }
        }
        facts.doubt(Doubt.warning("unknown-rate", "RIMM %d is no name known here.".formatted(number),
                "RIMM 3200, 4200 or 4800", "Look at the label of the module."));
    }

    private static void time(String digits, Facts facts) {
        int nanoseconds = digits == null ? 0 : Integer.parseInt(digits);
        if (nanoseconds > 0 && nanoseconds <= SLOWEST) {
            facts.accessTime(AccessTime.ofNanoseconds(nanoseconds));
        }
    }

    /** How many chips there are, to be turned into their size once the capacity is known; 0 where it isn't told. */
    static int chips(Remaining rest, Facts facts) {
        int[] chips = {0};
        if (rest.has(ABOUT) || facts.generation().equals(Optional.of(Generation.RDRAM))) {
            rest.take(RATE, match -> {
                facts.rate(new RawRate(Integer.parseInt(match.group(1)), false));
                time(match.group(2), facts);
            });
            rest.take(CHIPS, match -> chips[0] = count(match, facts));
        }
        return chips[0];
    }

    private static int count(MatchResult match, Facts facts) {
        int chips = Integer.parseInt(match.group(1));
        facts.tell(chips + " chips");
        return chips;
    }

    /** Capacity / chips, and the width, 16 bits or 18 with check bits, which are the same thing in RDRAM. */
    static void size(int chips, Facts facts) {
        boolean rdram = facts.generation().equals(Optional.of(Generation.RDRAM));
        if (rdram && chips > 0 && facts.capacity().isPresent()) {
            long one = facts.capacity().get().kibibytes() / chips;
            if (one >= MBIT_PER_KIB && one * chips == facts.capacity().get().kibibytes() && one % MBIT_PER_KIB == 0) {
                facts.chipSize(ChipSize.ofMbit(Math.toIntExact(one / MBIT_PER_KIB)));
            } else {
                facts.doubt(Doubt.warning("chips-contradict", "%d chips can't make %s.".formatted(chips,
                        facts.capacity().get()), "a number of chips that divides the capacity",
                        "Count the chips of the module."));
            }
        }
        if (rdram && facts.errorCheck().isPresent()) {
            facts.chipWidth(facts.errorCheck().get() == ErrorCheck.NONE ? ChipWidth.X16 : ChipWidth.X18);
        }
    }
}
