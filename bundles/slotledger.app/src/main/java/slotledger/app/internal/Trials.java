package slotledger.app.internal;

import java.util.ArrayList;
import java.util.List;
import slotledger.app.Trial;
import slotledger.model.board.Slot;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** Tries a module kind in the sockets of a machine. */
final class Trials {

    private final MemoryRules rules;
    private final Setup setup;

    Trials(MemoryRules rules, Fleet fleet, Machine machine) {
        this.rules = rules;
        this.setup = Setup.of(fleet, machine);
    }

    /** In each socket, the others as they are; then in all sockets at once. */
    List<Trial> of(ModuleKind kind) {
        List<String> sockets = setup.board().sockets().stream().map(Slot::label).toList();
        List<Trial> trials = new ArrayList<>();
        for (String socket : sockets) {
            trials.add(trial(List.of(socket), kind));
        }
        if (sockets.size() > 1) {
            trials.add(trial(sockets, kind));
        }
        return trials;
    }

    private Trial trial(List<String> sockets, ModuleKind kind) {
        Population population = setup.population();
        for (String socket : sockets) {
            population = population.with(socket, kind);
        }
        return new Trial(sockets, population, rules.judge(setup.with(population)));
    }
}
