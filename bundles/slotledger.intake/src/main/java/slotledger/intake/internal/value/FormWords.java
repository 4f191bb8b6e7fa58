package slotledger.intake.internal.value;

import java.util.regex.Pattern;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;

/** Words for the form and the buffering of a module. */
final class FormWords {

    /** RDIMM | LRDIMM | UDIMM | FB-DIMM | FBDIMM | LR-DIMM. */
    private static final Pattern BUFFERED_DIMM =
            Pattern.compile(ModuleText.BEFORE + "(LR|FB|R|U)[ -]?DIMMS?" + ModuleText.AFTER);
    /** SO-DIMM | SODIMM | SO DIMM | ECC SODIMM. */
    private static final Pattern SO_DIMM =
            Pattern.compile(ModuleText.BEFORE + "S\\.?O\\.?[ -]?DIMMS?" + ModuleText.AFTER);
    /** MicroDIMM | Mini-DIMM. */
    private static final Pattern SMALL_DIMM =
            Pattern.compile(ModuleText.BEFORE + "(MICRO|MINI)[ -]?DIMMS?" + ModuleText.AFTER);
    /** 184-pin RIMM | RIMM | 232 pin RIMM; a RIMM without pin count is left open. */
    private static final Pattern RIMM =
            Pattern.compile(ModuleText.BEFORE + "(?:(184|232)[ -]?PINS? )?RIMMS?(?: (3200|4200|4800))?"
                    + ModuleText.AFTER);
    /** 72-pin SIMM | SIMM 30 | SIMM PS/2; a SIMM without pin count is left open. */
    private static final Pattern SIMM = Pattern.compile(
            ModuleText.BEFORE + "(?:(30|72)[ -]?PINS? )?SIMMS?(?: (30|72)(?:[ -]?PINS?)?)?" + ModuleText.AFTER);
    /** LPCAMM2 | CAMM2 | CAMM. */
    private static final Pattern CAMM = Pattern.compile(ModuleText.BEFORE + "(LP)?CAMM2?" + ModuleText.AFTER);
    /** DIMM | Long-DIMM. */
    private static final Pattern DIMM = Pattern.compile(ModuleText.BEFORE + "(?:LONG[ -]?)?DIMMS?" + ModuleText.AFTER);
    /** unbuffered | ungepuffert | non-registered. */
    private static final Pattern UNBUFFERED = Pattern.compile(ModuleText.BEFORE
            + "(?:UNBUFFERED|UNBUFF|UNREGISTERED|NON?[ -]?REG(?:ISTERED)?|NON?[ -]?BUFFERED|UNGEPUFFERT)"
                    + ModuleText.AFTER);
    /** fully buffered. */
    private static final Pattern FULLY_BUFFERED =
            Pattern.compile(ModuleText.BEFORE + "FULLY[ -]?BUFFERED" + ModuleText.AFTER);
    /** load reduced. */
    private static final Pattern LOAD_REDUCED =
            Pattern.compile(ModuleText.BEFORE + "LOAD[ -]?REDUCED" + ModuleText.AFTER);
    /** registered | REG | reg. ECC | registriert. */
    private static final Pattern REGISTERED =
            Pattern.compile(ModuleText.BEFORE + "(?:REGISTERED|REGISTRIERT|REG)" + ModuleText.AFTER + "\\.?");

    private FormWords() {
    }

    static void read(Remaining rest, Facts facts) {
        rest.take(BUFFERED_DIMM, match -> {
            facts.form(Form.DIMM);
            switch (match.group(1)) {
                case "U" -> facts.buffering(Buffering.UNBUFFERED);
                case "R" -> checked(facts, Buffering.REGISTERED);
                case "LR" -> checked(facts, Buffering.LOAD_REDUCED);
                case "FB" -> checked(facts, Buffering.FULLY_BUFFERED);
                default -> throw new IllegalArgumentException("The letters before DIMM must be U, R, LR or FB.");
            }
        });
        rest.take(SO_DIMM, match -> facts.form(Form.SO_DIMM));
        rest.take(SMALL_DIMM, match -> facts.form(match.group(1).equals("MICRO") ? Form.MICRO_DIMM : Form.MINI_DIMM));
        rest.take(RIMM, match -> {
            facts.generation(Generation.RDRAM);
            if ("184".equals(match.group(1))) {
                facts.form(Form.RIMM_184);
            } else if ("232".equals(match.group(1)) || match.group(2) != null) {
                facts.form(Form.RIMM_232);
            }
        });
        rest.take(SIMM, match -> {
            String pins = match.group(1) != null ? match.group(1) : match.group(2);
            if (pins != null) {
                facts.form(pins.equals("30") ? Form.SIMM_30 : Form.SIMM_72);
            }
        });
        rest.take(CAMM, match -> facts.form(match.group(1) == null ? Form.CAMM2 : Form.LPCAMM2));
        rest.take(DIMM, match -> facts.form(Form.DIMM));
        rest.take(UNBUFFERED, match -> facts.buffering(Buffering.UNBUFFERED));
        rest.take(FULLY_BUFFERED, match -> checked(facts, Buffering.FULLY_BUFFERED));
        rest.take(LOAD_REDUCED, match -> checked(facts, Buffering.LOAD_REDUCED));
        rest.take(REGISTERED, match -> checked(facts, Buffering.REGISTERED));
    }

    /** The standards' registered, load-reduced and fully buffered modules are all 72 bits wide (from memory). */
    private static void checked(Facts facts, Buffering buffering) {
        facts.buffering(buffering);
        facts.errorCheck(ErrorCheck.ECC);
    }
}
