package slotledger.intake.internal.value;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.unit.Voltage;

/** Reads what people write of a module, in any of the trade's notations, together or in parts. */
public final class ModuleText {

    static final String BEFORE = "(?<![\\p{L}\\d])";
    static final String AFTER = "(?![\\p{L}\\d])";

    /**
     * 1Rx8 | 2R x 4 | 4DRx4 | 2S2Rx4. D: chips with two dies that are two ranks. S: package ranks before it, dies
     * stacked in each chip behind it (from memory of JESD21-C 4.20).
     */
    private static final Pattern ORGANISATION = Pattern.compile(
            BEFORE + "(?:([1-8])S)?([1-9]\\d?)(D)?\\s?R\\s?X\\s?(4|8|16|32)" + AFTER);
    /** 9x4 | 10x4 | EC4 | EC8 on DDR5: data and check chips, or check bits, of a half channel. */
    private static final Pattern HALF_CHANNEL = Pattern.compile(BEFORE + "(?:(9|10)X4|EC([48]))" + AFTER);
    /** LP5X-8533 | LP4-4266, short for LPDDR. */
    private static final Pattern LOW_POWER = Pattern.compile(BEFORE + "LP([345])(X)?[ -](\\d{4,5})" + AFTER);
    /** dual rank | single-rank | 2 ranks | quad rank. */
    private static final Pattern RANKS =
            Pattern.compile(BEFORE + "(SINGLE|DUAL|QUAD|OCTAL|1|2|4|8)[ -]?RANK(?:S|ED)?" + AFTER);
    /** x8 | x16, standing alone. */
    private static final Pattern WIDTH = Pattern.compile(BEFORE + "X(4|8|16)" + AFTER);
    /** DDR4-2666 | DDR3L 1600 | DDR3 1333 MHz | DDR 400 | LPDDR4X-4266 | DDR5, but not the 8 of DDR4 8GB. */
    private static final Pattern GENERATION = Pattern.compile(BEFORE + "(LP)?DDR([2345])?\\s?([LXU])?(?:\\s?SDRAM)?"
            + "(?:[ /-]{0,2}(\\d{3,5})(?!\\s?(?:" + CapacityUnit.WORDS + ")(?![\\p{L}/])|[\\d.,X]\\d|[ -]?PIN)"
            + "\\s?(MHZ|MT/S|MTPS|MTS)?)?" + AFTER);
    /** SDRAM | SDR | RDRAM | RAMBUS | EDO | FPM. */
    private static final Pattern OLD_GENERATION = Pattern.compile(
            BEFORE + "(SDR(?:AM)?|RDRAM|RAMBUS|EDO|FPM)(?:[ -]?(?:RAM|DRAM))?" + AFTER);
    /** 1333 MHz | 2666MT/s. */
    private static final Pattern RATE = Pattern.compile(BEFORE + "(\\d{2,5})\\s?(MHZ|MT/S|MTPS|MTS|MT)" + AFTER);
    /** 1.35V | 1,5 V | 1.2 Volt. */
    private static final Pattern VOLTAGE =
            Pattern.compile(BEFORE + "([0-5])(?:[.,](\\d{1,3}))?\\s?V(?:OLTS?|DC)?" + AFTER);
    /** 8Gbit | 512 Mbit; a lone Gb is left to the capacity, since people write Gb for GB. */
    private static final Pattern CHIP_SIZE =
            Pattern.compile(BEFORE + "(\\d{1,4})\\s?(GI?BIT|MI?BIT)S?(?: CHIPS?)?" + AFTER);
    /** CL17 | CL 9 | CAS 11 | CL2.5. */
    private static final Pattern CAS =
            Pattern.compile(BEFORE + "(?:CL|CAS)[ =-]?(\\d{1,2})(?:[.,](\\d))?(?![\\p{L}\\d]|[.,]\\d)");
    /** non-ECC | no ECC | w/o ECC | ohne ECC | sans ECC | NECC. */
    private static final Pattern NO_ECC = Pattern.compile(
            BEFORE + "(?:NON?[ -]?|NICHT[ -]?|W/O |WITHOUT |OHNE |SANS |SIN |SENZA |ZONDER |BEZ )ECC" + AFTER
                    + "|" + BEFORE + "NECC" + AFTER);
    /** ECC. */
    private static final Pattern ECC = Pattern.compile(BEFORE + "ECC" + AFTER);
    /** non-parity | parity. */
    private static final Pattern PARITY = Pattern.compile(BEFORE + "(NON?[ -]?)?PARITY" + AFTER);
    /** onboard | on board | soldered | verlötet | soudé. */
    private static final Pattern SOLDERED = Pattern.compile(BEFORE
            + "(?:ON[ -]?BOARD|SOLDERED|VERLÖTET|AUFGELÖTET|SOUDÉE?|SOLDADA|SALDATA|GESOLDEERD|WLUTOWANA)" + AFTER);
    /** Words that say nothing new. */
    private static final Pattern NOISE =
            Pattern.compile(BEFORE + "(?:RAM|MEMORY|MEM|MODULES?|MODUL[EIO]?|SPEICHER(?:MODULE?)?|"
            + "ARBEITSSPEICHER|DRAM|SDRAM|MÉMOIRE|MEMORIA|GEHEUGEN|PAMIĘĆ|BARRETTES?|RIEGEL|STICKS?|KIT|SET|"
            + "CHIPS?|VOLTS?|JE|EACH|PER|OF|À|DE|X)" + AFTER);
    /** M378A1K43CB2-CTD | KVR26N19S8/8: letters and digits mixed, at least seven. */
    private static final Pattern PART = Pattern.compile(
            BEFORE + "(?=[A-Z0-9/.-]*\\d)(?=[A-Z0-9/.-]*[A-Z])[A-Z0-9][A-Z0-9/.-]{5,}[A-Z0-9]" + AFTER);
    /** 2666, standing alone beside a generation. */
    private static final Pattern LONE_NUMBER = Pattern.compile(BEFORE + "(\\d{3,5})" + AFTER);

