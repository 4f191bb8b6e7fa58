package slotledger.firmware.smbios;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Details of a device's technology: DSP0134, section 7.18.3 (structure type 17, word 13h).
 *
 * @param traits those whose bit is set
 */
public record TypeDetail(Set<Trait> traits) {

    /** One bit each, from bit 1 on in the order of the standard. */
    public enum Trait {
        OTHER("Other"),
        UNKNOWN("Unknown"),
        FAST_PAGED("Fast-paged"),
        STATIC_COLUMN("Static Column"),
        PSEUDO_STATIC("Pseudo-static"),
        RAMBUS("RAMBus"),
        SYNCHRONOUS("Synchronous"),
        CMOS("CMOS"),
        EDO("EDO"),
        WINDOW_DRAM("Window DRAM"),
        CACHE_DRAM("Cache DRAM"),
        NON_VOLATILE("Non-Volatile"),
        REGISTERED("Registered (Buffered)"),
        UNBUFFERED("Unbuffered (Unregistered)"),
        LRDIMM("LRDIMM");

        private final String text;

        Trait(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public TypeDetail {
        traits = Set.copyOf(traits);
    }

    public static TypeDetail of(int bits) {
        Set<Trait> traits = EnumSet.noneOf(Trait.class);
        for (Trait trait : Trait.values()) {
            if ((bits & 2 << trait.ordinal()) != 0) {
                traits.add(trait);
            }
        }
        return new TypeDetail(traits);
    }

    public boolean has(Trait trait) {
        return traits.contains(trait);
    }

    /** In the standard's order; "None" where no bit is set. */
    @Override
    public String toString() {
        return traits.isEmpty() ? "None"
                : traits.stream().sorted().map(Trait::text).collect(Collectors.joining(" "));
    }
}
