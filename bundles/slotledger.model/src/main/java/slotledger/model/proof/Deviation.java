package slotledger.model.proof;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;

/**
 * One thing that is other than planned after the work.
 *
 * @param machine where
 * @param kind    what is the matter
 * @param where   slot label; empty where it is about the whole machine
 * @param planned what was planned
 * @param found   what was found
 * @param repair  the cheapest thing that would put it right; empty where the causes must be looked for first
 */
public record Deviation(AssetTag machine, Kind kind, String where, String planned, String found, String repair) {

    public Deviation {
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(planned, "planned");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(repair, "repair");
    }

    /**
     * Why something may be so.
     *
     * @param text   what to look at
     * @param source who says so
     */
    public record Cause(String text, String source) {
        @Override
        public String toString() {
            return text + " [" + source + "]";
        }
    }

    private static final String PRACTICE = "common practice, no source";

    /** What can be the matter, each with its likely causes in order of effort. */
    public enum Kind {
        NOT_DONE("not done", List.of(
                new Cause("The machine was passed over, or its job was ticked for another.", PRACTICE),
                new Cause("The inventory was taken before the work, or is a copy of the earlier one.", PRACTICE))),
        MISSING("memory is missing", List.of(
                new Cause("The module is not seated: power off, unplug, press it in until the latches close.",
                        PRACTICE),
                new Cause("Try one module at a time, and each in a slot that is known to work.", PRACTICE),
                new Cause("Firmware is older than the module: update it, then load its defaults.", PRACTICE),
                new Cause("The slot is dead; some are found only when a module is added.",
                        "public account of a school upgrade, 2008"),
                new Cause("The chips are larger than the controller knows: it sees half of the module or nothing.",
                        "O'Reilly, PC Hardware in a Nutshell, 3rd edition, chapter 5.4"),
                new Cause("The module is dead: test it alone in another machine, then claim it.", PRACTICE))),
        OTHER_MODULE("another module than planned", List.of(
                new Cause("Two bags were mixed up: look at the bags of the same round.", PRACTICE),
                new Cause("Somebody moved modules between machines afterwards.", "The Register, 2024-07-15"),
                new Cause("The wrong part was delivered and not noticed at receipt.", "a public account of a small "
                        + "office, which got the wrong part twice"))),
        WRONG_SLOT("the planned modules, in other slots", List.of(
                new Cause("Labels on the board differ from the names that firmware uses.",
                        "memtest86plus, issue 481"),
                new Cause("The modules were put in another order.", PRACTICE))),
        RATE("runs slower than planned", List.of(
                new Cause("Firmware still has a rate set by hand: set memory to automatic or load defaults.", PRACTICE),
                new Cause("One slower module is left in: all run at the slowest common rate.",
                        "Intel, 3rd generation Core mobile datasheet, volume 1, 2.1.4"),
                new Cause("Two modules share a channel that runs slower then; look at the board's table.",
                        "System x3650 M5 guide: three modules in a channel force 1600 MT/s"),
                new Cause("The processor's limit is lower than the board's.", "ASUS TUF B360 manual: 2666 MT/s"),
                new Cause("The module's data says more than its chips can do: compare label and chips.",
                        "collection of module images mixa3607, a module with false data"))),
        MODE("fewer channels run together than planned", List.of(
                new Cause("A module is not counted: compare the total first.", PRACTICE),
                new Cause("Modules stand in slots of one channel: go by the board's map, never by slot names.",
                        "HP hardware reference guides, whose maps differ between models"),
                new Cause("The channels hold different totals; the smaller one sets what runs together.",
                        "HP hardware reference guide; Intel 3rd generation Core mobile datasheet, 2.1.3"))),
        ECC("errors are not checked", List.of(
                new Cause("ECC is switched off in firmware setup; the operating system's error driver tells, the text "
                        + "of firmware alone is no proof.", "Linux EDAC; asus-wmi-sensors, issue 6"),
                new Cause("One module without ECC is among them.", PRACTICE),
                new Cause("Board or processor does not correct errors, though modules would.", PRACTICE))),
        REMAPPED("memory is there, but not usable", List.of(
                new Cause("Graphics in the processor keeps a share: set it lower in firmware setup.", PRACTICE),
                new Cause("Memory above 4 GB is not remapped: switch remapping on in firmware setup.", PRACTICE),
                new Cause("Mirroring or sparing is on.", "System x3550 M5 guide: mirroring halves what is usable"),
                new Cause("A 32-bit operating system uses less.", "Microsoft, memory limits of Windows releases"))),
        SERIAL("not the module that was put in", List.of(
                new Cause("A serial number was typed wrongly: read it again.", PRACTICE),
                new Cause("Modules of two machines were swapped: serial numbers alone tell modules of one part apart.",
                        "linuxhw/DMI, counted: 15 modules of one part in one machine differ by it only")));

        private final String text;
        private final List<Cause> causes;

        Kind(String text, List<Cause> causes) {
            this.text = text;
            this.causes = causes;
        }

        public String text() {
            return text;
        }

        /** In order of effort, the least first. */
        public List<Cause> causes() {
            return causes;
        }
    }
}
