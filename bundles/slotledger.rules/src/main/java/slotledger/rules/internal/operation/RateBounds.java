package slotledger.rules.internal.operation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.board.FillRow;
import slotledger.model.board.Processor;
import slotledger.model.board.RateLimit;
import slotledger.model.module.Buffering;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;
import slotledger.model.verdict.Arithmetic.BoundBy;
import slotledger.rules.internal.operation.Bounds.Why;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Volts;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/**
 * All that bounds the rate: the modules, the processor, the board and the printed fill row ("everything runs at the
 * slowest common speed": Intel 3rd generation Core datasheet 2.1.4, and makers' guides).
 */
final class RateBounds {

    private RateBounds() {
    }

    static void modules(Situation situation, Bounds bounds) {
        for (Placed module : situation.modules()) {
            if (module.kind().rate().isPresent()) {
                bounds.sure(module.kind().rate().get(),
                        () -> new Why(BoundBy.MODULE, module + " is rated for that."));
            } else {
                bounds.unrated(module);
            }
        }
    }

    /** What comes from anything but the modules' own ratings. */
    static void others(Situation situation, Bounds bounds) {
        processor(situation, bounds);
        if (!situation.board().rateLimits().isEmpty()) {
            for (int channel = 0; channel < situation.board().channels().size(); channel++) {
                channel(situation, situation.inChannel(channel), bounds);
            }
        }
        for (FillRow row : situation.matchingRows()) {
            if (row.fastest().isPresent()) {
                bounds.sure(row.fastest().get(),
                        () -> new Why(BoundBy.FILL_TABLE, "The fill table prints it for the slots filled."));
            }
        }
    }

    private static void processor(Situation situation, Bounds bounds) {
        Optional<Processor> known = situation.setup().processor();
        if (known.isPresent()) {
            if (known.get().fastest().isPresent()) {
                bounds.sure(known.get().fastest().get(), () -> new Why(BoundBy.PROCESSOR,
                        "The processor (" + known.get().name() + ") runs memory no faster."));
            }
            return;
        }
        Rate highest = null;
        boolean all = true;
        for (Processor each : situation.board().processors()) {
            all &= each.fastest().isPresent();
            if (each.fastest().isPresent()) {
                Rate rate = each.fastest().get();
                highest = highest == null || rate.compareTo(highest) > 0 ? rate : highest;
                bounds.maybe(rate, () -> new Why(BoundBy.PROCESSOR, "which processor is installed"));
            }
        }
        if (all && highest != null) {
            bounds.sure(highest,
                    () -> new Why(BoundBy.PROCESSOR, "No processor of this board runs memory faster."));
        }
    }

    private static void channel(Situation situation, List<Placed> modules, Bounds bounds) {
        if (modules.isEmpty()) {
            return;
        }
        List<RateLimit> limits = situation.board().rateLimits();
        for (int i = 0; i < limits.size(); i++) {
            RateLimit limit = limits.get(i);
            if (limit.modulesPerChannel().isPresent() && limit.modulesPerChannel().getAsInt() != modules.size()) {
                continue;
            }
            Boolean ranks = ranksHold(limit.ranks(), modules);
            Boolean buffering = bufferingHolds(limit.buffering(), modules);
            Boolean voltage = voltageHolds(limit.voltage(), situation);
            if (Boolean.FALSE.equals(ranks) || Boolean.FALSE.equals(buffering) || Boolean.FALSE.equals(voltage)) {
                continue;
            }
            if (ranks != null && buffering != null && voltage != null) {
                bounds.sure(limit.fastest(), () -> new Why(by(limit, limits), RateText.isPlain(limit)
                        ? "The board runs memory no faster."
                        : "The board runs no faster with " + RateText.of(limit, modules.size()) + " in channel "
                                + modules.get(0).slot().channel() + "."));
            } else {
                bounds.maybe(limit.fastest(), () -> new Why(by(limit, limits),
                        (ranks == null ? "the ranks" : buffering == null ? "the buffering" : "the voltage")
                                + " of the modules in channel " + modules.get(0).slot().channel()));
            }
        }
    }

    /**
     * Which condition of a printed limit lowers the rate: the one without which the same table prints a faster rate;
     * where no other line tells, the first condition the line has.
     */
    private static BoundBy by(RateLimit limit, List<RateLimit> limits) {
        for (BoundBy by : List.of(BoundBy.MODULES_PER_CHANNEL, BoundBy.RANKS, BoundBy.VOLTAGE)) {
            for (int i = 0; i < limits.size(); i++) {
                RateLimit other = limits.get(i);
                if (other.fastest().compareTo(limit.fastest()) > 0 && differOnlyIn(by, limit, other)) {
                    return by;
                }
            }
        }
        return limit.modulesPerChannel().isPresent() ? BoundBy.MODULES_PER_CHANNEL
                : limit.ranks().isPresent() ? BoundBy.RANKS
                : limit.voltage().isPresent() ? BoundBy.VOLTAGE : BoundBy.BOARD;
    }

    private static boolean differOnlyIn(BoundBy by, RateLimit one, RateLimit other) {
        return one.buffering().equals(other.buffering())
                && (by == BoundBy.MODULES_PER_CHANNEL || one.modulesPerChannel().equals(other.modulesPerChannel()))
                && (by == BoundBy.RANKS || one.ranks().equals(other.ranks()))
                && (by == BoundBy.VOLTAGE || one.voltage().equals(other.voltage()));
    }

    private static Boolean ranksHold(OptionalInt wanted, List<Placed> modules) {
        if (wanted.isEmpty()) {
            return true;
        }
        int most = 0;
        int possible = 0;
        for (Placed module : modules) {
            OptionalInt ranks = ModuleFacts.ranks(module.kind());
            most = Math.max(most, ranks.orElse(1));
            possible = Math.max(possible, ranks.orElse(ModuleFacts.mostRanks(module.kind())));
        }
        int ranks = wanted.getAsInt();
        return most == possible ? (Boolean) (most == ranks) : ranks < most || ranks > possible ? Boolean.FALSE : null;
    }

    private static Boolean bufferingHolds(Optional<Buffering> wanted, List<Placed> modules) {
        if (wanted.isEmpty()) {
            return true;
        }
        for (Placed module : modules) {
            Optional<Buffering> buffering = ModuleFacts.buffering(module.kind());
            if (buffering.isPresent()) {
                return buffering.get() == wanted.get();
            }
        }
        return null;
    }

    private static Boolean voltageHolds(Optional<Voltage> wanted, Situation situation) {
        if (wanted.isEmpty()) {
            return true;
        }
        Optional<Voltage> running = Volts.running(situation);
        return running.isEmpty() ? null : (Boolean) ModuleFacts.same(running.get(), wanted.get());
    }
}
