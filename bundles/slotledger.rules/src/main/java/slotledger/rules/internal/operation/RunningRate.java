package slotledger.rules.internal.operation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import slotledger.model.board.FillRow;
import slotledger.model.board.Processor;
import slotledger.model.board.RateLimit;
import slotledger.model.module.Buffering;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;
import slotledger.rules.kit.FillFacts;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Volts;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/**
 * The rate everything runs at: the lowest of what the modules, the processor, the board and the printed fill row allow
 * ("everything runs at the slowest common speed": Intel 3rd generation Core datasheet 2.1.4, and makers' guides).
 *
 * @param rate the rate; empty means unknown
 * @param why  what set it, or which fact is missing
 */
public record RunningRate(Optional<Rate> rate, String why) {

    public static RunningRate of(Situation situation) {
        if (situation.modules().isEmpty()) {
            return new RunningRate(Optional.empty(), "");
        }
        Search search = new Search();
        modules(situation, search);
        others(situation, search);
        return search.answer();
    }

    /** The lowest limit that comes from anything but the modules' own ratings; empty where there is none. */
    public static Optional<Rate> limitBesidesModules(Situation situation) {
        Search search = new Search();
        others(situation, search);
        return Optional.ofNullable(search.sure);
    }

    private static void modules(Situation situation, Search search) {
        for (Placed module : situation.modules()) {
            if (module.kind().rate().isPresent()) {
                Rate rated = module.kind().rate().get();
                search.sure(rated, () -> "%s is rated for that.".formatted(module));
            } else {
                search.missing("the rating of the module in slot " + module.label());
            }
        }
    }

    private static void others(Situation situation, Search search) {
        processor(situation, search);
        for (int channel = 0; channel < situation.board().channels().size(); channel++) {
            channel(situation, channel, search);
        }
        for (FillRow row : FillFacts.matchingRows(situation)) {
            row.fastest().ifPresent(rate -> search.sure(rate, () -> "The fill table prints it for the slots filled."));
        }
    }

    private static void processor(Situation situation, Search search) {
        Optional<Processor> known = situation.setup().processor();
        if (known.isPresent()) {
            known.get().fastest().ifPresent(rate -> search.sure(rate, () ->
                    "The processor (%s) runs memory no faster.".formatted(known.get().name())));
            return;
        }
        List<Processor> possible = situation.board().processors();
        if (!possible.isEmpty() && possible.stream().allMatch(each -> each.fastest().isPresent())) {
            Rate highest = possible.stream().map(each -> each.fastest().get()).max(Rate::compareTo).orElseThrow();
            search.sure(highest, () -> "No processor of this board runs memory faster.");
        }
        for (Processor processor : possible) {
            processor.fastest().ifPresent(rate -> search.maybe(rate, "which processor is installed"));
        }
    }

    private static void channel(Situation situation, int channel, Search search) {
        List<Placed> modules = situation.inChannel(channel);
        if (modules.isEmpty() || situation.board().rateLimits().isEmpty()) {
            return;
        }
        for (RateLimit limit : situation.board().rateLimits()) {
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
                search.sure(limit.fastest(), () -> "The board runs no faster with %s in channel %s."
                        .formatted(RateText.of(limit, modules.size()), modules.get(0).slot().channel()));
            } else {
                search.maybe(limit.fastest(), (ranks == null ? "the ranks" : buffering == null ? "the buffering"
                        : "the voltage") + " of the modules in channel " + modules.get(0).slot().channel());
            }
        }
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

    /** Keeps the lowest sure limit, and the limits that hold or don't depending on a missing fact. */
    private static final class Search {

        private Rate sure;
        private Supplier<String> why;
        private String missing;
        private final List<Rate> maybes = new ArrayList<>();
        private final List<String> conditions = new ArrayList<>();

        void sure(Rate limit, Supplier<String> sentence) {
            if (sure == null || limit.compareTo(sure) < 0) {
                sure = limit;
                why = sentence;
            }
        }

        void maybe(Rate limit, String condition) {
            maybes.add(limit);
            conditions.add(condition);
        }

        void missing(String fact) {
            missing = missing == null ? fact : missing;
        }

        RunningRate answer() {
            if (missing != null) {
                return new RunningRate(
                        Optional.empty(), "The rate is not known, because " + missing + " is not known.");
            }
            for (int i = 0; i < maybes.size(); i++) {
                if (maybes.get(i).compareTo(sure) < 0) {
                    return new RunningRate(Optional.empty(), "The rate is not known: %s or %s, depending on %s."
                            .formatted(sure, maybes.get(i), conditions.get(i)));
                }
            }
            return new RunningRate(Optional.of(sure), why.get());
        }
    }
}
