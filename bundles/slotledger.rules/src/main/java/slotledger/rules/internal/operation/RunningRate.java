package slotledger.rules.internal.operation;

import java.util.Optional;
import java.util.function.Supplier;
import slotledger.model.module.Generation;
import slotledger.model.unit.AccessTime;
import slotledger.model.unit.Rate;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/**
 * The rate everything runs at: the lowest of all bounds.
 *
 * @param rate the rate; empty means unknown
 * @param why  what set it, or which fact is missing
 */
public record RunningRate(Optional<Rate> rate, String why) {

    public static RunningRate of(Situation situation) {
        if (situation.modules().isEmpty()) {
            return new RunningRate(Optional.empty(), "");
        }
        Lowest lowest = new Lowest();
        RateBounds.modules(situation, lowest);
        if (lowest.unrated == null) {
            RateBounds.others(situation, lowest);
        }
        return lowest.answer(situation);
    }

    /** The lowest limit that comes from anything but the modules' own ratings; empty where there is none. */
    public static Optional<Rate> limitBesidesModules(Situation situation) {
        Lowest lowest = new Lowest();
        RateBounds.others(situation, lowest);
        return Optional.ofNullable(lowest.sure);
    }

    /** Keeps the lowest sure bound, and the lowest one that hangs on a missing fact. */
    private static final class Lowest implements Bounds {

        private Rate sure;
        private Supplier<Why> why;
        private Rate maybe;
        private Supplier<Why> fact;
        private Placed unrated;

        @Override
        public void sure(Rate rate, Supplier<Why> sentence) {
            if (sure == null || rate.compareTo(sure) < 0) {
                sure = rate;
                why = sentence;
            }
        }

        @Override
        public void maybe(Rate rate, Supplier<Why> missing) {
            if (maybe == null || rate.compareTo(maybe) < 0) {
                maybe = rate;
                fact = missing;
            }
        }

        @Override
        public void unrated(Placed module) {
            unrated = unrated == null ? module : unrated;
        }

        RunningRate answer(Situation situation) {
            if (unrated != null) {
                return new RunningRate(Optional.empty(), withoutRate(unrated)
                        ? accessTimes(situation)
                        : "The rate is not known, because the rating of the module in slot " + unrated.label()
                                + " is not known.");
            }
            if (maybe != null && maybe.compareTo(sure) < 0) {
                return new RunningRate(Optional.empty(), "The rate is not known: " + sure + " or " + maybe
                        + ", depending on " + fact.get().text() + ".");
            }
            return new RunningRate(Optional.of(sure), why.get().text());
        }
    }

    /** Memory without a clock of its own. */
    static boolean withoutRate(Placed module) {
        Generation generation = module.kind().generation().orElse(null);
        return generation == Generation.FPM || generation == Generation.EDO;
    }

    private static String accessTimes(Situation situation) {
        AccessTime slowest = null;
        for (Placed module : situation.modules()) {
            AccessTime own = module.kind().accessTime().orElse(null);
            slowest = own != null && (slowest == null || own.slowerThan(slowest)) ? own : slowest;
        }
        return slowest == null
                ? "FPM and EDO memory has no rate but an access time, which is not known here."
                : "FPM and EDO memory has no rate but an access time; the slowest is " + slowest + ".";
    }
}
