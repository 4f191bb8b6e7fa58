package slotledger.rules.kit;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import slotledger.model.family.Families;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Voltage;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/**
 * What follows of a module from what is known of it.
 *
 * <p>Chip arithmetic: a rank is 64 data bits wide, so it has 64 / chip width chips (without those for check bits), and
 * capacity = chip size x chips a rank x ranks (JESD21-C, module specifications; check bits don't count). SIMMs and
 * 100-pin DIMMs have ranks of 8 or 32 data bits.
 */
public final class ModuleFacts {

    private static final Set<Form> NEVER_CHECKED = EnumSet.of(Form.MICRO_DIMM, Form.LPCAMM2);
    private static final Optional<Boolean> CARRIED = Optional.of(true);
    private static final Optional<Boolean> NOT_CARRIED = Optional.of(false);

    private static final int DATA_BITS = 64;
    private static final int KIB_PER_MBIT = 128;
    private static final ChipWidth[] WIDTHS = {ChipWidth.X4, ChipWidth.X8, ChipWidth.X16};
    private static final Optional<Buffering> UNBUFFERED = Optional.of(Buffering.UNBUFFERED);
    private static final Set<Voltage> V1_35 = Set.of(Voltage.ofMillivolts(1350));
    private static final Set<Voltage> V1_35_OR_V1_5 = Set.of(Voltage.ofMillivolts(1350), Voltage.ofMillivolts(1500));

    private ModuleFacts() {
    }

    /**
     * Whether memory of this generation is read page by page, without a clock. FPM and EDO go into the same sockets,
     * may stand for each other, and carry parity bits rather than ECC, so that their law has rules of its own.
     */
    public static boolean isPageMode(Generation generation) {
        return generation == Generation.FPM || generation == Generation.EDO;
    }

    /**
     * Known, or known from what can't be otherwise: registers come with check bits, and only DIMMs and Mini-DIMMs have
     * a register (registered SO-DIMMs are so rare that they are labelled as such).
     */
    public static Optional<Buffering> buffering(ModuleKind kind) {
        if (kind.buffering().isPresent()) {
            return kind.buffering();
        }
        boolean plain = kind.errorCheck().isPresent() && kind.errorCheck().get() == ErrorCheck.NONE;
        boolean small = kind.form().isPresent() && kind.form().get() != Form.DIMM
                && kind.form().get() != Form.MINI_DIMM;
        return plain || small ? UNBUFFERED : Optional.empty();
    }

    /**
     * Whether the module carries check bits; known, or known because it is registered or because its form has none
     * (table of families). Empty means unknown.
     */
    public static Optional<Boolean> checkBits(ModuleKind kind) {
        if (kind.errorCheck().isPresent()) {
            return Optional.of(kind.errorCheck().get() != ErrorCheck.NONE);
        }
        if (kind.buffering().isPresent() && kind.buffering().get() != Buffering.UNBUFFERED) {
            return CARRIED;
        }
        return kind.form().isPresent() && NEVER_CHECKED.contains(kind.form().get()) ? NOT_CARRIED : Optional.empty();
    }

    /**
     * What the module surely works at: known, or that of every family of its generation. All DDR3 works at 1.5 V,
     * modules for 1.35 V too (System x3550 M4 guide, page 46: "1.35 V (1.5 V operable)" for the label PC3L).
     */
    public static Set<Voltage> voltages(ModuleKind kind) {
        if (kind.voltages().equals(V1_35) && kind.generation().filter(each -> each == Generation.DDR3).isPresent()) {
            return V1_35_OR_V1_5;
        }
        return !kind.voltages().isEmpty() || kind.generation().isEmpty()
                ? kind.voltages()
                : Families.sureVoltages(kind.generation().get());
    }

    /** Whether the module may work at more voltages than is known. */
    public static boolean mayWorkAtMore(ModuleKind kind) {
        return kind.voltages().isEmpty() && kind.generation().filter(each -> each == Generation.DDR3).isPresent();
    }

    /** DDR-400 is specified at 2.6 V and works in slots of 2.5 V (JESD79, from memory), so 100 mV don't count. */
    public static boolean same(Voltage one, Voltage other) {
        return one.equals(other)
                || one.millivolts() >= 2500 && other.millivolts() >= 2500
                        && Math.abs(one.millivolts() - other.millivolts()) <= 100;
    }

