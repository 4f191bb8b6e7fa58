package slotledger.intake.internal.value;

import java.util.Optional;
import java.util.regex.Pattern;
import slotledger.model.module.Filler;

/** Words for things that take a slot without giving memory. */
public final class FillerWords {

    /** CRIMM | C-RIMM | CT-RIMM | continuity module | 232-pin continuity RIMM | Blindmodul. */
    private static final Pattern CONTINUITY =
            Pattern.compile(ModuleText.BEFORE + "(?:CT?-?RIMM|CONTINUITY|TERMINATION|BLINDMODULE?)" + ModuleText.AFTER);
    /** By the pins, or since only those of 32-bit RIMMs terminate too (from memory). */
    private static final Pattern PINS_232 = Pattern.compile(
            ModuleText.BEFORE + "(?:232|CT-?RIMM|(?:CONTINUITY|C-?RIMM).*TERMINATION|TERMINATION.*CONTINUITY)"
                    + ModuleText.AFTER);
    /** airflow blank | DIMM blank | blank | air baffle | Blindabdeckung | Leermodul. */
    private static final Pattern BLANK = Pattern.compile(
            ModuleText.BEFORE + "(?:(?:AIR ?FLOW |DIMM )?BLANKS?|FILLER|DUMMY|BLINDABDECKUNG|LEERMODUL)"
                    + ModuleText.AFTER);

    private FillerWords() {
    }

    public static Optional<Filler> read(String text) {
        String upper = Texts.upper(text);
        if (CONTINUITY.matcher(upper).find()) {
            return Optional.of(PINS_232.matcher(upper).find() ? Filler.CONTINUITY_232 : Filler.CONTINUITY_184);
        }
        return BLANK.matcher(upper).find() ? Optional.of(Filler.AIR_BLANK) : Optional.empty();
    }
}
