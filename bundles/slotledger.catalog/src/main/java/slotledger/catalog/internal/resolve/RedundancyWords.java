package slotledger.catalog.internal.resolve;

import java.util.Map;
import slotledger.catalog.internal.match.Names;
import slotledger.model.board.Redundancy;
import slotledger.model.observed.ObservedMachine;

/** What the words of a firmware setup say about memory that is kept back against errors. */
final class RedundancyWords {

    /** Common practice: words of firmware menus and of people, without "memory", "mode" and the like. */
    private static final Map<String, Redundancy> WORDS = Map.ofEntries(
            Map.entry("", Redundancy.NONE),
            Map.entry("none", Redundancy.NONE),
            Map.entry("no", Redundancy.NONE),
            Map.entry("off", Redundancy.NONE),
            Map.entry("disabled", Redundancy.NONE),
            Map.entry("normal", Redundancy.NONE),
            Map.entry("standard", Redundancy.NONE),
            Map.entry("independent", Redundancy.NONE),
            Map.entry("mirrored", Redundancy.MIRRORED),
            Map.entry("mirror", Redundancy.MIRRORED),
            Map.entry("mirroring", Redundancy.MIRRORED),
            Map.entry("spare", Redundancy.SPARED),
            Map.entry("spared", Redundancy.SPARED),
            Map.entry("sparing", Redundancy.SPARED),
            Map.entry("rankspare", Redundancy.SPARED),
            Map.entry("ranksparing", Redundancy.SPARED),
            Map.entry("onlinespare", Redundancy.SPARED));

    private RedundancyWords() {
    }

    static Redundancy read(ObservedMachine machine, Remarks remarks) {
        String written = machine.redundancy();
        Redundancy known = WORDS.get(Names.normalised(written).replaceAll("memory|mode|channels?", ""));
        if (known == null) {
            remarks.warning("memory-mode-unknown", written,
                    "It isn't known what this setting keeps back; all of the memory was taken to be usable.",
                    "independent, mirrored or spare",
                    "Look the setting up in the firmware setup. If it is one of the three, write that word; if not,"
                            + " plan this machine by hand.");
            return Redundancy.NONE;
        }
        return known;
    }
}