    private ModuleText() {
    }

    /**
     * Reads a text.
     *
     * @param unit unit of a number without one, where the heading says so
     */
    public static ModuleReading read(String text, Optional<CapacityUnit> unit) {
        Facts facts = new Facts();
        List<Doubt> doubts = new ArrayList<>();
        Remaining rest = new Remaining(Texts.upper(Texts.withoutInvisible(text)), facts);
        rest.take(ORGANISATION, match -> organisation(match, facts));
        rest.take(RANKS, match -> facts.ranks(rankCount(match.group(1))));
        int chips = RimmText.chips(rest, facts);
        rest.takeIf(LabelName.PATTERN, match -> LabelName.read(match, facts, rest));
        rest.take(GENERATION, match -> generation(match, facts));
        rest.take(LOW_POWER, match -> lowPower(match, facts));
        rest.takeIf(HALF_CHANNEL, match -> halfChannel(match, facts));
        rest.take(CHIP_SIZE, match -> facts.chipSize(match.group(2).startsWith("G")
                ? ChipSize.ofGbit(Math.max(1, Integer.parseInt(match.group(1))))
                : ChipSize.ofMbit(Math.max(1, Integer.parseInt(match.group(1))))));
        FormWords.read(rest, facts);
        SimmText.read(rest, facts);
        rest.take(NO_ECC, match -> facts.errorCheck(ErrorCheck.NONE));
        rest.take(ECC, match -> facts.errorCheck(ErrorCheck.ECC));
        rest.take(PARITY, match -> facts.errorCheck(match.group(1) == null ? ErrorCheck.PARITY : ErrorCheck.NONE));
        rest.take(RATE, match -> facts.rate(
                new RawRate(Integer.parseInt(match.group(1)), match.group(2).equals("MHZ"))));
        rest.takeIf(VOLTAGE, match -> voltage(match, facts));
        rest.takeIf(CAS, match -> latency(match, facts));
        rest.take(SOLDERED, match -> facts.form(Form.SOLDERED));
        int count = Sizes.read(rest, facts, unit, doubts);
        rest.take(OLD_GENERATION, match -> oldGeneration(match.group(1), facts));
        FormWords.metal(rest, facts);
        RimmText.size(chips, facts);
        rest.take(WIDTH, match -> facts.chipWidth(ChipWidth.ofBits(Integer.parseInt(match.group(1))).orElseThrow()));
        StringBuilder part = new StringBuilder();
        rest.takeIf(PART, match -> part(match.group(), part, facts));
        if (facts.generation().isPresent()) {
            rest.takeIf(LONE_NUMBER, match -> loneRate(match, facts));
        }
        rest.take(NOISE, match -> { });
        return new ModuleReading(Math.max(1, count), count > 0, facts, part.toString(), rest.taken(), rest.parts(),
                rest.rest(), doubts);
    }

