package slotledger.intake.internal.value;

import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.unit.AccessTime;

/**
 * What follows the number in a module's name: letters, timings, revisions, raw card. DDR3: System x3550 M4 guide, page
 * 46; the rest from memory of JESD21-C 4.20 and 4.5 and JESD401.
 */
final class LabelTail {

    private static final Pattern PIECE = Pattern.compile("[A-Z0-9]+");
    private static final Pattern TYPE_AND_CARD = Pattern.compile("([A-Z])([A-Z]\\d{1,2})?");
    private static final Set<String> DDR4_BINS = Set.of("J", "K", "L", "M", "N", "P", "R", "S", "T", "U", "V", "W", "Y",
            "AA", "AB", "AC");
    private static final Set<String> DDR5_BINS = Set.of("A", "AN", "B", "BN", "C");
    private static final int LARGEST_RIMM_TIME = 60;

    private final String letters;
    private final int lettersAt;
    private final List<Piece> pieces;
    private final Facts facts;

    /** A part between dashes, and where it stands in the text. */
    private record Piece(String text, int at) {

        boolean isNumber() {
            return text.matches("\\d+");
        }
    }

    LabelTail(MatchResult match, Facts facts, Remaining text) {
        letters = match.group(4);
        lettersAt = text.place(Math.min(match.start(4), match.end() - 1));
        Matcher each = PIECE.matcher(match.group(5));
        pieces = each.results()
                .map(piece -> new Piece(piece.group(), text.place(match.start(5) + piece.start()))).toList();
        this.facts = facts;
    }

    /** SDR to DDR3: the letter of the module's type at once, then timings, revision, raw card. */
    void typeThenTimings(Generation generation) {
        if (!letters.isEmpty()) {
            type(letters, lettersAt, generation);
        }
        boolean timings = false;
        for (Piece piece : pieces) {
            if (piece.isNumber() && !timings) {
                latency(piece.text(), generation);
                timings = true;
            } else if (!piece.isNumber() && piece.text().length() == 1 && letters.isEmpty()) {
                type(piece.text(), piece.at(), generation);
            } else {
                facts.tell(piece.isNumber() ? "revision " + piece.text() : "raw card " + piece.text());
            }
        }
    }

    /** DDR4 and DDR5: the speed bin at once, then type with raw card, then revision. */
    void binThenType(Generation generation, boolean bandwidthName) {
        boolean typed = false;
        if (bandwidthName && pieces.isEmpty() && !letters.isEmpty()) {
            type(letters, lettersAt, generation);
            return;
        }
        if (!letters.isEmpty()) {
            bin(generation);
        }
        for (Piece piece : pieces) {
            Matcher type = TYPE_AND_CARD.matcher(piece.text());
            if (piece.text().equals("XT") || piece.text().equals("NT")) {
                facts.tell("temperature grade " + piece.text());
            } else if (!typed && type.matches()) {
                type(type.group(1), piece.at(), generation);
                if (type.group(2) != null) {
                    facts.tell("raw card " + type.group(2));
                }
                typed = true;
            } else if (piece.text().equals("EC4") || piece.text().equals("EC8")) {
                facts.errorCheck(ErrorCheck.ECC);
                facts.checkBits(piece.text().charAt(2) - '0');
            } else {
                facts.tell((piece.isNumber() ? "revision " : "mark of the maker ") + piece.text());
            }
        }
    }

    /** RDRAM: 45 | 40 | 32P. */
    void accessTime() {
        if (!letters.isEmpty()) {
            unknownLetters(letters, lettersAt, "none after the rate of an RDRAM module");
        }
        for (Piece piece : pieces) {
            Matcher time = Pattern.compile("(\\d{2})P?").matcher(piece.text());
            if (time.matches() && Integer.parseInt(time.group(1)) <= LARGEST_RIMM_TIME
                    && Integer.parseInt(time.group(1)) > 0) {
                facts.accessTime(AccessTime.ofNanoseconds(Integer.parseInt(time.group(1))));
            } else {
                facts.doubt(Doubt.note("unknown-access-time", "%s (character %d) is no access time of an RDRAM module."
                        .formatted(piece.text(), piece.at()), "40, 45, 53 or 32", "Look at the label of the module."));
            }
        }
    }

