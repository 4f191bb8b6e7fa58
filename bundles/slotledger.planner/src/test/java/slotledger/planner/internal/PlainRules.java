package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.board.Takes;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/**
 * Rules that are easy to follow by hand: generation and largest module of each slot, the largest total, sets of equal
 * modules, and an unknown for every module without a rate.
 */
final class PlainRules implements MemoryRules {

    int questions;

    @Override
    public Weight weigh(Setup setup) {
        questions++;
        return reasons(setup).stream().map(Reason::weight).reduce(Weight.PASSES, Weight::worse);
    }

    @Override
    public Operation operate(Setup setup) {
        Map<String, Long> channels = new LinkedHashMap<>();
        Optional<Rate> rate = Optional.empty();
        for (Slot slot : setup.board().slots()) {
            long size = setup.population().in(slot.label()).capacity().kibibytes();
            if (size > 0) {
                channels.merge(slot.channel(), size, Long::sum);
                Optional<Rate> own = setup.population().in(slot.label()).module().flatMap(ModuleKind::rate);
                rate = rate.isEmpty() ? own : own.isEmpty() ? rate : Optional.of(rate.get().min(own.get()));
            }
        }
        long total = channels.values().stream().mapToLong(Long::longValue).sum();
        long together = channels.values().stream().mapToLong(Long::longValue).min().orElse(0) * channels.size();
        Capacity all = Capacity.ofKiB(total);
        ChannelMode mode = new ChannelMode(channels.size(), Capacity.ofKiB(together), Capacity.ofKiB(total - together));
        return new Operation(all, all, all, mode, rate, "", new Bandwidth(0), false);
    }

    @Override
    public Arithmetic workOut(Setup setup) {
        return new Arithmetic(List.of(), List.of(), List.of());
    }

    @Override
    public Verdict judge(Setup setup) {
        List<Reason> reasons = reasons(setup);
        Weight worst = reasons.stream().map(Reason::weight).reduce(Weight.PASSES, Weight::worse);
        return new Verdict(worst, operate(setup), reasons);
    }

    private static List<Reason> reasons(Setup setup) {
        Board board = setup.board();
        List<Reason> reasons = new ArrayList<>();
        List<ModuleKind> modules = new ArrayList<>();
        for (Slot slot : board.sockets()) {
            setup.population().in(slot.label()).module().ifPresent(kind -> {
                modules.add(kind);
                Takes takes = board.takes().get(0);
                if (!kind.generation().equals(Optional.of(takes.generation()))) {
                    reasons.add(reason(Weight.BLOCKS, "wrong generation", slot));
                }
                if (!takes.largestModule().orElse(kind.capacity()).atLeast(kind.capacity())) {
                    reasons.add(reason(Weight.BLOCKS, "module too large", slot));
                }
                if (kind.rate().isEmpty()) {
                    reasons.add(reason(Weight.UNKNOWN, "rate not known", slot));
                }
            });
        }
        Capacity total = setup.population().total();
        if (!board.largestTotal().orElse(total).atLeast(total)) {
            reasons.add(new Reason("total", Weight.BLOCKS, total + " is more than the board takes", List.of(),
                    Source.of(Ground.PRACTICE), "", List.of(), Optional.empty()));
        }
        if (!modules.isEmpty() && modules.size() % board.fill().setSize() != 0) {
            reasons.add(new Reason("sets", Weight.BLOCKS, "modules come in sets", List.of(),
                    Source.of(Ground.PRACTICE), "", List.of(), Optional.empty()));
        }
        return reasons;
    }

    private static Reason reason(Weight weight, String sentence, Slot slot) {
        return new Reason("plain", weight, sentence, List.of(slot.label()), Source.of(Ground.PRACTICE),
                "Look at the module.", List.of(), Optional.empty());
    }

}