    private static boolean part(String text, StringBuilder part, Facts facts) {
        if (!part.isEmpty()) {
            return false;
        }
        part.append(text);
        facts.tell("part number");
        return true;
    }

    private static void organisation(MatchResult match, Facts facts) {
        int second = Integer.parseInt(match.group(2));
        boolean stacked = match.group(1) != null;
        facts.ranks(stacked ? Integer.parseInt(match.group(1)) : second);
        if (stacked || match.group(3) != null) {
            facts.stack(stacked ? second : 1);
        }
        facts.chipWidth(ChipWidth.ofBits(Integer.parseInt(match.group(4))).orElseThrow());
    }

    private static void lowPower(MatchResult match, Facts facts) {
        byName("LPDDR" + match.group(1) + (match.group(2) == null ? "" : "X")).ifPresent(facts::generation);
        facts.rate(new RawRate(Integer.parseInt(match.group(3)), false));
    }

    private static boolean halfChannel(MatchResult match, Facts facts) {
        boolean ddr5 = facts.generation().filter(each -> each == Generation.DDR5).isPresent();
        if (ddr5) {
            facts.errorCheck(ErrorCheck.ECC);
            facts.checkBits("9".equals(match.group(1)) || "4".equals(match.group(2)) ? 4 : 8);
        }
        return ddr5;
    }

    private static boolean latency(MatchResult match, Facts facts) {
        int cycles = Integer.parseInt(match.group(1));
        int tenths = match.group(2) == null ? 0 : Integer.parseInt(match.group(2));
        if (tenths != 0) {
            LabelTail.halfLatency(cycles * 10 + tenths, facts);
        } else if (cycles > 0) {
            facts.casLatency(cycles);
        }
        return cycles > 0;
    }

    private static int rankCount(String word) {
        return switch (word) {
            case "SINGLE" -> 1;
            case "DUAL" -> 2;
            case "QUAD" -> 4;
            case "OCTAL" -> 8;
            default -> Integer.parseInt(word);
        };
    }

    private static void generation(MatchResult match, Facts facts) {
        boolean lowPower = match.group(1) != null;
        String digit = match.group(2) == null ? "" : match.group(2);
        boolean x = "X".equals(match.group(3));
        Optional<Generation> generation = byName((lowPower ? "LPDDR" : "DDR") + digit + (lowPower && x ? "X" : ""));
        generation.ifPresent(facts::generation);
        if (generation.isEmpty()) {
            facts.doubt(Doubt.warning("unknown-generation", "\"%s\" is no memory type known here."
                    .formatted(match.group().strip()), "DDR, DDR2, DDR3, DDR4, DDR5 or an LPDDR from 3 on",
                    "Look at the label of the module."));
        }
        if (("L".equals(match.group(3)) || "U".equals(match.group(3))) && "3".equals(digit) && !lowPower) {
            LabelName.lowVoltage(match.group(3), facts);
        }
        if (match.group(4) != null) {
            facts.rate(new RawRate(Integer.parseInt(match.group(4)), "MHZ".equals(match.group(5))));
        }
    }

    private static void oldGeneration(String word, Facts facts) {
        switch (word) {
            case "SDR" -> facts.generation(Generation.SDR);
            case "SDRAM" -> {
                if (facts.generation().isEmpty()) {
                    facts.generation(Generation.SDR);
                }
            }
            case "RDRAM", "RAMBUS" -> facts.generation(Generation.RDRAM);
            case "EDO" -> facts.generation(Generation.EDO);
            case "FPM" -> facts.generation(Generation.FPM);
            default -> throw new IllegalArgumentException("The word %s must name a generation.".formatted(word));
        }
    }

    private static Optional<Generation> byName(String name) {
        for (Generation generation : Generation.values()) {
            if (generation.text().equals(name)) {
                return Optional.of(generation);
            }
        }
        return Optional.empty();
    }

    private static boolean voltage(MatchResult match, Facts facts) {
        String fraction = match.group(2) == null ? "" : match.group(2);
        int millivolts = Integer.parseInt(match.group(1)) * 1000 + Integer.parseInt((fraction + "000").substring(0, 3));
        if (millivolts < 1000) {
            return false;
        }
        facts.voltage(Voltage.ofMillivolts(millivolts));
        return true;
    }

    private static boolean loneRate(MatchResult match, Facts facts) {
        int number = Integer.parseInt(match.group(1));
        boolean grade = Grades.near(facts.generation(), number).isPresent();
        if (grade) {
            facts.rate(new RawRate(number, false));
        }
        return grade;
    }
}
