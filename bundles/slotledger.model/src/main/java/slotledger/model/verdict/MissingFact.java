package slotledger.model.verdict;

/** A fact that keeps rules from a verdict, and the cheapest way to find it. */
public enum MissingFact {
    GENERATION("the generation of a module", "Read the label: PC or DDR, PC2, PC3 or PC3L, PC4, PC5. On a running "
            + "machine the firmware table lists the type of every module."),
    FORM("the form of a module", "Read the label: PC800 is a 184-pin RIMM, RIMM 3200 a 232-pin one. Else measure it: "
            + "a 72-pin SIMM is about 108 mm long, a DIMM or RIMM 133 mm, a SO-DIMM 68 mm. On a running machine the "
            + "firmware table lists the form of every module."),
    CAPACITY("the capacity of a module", "Read the label; on old modules it is depth x bits, such as 4x36. Else look "
            + "up the part number's data sheet, or the chips' numbers: chip size x chips / 8."),
    CONTENT("what is in a slot", "Correct the cell of the inventory. On a running machine the firmware table lists "
            + "every module; else open the machine and read the label."),
    RANKS("the ranks of a module", "Read the label: 2Rx8 means two ranks. The part number's data sheet says it too."),
    CHIP_WIDTH("the chip width of a module",
            "Read the label: 2Rx8 means x8 chips. Else count the chips of a side and "
            + "look up the part number's data sheet."),
    CHIP_SIZE("the chip size of a module", "Look up the part number's data sheet, or count the chips: capacity x 8 / "
            + "chips without those for check bits."),
    STACK("whether the chips of a module are stacked", "Read the label: 2S2Rx4 or 2S4Rx4 means stacked dies (3DS), "
            + "2Rx4 plain chips. The part number's data sheet says it too."),
    BUFFERING("the buffering of a module", "Read the label: the letter after the rate is U, R, L or F. A registered "
            + "module has one or more long flat chips in the middle."),
    ERROR_CHECK("whether a module has check bits", "Read the label, or count the chips of a rank: nine x8 chips have "
            + "ECC, eight don't."),
    CHECK_BITS("how many check bits a module has", "Read the label: 10x4 or EC8 means 8 check bits a half channel, 9x4 "
            + "or EC4 means 4. Else count the chips."),
    RATE("the rate of a module", "Read the label, such as PC4-2666 or PC3-12800. On a running machine the firmware "
            + "table lists it."),
    LATENCY("the CAS latency of a module", "Read the label, such as CL19 or the letter after the rate; the part "
            + "number's data sheet lists it."),
    VOLTAGE("the voltage of a module", "Read the label: PC3L or 1.35 V means it works at 1.35 V and 1.5 V, PC3 at "
            + "1.5 V only."),
    ACCESS_TIME("the access time of a module", "Read the last digits on its chips: -6 or -60 means 60 ns, -7 or -70 "
            + "means 70 ns."),
    CONTACTS("the metal of the contacts of a module", "Look at them in daylight: gold is yellow, tin is silver grey."),
    PROCESSOR("which processor is installed", "Ask the machine: the system settings name it. No need to open it."),
    PROCESSOR_LIMIT("the memory limits of the processor", "Look up the processor's data sheet."),
    OPERATING_SYSTEM("which operating system runs", "Ask the machine: the system settings name edition and bits."),
    BOARD_FACT("a fact of the board", "Look it up in the board's manual and add it to its board file."),
    FAMILY("the rules for a family of memory", "Install the bundle with the rules of this family.");

    private final String text;
    private final String cheapestWay;

    MissingFact(String text, String cheapestWay) {
        this.text = text;
        this.cheapestWay = cheapestWay;
    }

    public String text() {
        return text;
    }

    /** One or two sentences: how to find it with the least effort. */
    public String cheapestWay() {
        return cheapestWay;
    }
}
