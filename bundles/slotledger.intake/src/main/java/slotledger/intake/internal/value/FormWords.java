package slotledger.intake.internal.value;

import java.util.OptionalInt;
import java.util.regex.Pattern;
import slotledger.model.family.Families;
import slotledger.model.module.Buffering;
import slotledger.model.module.ContactMetal;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;

/** Words for the form and the buffering of a module. */
final class FormWords {

    private static final String PIN_COUNT = "(?:(\\d{2,3})[ -]?PINS? )?";
    /** RDIMM | LRDIMM | UDIMM | FB-DIMM | FBDIMM | LR-DIMM. */
    private static final Pattern BUFFERED_DIMM =
            Pattern.compile(ModuleText.BEFORE + "(LR|FB|R|U)[ -]?DIMMS?" + ModuleText.AFTER);
    /** 240-pin | 288 pins | 72 pol. */
    private static final Pattern PINS =
            Pattern.compile(ModuleText.BEFORE + "(\\d{2,3})[ -]?(?:PINS?|POL\\.?|POLIG|BROCHES)" + ModuleText.AFTER);
    /** SO-DIMM | SODIMM | 72-pin SO DIMM | ECC SODIMM. */
    private static final Pattern SO_DIMM =
            Pattern.compile(ModuleText.BEFORE + PIN_COUNT + "S\\.?O\\.?[ -]?DIMMS?" + ModuleText.AFTER);
    /** MicroDIMM | Mini-DIMM. */
    private static final Pattern SMALL_DIMM =
            Pattern.compile(ModuleText.BEFORE + "(MICRO|MINI)[ -]?DIMMS?" + ModuleText.AFTER);
    /** 72-pin SIMM | SIMM 30 | SIMM PS/2; a SIMM without pin count is left open. */
    private static final Pattern SIMM = Pattern.compile(
            ModuleText.BEFORE + PIN_COUNT + "SIMMS?(?: (30|72)(?:[ -]?PINS?)?)?" + ModuleText.AFTER);
    /** LPCAMM2 | CAMM2 | CAMM. */
    private static final Pattern CAMM = Pattern.compile(ModuleText.BEFORE + "(LP)?CAMM2?" + ModuleText.AFTER);
    /** DIMM | Long-DIMM | 100-pin DIMM. */
    private static final Pattern DIMM =
            Pattern.compile(ModuleText.BEFORE + PIN_COUNT + "(?:LONG[ -]?)?DIMMS?" + ModuleText.AFTER);
    /** gold contacts | tin leads | tin plated. */
    private static final Pattern CONTACTS = Pattern.compile(ModuleText.BEFORE
            + "(GOLD|TIN)(?:[ -](?:LEADS?|CONTACTS?|FINGERS?|PLATED|EDGE))" + ModuleText.AFTER);
    /** gold | tin, standing alone, where the text is about a SIMM. */
    private static final Pattern METAL = Pattern.compile(ModuleText.BEFORE + "(GOLD|TIN)" + ModuleText.AFTER);
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
        rest.take(SO_DIMM, match -> byPins(match.group(1), facts, Form.SO_DIMM, Form.SO_DIMM_72));
        rest.take(SMALL_DIMM, match -> facts.form(match.group(1).equals("MICRO") ? Form.MICRO_DIMM : Form.MINI_DIMM));
        RimmText.form(rest, facts);
        rest.take(SIMM, match -> named(match.group(1) != null ? match.group(1) : match.group(2), facts, Form.SIMM_30,
                Form.SIMM_72));
        rest.take(CAMM, match -> facts.form(match.group(1) == null ? Form.CAMM2 : Form.LPCAMM2));
        rest.take(DIMM, match -> byPins(match.group(1), facts, Form.DIMM, Form.DIMM_100));
        rest.take(PINS, match -> facts.pins(Integer.parseInt(match.group(1))));
        rest.take(CONTACTS, match -> facts.contacts(ContactMetal.valueOf(match.group(1))));
        rest.take(UNBUFFERED, match -> facts.buffering(Buffering.UNBUFFERED));
        rest.take(FULLY_BUFFERED, match -> checked(facts, Buffering.FULLY_BUFFERED));
        rest.take(LOAD_REDUCED, match -> checked(facts, Buffering.LOAD_REDUCED));
        rest.take(REGISTERED, match -> checked(facts, Buffering.REGISTERED));
    }

    /** The number of pins tells which of several forms of one name it is: 72-pin SIMM, 184-pin RIMM. */
    static void named(String pins, Facts facts, Form... forms) {
        if (pins == null) {
            facts.tell("a " + forms[0].text().replaceFirst(".* ", ""));
            return;
        }
        OptionalInt count = OptionalInt.of(Integer.parseInt(pins));
        for (Form form : forms) {
            if (Families.all().stream().anyMatch(each -> each.form() == form && each.pins().equals(count))) {
                facts.form(form);
                return;
            }
        }
        facts.pins(count.getAsInt());
    }

    /** The usual form, or the rare one where the number of pins is its own. */
    private static void byPins(String pins, Facts facts, Form usual, Form rare) {
        if (pins == null) {
            facts.form(usual);
            return;
        }
        OptionalInt count = OptionalInt.of(Integer.parseInt(pins));
        boolean isRare = Families.all().stream().anyMatch(each -> each.form() == rare && each.pins().equals(count));
        facts.form(isRare ? rare : usual);
        facts.pins(count.getAsInt());
    }

    /** A metal without more words counts only on a SIMM; elsewhere it is a name of a product line. */
    static void metal(Remaining rest, Facts facts) {
        rest.takeIf(METAL, match -> {
            boolean old = facts.generation().filter(each -> each == Generation.FPM || each == Generation.EDO)
                            .isPresent()
                    || facts.form().filter(each -> each == Form.SIMM_30 || each == Form.SIMM_72).isPresent();
            if (old) {
                facts.contacts(ContactMetal.valueOf(match.group(1)));
            }
            return old;
        });
    }

    /** The standards' registered, load-reduced and fully buffered modules are all 72 bits wide (from memory). */
    private static void checked(Facts facts, Buffering buffering) {
        facts.buffering(buffering);
        facts.errorCheck(ErrorCheck.ECC);
    }
}