    public static boolean anySame(Set<Voltage> some, Set<Voltage> others) {
        for (Voltage one : some) {
            for (Voltage other : others) {
                if (same(one, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Data bits of one memory channel the module is on: a 232-pin RIMM and a 128-bit CAMM2 carry two of them. A SIMM
     * is part of a bank, so its own bits are meant.
     */
    public static int channelBits(ModuleKind kind) {
        Form form = kind.form().orElse(Form.DIMM);
        return switch (form) {
            case SIMM_30 -> 8;
            case RIMM_184, RIMM_232 -> 16;
            case SIMM_72, DIMM_100, SO_DIMM_72 -> 32;
            case DIMM, SO_DIMM, MICRO_DIMM, MINI_DIMM, CAMM2, LPCAMM2, SOLDERED -> DATA_BITS;
        };
    }

    /**
     * Data bits of a rank of the module; 0 where the form doesn't fix them: a CAMM2 has 64 or 128, and the chips of a
     * RIMM are addressed alone.
     */
    public static int rankBits(ModuleKind kind) {
        Form form = kind.form().orElse(Form.DIMM);
        return switch (form) {
            case RIMM_184, RIMM_232, CAMM2, LPCAMM2, SOLDERED -> 0;
            case SIMM_30, SIMM_72, DIMM, DIMM_100, SO_DIMM, SO_DIMM_72, MICRO_DIMM, MINI_DIMM -> channelBits(kind);
        };
    }

    /** Chips a rank of a 64-bit module without those for check bits. */
    public static int chipsPerRank(ChipWidth width) {
        return chips(DATA_BITS, width);
    }

    private static int chips(int bits, ChipWidth width) {
        return Math.max(1, bits / dataBits(width));
    }

    /** Data bits of a chip: of 9 or 18 bits one or two are check bits. */
    private static int dataBits(ChipWidth width) {
        return switch (width) {
            case X9 -> 8;
            case X18 -> 16;
            case X1, X4, X8, X16, X32 -> width.bits();
        };
    }

    /** What chips, ranks and width make of such a module, in KiB; 0 where its form doesn't fix the bits of a rank. */
    public static long product(ModuleKind kind, int ranks, ChipWidth width, ChipSize size) {
        int bits = rankBits(kind);
        return bits == 0 ? 0 : (long) ranks * chips(bits, width) * size.mebibits() * KIB_PER_MBIT;
    }

    /** What chips, ranks and width make of a 64-bit module, in KiB. */
    public static long product(int ranks, ChipWidth width, ChipSize size) {
        return (long) ranks * chipsPerRank(width) * size.mebibits() * KIB_PER_MBIT;
    }

    /** Known, or derived from ranks and width where that is sure. */
    public static Optional<ChipSize> chipSize(ModuleKind kind) {
        if (kind.chipSize().isPresent() || kind.ranks().isEmpty() || kind.chipWidth().isEmpty() || mayBeStacked(kind)) {
            return kind.chipSize();
        }
        return chipSize(kind, kind.ranks().getAsInt(), kind.chipWidth().get());
    }

    /** The chip size that such ranks and width would need; empty where it is no whole number of mebibits. */
    public static Optional<ChipSize> chipSize(ModuleKind kind, int ranks, ChipWidth width) {
        int bits = rankBits(kind);
        if (bits == 0) {
            return Optional.empty();
        }
        long one = (long) ranks * chips(bits, width) * kind.stack().orElse(1) * KIB_PER_MBIT;
        long mebibits = kind.capacity().kibibytes() / one;
        return kind.capacity().kibibytes() % one == 0 && mebibits > 0 && mebibits <= Integer.MAX_VALUE
                ? Optional.of(ChipSize.ofMbit((int) mebibits))
                : Optional.empty();
    }

    /** Known, or derived from chip size and width where that is sure. */
    public static OptionalInt ranks(ModuleKind kind) {
        if (kind.ranks().isPresent() || kind.chipSize().isEmpty() || kind.chipWidth().isEmpty() || mayBeStacked(kind)) {
            return kind.ranks();
        }
        long rank = product(kind, 1, kind.chipWidth().get(), kind.chipSize().get());
        if (rank == 0) {
            return OptionalInt.empty();
        }
        rank *= kind.stack().orElse(1);
        long ranks = kind.capacity().kibibytes() / rank;
        return kind.capacity().kibibytes() % rank == 0 && ranks >= 1 && ranks <= mostRanks(kind)
                ? OptionalInt.of((int) ranks)
                : OptionalInt.empty();
    }

    /** Known, or derived from ranks and chip size where that is sure. */
    public static Optional<ChipWidth> chipWidth(ModuleKind kind) {
        if (kind.chipWidth().isPresent() || kind.ranks().isEmpty() || kind.chipSize().isEmpty() || mayBeStacked(kind)) {
            return kind.chipWidth();
        }
        for (ChipWidth width : WIDTHS) {
            long product = product(kind, kind.ranks().getAsInt(), width, kind.chipSize().get());
            if (product * kind.stack().orElse(1) == kind.capacity().kibibytes()) {
                return Optional.of(width);
            }
        }
        return Optional.empty();
    }

    /**
     * Whether it is open how many dies a chip has: chips with several give registered DDR4 and DDR5 modules more than
     * ranks and width say.
     */
    public static boolean mayBeStacked(ModuleKind kind) {
        if (kind.stack().isPresent()) {
            return false;
        }
        boolean late = kind.generation().filter(each -> each.compareTo(Generation.DDR4) < 0).isEmpty();
        boolean plain = buffering(kind).filter(each -> each == Buffering.UNBUFFERED).isPresent();
        return late && !plain;
    }

    /** The most ranks of a module of this buffering: 2 unbuffered, 4 registered, 8 load-reduced (from memory). */
    public static int mostRanks(ModuleKind kind) {
        Optional<Buffering> buffering = buffering(kind);
        if (buffering.isEmpty()) {
            return 8;
        }
        return switch (buffering.get()) {
            case UNBUFFERED -> 2;
            case REGISTERED, FULLY_BUFFERED -> 4;
            case LOAD_REDUCED -> 8;
        };
    }

    /** No known fact differs; what is unknown of one can't make a difference known. */
    public static boolean areAlike(ModuleKind one, ModuleKind other) {
        return one.equals(other) || one.capacity().equals(other.capacity())
                && agree(one.rate(), other.rate())
                && agree(one.errorCheck(), other.errorCheck())
                && agree(one.buffering(), other.buffering())
                && agree(one.chipWidth(), other.chipWidth())
                && (one.ranks().isEmpty() || other.ranks().isEmpty() || one.ranks().equals(other.ranks()));
    }

    private static boolean agree(Optional<?> one, Optional<?> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    /** The different capacities of modules in sockets the board speaks of. */
    public static Set<Capacity> capacities(Situation situation) {
        Set<Capacity> capacities = new TreeSet<>();
        for (Placed module : situation.described()) {
            capacities.add(module.kind().capacity());
        }
        return capacities;
    }
}
