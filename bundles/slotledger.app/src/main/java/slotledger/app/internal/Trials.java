package slotledger.app.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.app.Trial;
import slotledger.model.board.Slot;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.Tryouts;

/** Tries a module kind in the sockets of a machine. */
final class Trials {

    private final MemoryRules rules;
    private final Setup setup;
    private final ModuleKind kind;

    Trials(MemoryRules rules, Fleet fleet, Machine machine, ModuleKind kind) {
        this.rules = rules;
        this.setup = Setup.of(fleet, machine);
        this.kind = kind;
    }

    /** In each socket, then in all at once; sockets for which the same ones must be filled are tried together. */
    List<Trial> all() {
        Map<Choice, List<String>> asked = new LinkedHashMap<>();
        for (Slot socket : setup.board().sockets()) {
            asked.computeIfAbsent(choice(socket.label()), one -> new ArrayList<>()).add(socket.label());
        }
        List<String> sockets = Tryouts.sockets(setup);
        if (sockets.size() > 1) {
            asked.putIfAbsent(new Choice(sockets, true), sockets);
        }
        List<Trial> trials = new ArrayList<>();
        asked.forEach((choice, slots) -> {
            Population population = population(choice);
            trials.add(new Trial(slots, choice.filled, choice.othersStay, population,
                    rules.judge(setup.with(population))));
        });
        return trials;
    }

    /**
     * The socket alone, unless that is blocked: then the fewest sockets with which it isn't, and only if none are
     * found, with everything else taken out.
     */
    private Choice choice(String socket) {
        Choice alone = new Choice(List.of(socket), true);
        if (weigh(alone) != Weight.BLOCKS) {
            return alone;
        }
        return best(socket, true).or(() -> best(socket, false)).orElse(alone);
    }

    private Optional<Choice> best(String socket, boolean othersStay) {
        Choice best = null;
        Weight lightest = Weight.BLOCKS;
        for (Population tryout : Tryouts.of(setup, socket, kind)) {
            List<String> filled = Tryouts.sockets(setup).stream()
                    .filter(label -> tryout.in(label).module().isPresent()).toList();
            Choice choice = new Choice(filled, othersStay);
            Weight weight = weigh(choice);
            if (weight.compareTo(lightest) < 0) {
                best = choice;
                lightest = weight;
            }
        }
        return Optional.ofNullable(best);
    }

    private Weight weigh(Choice choice) {
        return rules.weigh(setup.with(population(choice)));
    }

    private Population population(Choice choice) {
        Population population = choice.othersStay ? setup.population() : cleared(choice);
        for (String socket : choice.filled) {
            population = population.with(socket, kind);
        }
        return population;
    }

    /** Soldered memory of the machine stays. */
    private Population cleared(Choice choice) {
        Population population = Tryouts.population(setup, choice.filled, kind);
        for (Slot slot : setup.board().slots()) {
            if (!slot.isSocket()) {
                population = population.with(slot.label(), setup.population().in(slot.label()));
            }
        }
        return population;
    }

    /** Which sockets hold the kind, and whether the others stay as they are. */
    private record Choice(List<String> filled, boolean othersStay) {
    }
}
