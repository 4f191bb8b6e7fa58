package slotledger.intake.internal.value;

import java.util.List;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Capacity;

/**
 * What stands on a SIMM: depth in words x bits of a word, then the access time. 4x36-60 is 4 M words of 32 data and 4
 * parity bits, 16 MB, 60 ns (a hardware note on reading SIMM labels); 1Mx36 is 4 MB (a course text).
 */
final class SimmText {

    /**
     * 4x36-60 | 4x9-70 | 16x36 | 1Mx36-60 | 256Kx9-80 | 16x32 | 2x32-6 | 1x8-70NS, but neither 2x8GB nor 2x32 GB. A
     * word of 9 or 36 bits is sure, for no module is of 9 or 36 GB.
     */
    private static final Pattern DEPTH_TIMES_BITS = Pattern.compile(ModuleText.BEFORE
            + "(\\d{1,4})\\s?([KM])?X(8|9|32|36)(?:-(\\d{1,3})(?:NS)?)?" + ModuleText.AFTER
            + "(?!\\s?(?:" + CapacityUnit.WORDS + ")" + ModuleText.AFTER + "|[.,]\\d)");
    /** 60ns | 70 ns. */
    private static final Pattern NANOSECONDS =
            Pattern.compile(ModuleText.BEFORE + "(\\d{2,3})\\s?NS" + ModuleText.AFTER);
    /** -6 | -60 | -70 at the end of a word list, where the text is about such modules. */
    private static final Pattern DASHED_TIME = Pattern.compile("(?<=\\s)-([5-9]0?|1[0-5]0?)" + ModuleText.AFTER);
    private static final Pattern OLD =
            Pattern.compile(ModuleText.BEFORE + "(?:EDO|FPM|SIMMS?|PARITY)" + ModuleText.AFTER);
    private static final Pattern NEWER =
            Pattern.compile(ModuleText.BEFORE + "(?:SDR(?:AM)?|RDRAM|RAMBUS|DDR\\d?[LX]?|PC\\d*)" + ModuleText.AFTER);
    private static final List<Form> FORMS = List.of(Form.SIMM_30, Form.SIMM_72);
    private static final int FASTEST = 40;
    private static final int SLOWEST = 150;
    private static final int KIB_PER_MEGAWORD_BYTE = 1024;

    private SimmText() {
    }

    static void read(Remaining rest, Facts facts) {
        boolean newer = rest.has(NEWER) || facts.generation().filter(each -> each != Generation.FPM
                && each != Generation.EDO).isPresent();
        if (newer) {
            return;
        }
        boolean old = rest.has(OLD) || isSimm(facts);
        rest.takeIf(DEPTH_TIMES_BITS, match -> {
            boolean sure = old || match.group(2) != null || match.group(4) != null
                    || match.group(3).equals("9") || match.group(3).equals("36");
            return sure && module(match, facts);
        });
        boolean known = old || isSimm(facts);
        rest.takeIf(NANOSECONDS, match -> known && time(Integer.parseInt(match.group(1)), facts));
        if (known) {
            rest.takeIf(DASHED_TIME, match -> time(nanoseconds(match.group(1)), facts));
        }
    }

    private static boolean isSimm(Facts facts) {
        return facts.form().filter(form -> FORMS.contains(form) || form == Form.SO_DIMM_72).isPresent();
    }

    private static boolean module(MatchResult match, Facts facts) {
        int bits = Integer.parseInt(match.group(3));
        for (Form form : FORMS) {
            Family family = Families.of(Generation.FPM, form).get(0);
            int data = family.dataBits().orElseThrow();
            boolean parity = bits == data + family.checkBits().get(0);
            long depth = Long.parseLong(match.group(1));
            if (bits != data && !parity || depth == 0) {
                continue;
            }
            long kibibytes = depth * data / 8 * ("K".equals(match.group(2)) ? 1 : KIB_PER_MEGAWORD_BYTE);
            facts.capacity(Capacity.ofKiB(kibibytes));
            if (facts.form().filter(known -> Families.dataBits(Generation.FPM, known).equals(OptionalInt.of(data)))
                    .isEmpty()) {
                facts.form(form);
            }
            if (!parity || facts.errorCheck().isEmpty()) {
                facts.errorCheck(parity ? ErrorCheck.PARITY : ErrorCheck.NONE);
            }
            if (match.group(4) != null && !time(nanoseconds(match.group(4)), facts)) {
                facts.doubt(Doubt.note("unknown-access-time", "%s is no access time; it was left out."
                        .formatted(match.group(4)), "60, 70 or 80, or 6, 7 or 8", "Look at the chips of the module."));
            }
            return true;
        }
        return false;
    }

    /** 6 and 60 both mean 60 ns, 10 means 100 ns. */
    private static int nanoseconds(String digits) {
        int number = Integer.parseInt(digits);
        return number <= SLOWEST / 10 ? number * 10 : number;
    }

    private static boolean time(int nanoseconds, Facts facts) {
        boolean believable = nanoseconds >= FASTEST && nanoseconds <= SLOWEST;
        if (believable) {
            facts.accessTime(AccessTime.ofNanoseconds(nanoseconds));
        }
        return believable;
    }
}