    private void bin(Generation generation) {
        Set<String> known = generation == Generation.DDR4 ? DDR4_BINS : DDR5_BINS;
        if (known.contains(letters)) {
            facts.tell("speed bin " + letters);
        } else {
            unknownLetters(letters, lettersAt, "a speed bin of " + generation.text());
        }
    }

    /** The first digits of the timings: 555 | 09 | 322 | 30331, where 25 means 2.5. */
    private void latency(String digits, Generation generation) {
        String latency = switch (generation) {
            case DDR -> digits.length() > 3 ? digits.substring(0, 2) : digits.substring(0, 1) + "0";
            case DDR3 -> digits.length() > 2 ? digits.substring(0, digits.length() / 3) + "0" : digits + "0";
            default -> digits.substring(0, 1) + "0";
        };
        int tenths = Integer.parseInt(latency);
        if (tenths % 10 == 0 && tenths > 0) {
            facts.casLatency(tenths / 10);
        } else {
            halfLatency(tenths, facts);
        }
    }

    /** The model counts whole cycles, so that half ones are said and left out. */
    static void halfLatency(int tenths, Facts facts) {
        facts.tell("CAS latency %d.%d".formatted(tenths / 10, tenths % 10));
        facts.doubt(Doubt.note("half-latency", "A CAS latency of %d.%d is no whole number of cycles; it was left out."
                .formatted(tenths / 10, tenths % 10), "a whole number of cycles",
                "Compare the latencies of the modules yourself where it matters."));
    }

    private void type(String letter, int at, Generation generation) {
        boolean checked = generation.compareTo(Generation.DDR2) >= 0;
        switch (letter) {
            case "U" -> plain(Form.DIMM, checked);
            case "S" -> plain(Form.SO_DIMM, checked);
            case "E" -> kind(Form.DIMM, Buffering.UNBUFFERED);
            case "R" -> kind(Form.DIMM, Buffering.REGISTERED);
            case "T" -> since(Generation.DDR2, generation, letter, at, Form.SO_DIMM, Buffering.UNBUFFERED);
            case "P" -> since(Generation.DDR2, generation, letter, at, Form.DIMM, Buffering.REGISTERED);
            case "L" -> since(Generation.DDR3, generation, letter, at, Form.DIMM, Buffering.LOAD_REDUCED);
            case "F" -> only(Generation.DDR2, generation, letter, at, () ->
                    kind(Form.DIMM, Buffering.FULLY_BUFFERED));
            case "M" -> only(Generation.DDR2, generation, letter, at, () -> plain(Form.MICRO_DIMM, false));
            default -> unknownLetters(letter, at, "U, E, S, T, R, L or F for the type of the module");
        }
    }

    private void since(Generation first, Generation generation, String letter, int at, Form form,
            Buffering buffering) {
        if (generation.compareTo(first) >= 0) {
            kind(form, buffering);
        } else {
            unknownLetters(letter, at, "a type of module of " + generation.text());
        }
    }

    private void only(Generation wanted, Generation generation, String letter, int at, Runnable use) {
        if (generation == wanted) {
            use.run();
        } else {
            unknownLetters(letter, at, "a type of module of " + generation.text());
        }
    }

    private void plain(Form form, boolean withoutCheckBits) {
        facts.form(form);
        facts.buffering(Buffering.UNBUFFERED);
        if (withoutCheckBits) {
            facts.errorCheck(ErrorCheck.NONE);
        }
    }

    private void kind(Form form, Buffering buffering) {
        facts.form(form);
        facts.buffering(buffering);
        facts.errorCheck(ErrorCheck.ECC);
    }

    private void unknownLetters(String unknown, int at, String expected) {
        facts.tell("not known: " + unknown);
        facts.doubt(Doubt.note("unknown-module-letter",
                "The letter %s (character %d) after the name of the module is not known here.".formatted(unknown, at),
                expected, "Check whether the module is registered or has ECC."));
    }
}
