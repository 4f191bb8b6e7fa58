package slotledger.rules.internal.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.board.Processor;
import slotledger.model.board.Redundancy;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Arithmetic.CapacityStep;
import slotledger.rules.Setup;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/** How much of the installed memory counts, step by step. A share kept by hardware is not counted. */
public final class Counting {

    private Counting() {
    }

    /** What processors and chipset surely address of what is installed. */
    public static Capacity addressable(Situation situation) {
        Capacity left = situation.total();
        Optional<Capacity> chipset = situation.board().addressable();
        left = chipset.isPresent() ? left.min(chipset.get()) : left;
        Capacity processors = processors(situation.setup());
        return processors == null ? left : left.min(processors);
    }

    /** What the operating system is offered: what is addressed, without what is kept back against errors. */
    public static Capacity offered(Situation situation) {
        Capacity left = addressable(situation);
        return situation.setup().redundancy() == Redundancy.NONE
                ? left
                : situation.board().terms(situation.setup().redundancy())
                        .map(terms -> left.min(notKept(situation, terms)))
                        .orElse(left);
    }

    /** What the operating system uses of that. */
    public static Capacity usable(Situation situation) {
        Capacity left = offered(situation);
        Capacity most = system(situation);
        return most == null ? left : left.min(most);
    }

    /** What is left of the installed memory once mirroring or sparing took its part. */
    public static Capacity notKept(Situation situation, RedundancyTerms terms) {
        long counted = counted(situation, terms);
        return Capacity.ofKiB(terms.share().isPresent()
                ? counted * terms.share().get().parts() / terms.share().get().of()
                : counted - spare(situation, terms));
    }

    /** What the channels that count hold, in KiB. */
    private static long counted(Situation situation, RedundancyTerms terms) {
        long counted = 0;
        for (int channel = 0; channel < situation.board().channels().size(); channel++) {
            counted += terms.ignoredChannels().contains(situation.board().channels().get(channel).name())
                    ? 0
                    : situation.channelKibibytes(channel);
        }
        return counted;
    }

    /** The largest rank of each channel; a module of unknown ranks is taken for one rank. */
    private static long spare(Situation situation, RedundancyTerms terms) {
        long[] largest = new long[situation.board().channels().size()];
        for (Placed module : situation.modules()) {
            if (!terms.ignoredChannels().contains(module.slot().channel())) {
                OptionalInt ranks = ModuleFacts.ranks(module.kind());
                long rank = module.kind().capacity().kibibytes() / ranks.orElse(1);
                largest[module.channel()] = Math.max(largest[module.channel()], rank);
            }
        }
        long spare = 0;
        for (long rank : largest) {
            spare += rank;
        }
        return spare;
    }

    /** Null where no limit is sure: where it is unknown which of several is installed, the highest one. */
    private static Capacity processors(Setup setup) {
        if (setup.processor().isPresent()) {
            return setup.processor().get().largestTotal().map(each -> each.times(setup.processors())).orElse(null);
        }
        Capacity highest = null;
        for (Processor possible : setup.board().processors()) {
            if (possible.largestTotal().isEmpty()) {
                return null;
            }
            Capacity each = possible.largestTotal().get();
            highest = highest == null || each.atLeast(highest) ? each : highest;
        }
        return highest == null ? null : highest.times(setup.processors());
    }

    private static Capacity system(Situation situation) {
        return situation.setup().operatingSystem().flatMap(name -> SystemLimit.of(name).most()).orElse(null);
    }

    /** From installed to usable, a step for each limit that is known. */
    public static List<CapacityStep> steps(Situation situation) {
        List<CapacityStep> steps = new ArrayList<>();
        Setup setup = situation.setup();
        Capacity left = situation.total();
        int count = situation.modules().size();
        steps.add(new CapacityStep("installed", left,
                count == 1 ? "1 module holds " + left + "." : count + " modules hold " + left + " together."));
        Optional<Capacity> chipset = situation.board().addressable();
        if (chipset.isPresent()) {
            left = left.min(chipset.get());
            steps.add(new CapacityStep("chipset addresses", left,
                    "The chipset addresses up to " + chipset.get() + "."));
        }
        Capacity processors = processors(setup);
        if (processors != null) {
            left = left.min(processors);
            steps.add(new CapacityStep("processor is made for", left, (setup.processors() == 1
                    ? "The processor is made for up to " : setup.processors() + " processors are made for up to ")
                    + processors + "."));
        }
        Optional<RedundancyTerms> terms = situation.board().terms(setup.redundancy());
        if (terms.isPresent()) {
            left = left.min(notKept(situation, terms.get()));
            steps.add(new CapacityStep(setup.redundancy().text(), left, kept(situation, terms.get())));
        }
        Capacity system = system(situation);
        if (system != null) {
            left = left.min(system);
            steps.add(new CapacityStep("operating system uses", left,
                    setup.operatingSystem().orElseThrow() + " uses up to " + system + least(setup, system) + "."));
        }
        return steps;
    }

    /** The limit of the smallest edition that the name may mean, where that is another one. */
    private static String least(Setup setup, Capacity most) {
        return SystemLimit.of(setup.operatingSystem().orElseThrow()).least()
                .filter(least -> !least.equals(most))
                .map(least -> ", or only " + least + ": the name does not say which edition it is")
                .orElse("");
    }

    /** How redundancy counts, with the numbers. */
    public static String kept(Situation situation, RedundancyTerms terms) {
        Capacity counted = Capacity.ofKiB(counted(situation, terms));
        Capacity left = notKept(situation, terms);
        String which = terms.ignoredChannels().isEmpty() ? "" : " in the channels that count";
        return terms.share().isPresent()
                ? "%d of %d parts of the %s%s are usable, which makes %s.".formatted(terms.share().get().parts(),
                        terms.share().get().of(), counted, which, left)
                : "The largest rank of each channel is kept, %s together, so that %s of the %s%s are left.".formatted(
                        counted.minus(left), left, counted, which);
    }
}
