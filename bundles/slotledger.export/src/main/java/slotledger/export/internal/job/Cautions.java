package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slotledger.model.board.BoardForm;
import slotledger.model.module.Buffering;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.MachinePlan;

/** What to heed for people and parts. Common practice of the trade, no single source, unless a line says otherwise. */
final class Cautions {

    private Cautions() {
    }

    static List<String> of(MachinePlan plan, BoardForm form) {
        List<String> lines = new ArrayList<>();
        lines.add("The maker's manual, local rules and the people licensed for electrical work come first; where "
                + "they say otherwise, do as they say.");
        lines.addAll(switch (form) {
            case NOTEBOOK -> List.of(
                    "Shut down fully (no sleep), unplug the power adapter, then disconnect or take out the battery as "
                            + "the maker's manual says, before you touch a module.",
                    "Hold the power button for some seconds to drain what is left.");
            case SERVER -> List.of(
                    "Ask for the downtime, shut down, unplug every power cord (there can be two or more), wait until "
                            + "the lights on the board are off.",
                    "Put back blanks, air baffle and cover before power-on: they guide the cooling air.");
            case DESKTOP, SMALL_DESKTOP, ALL_IN_ONE, WORKSTATION, OTHER -> List.of(
                    "Shut down fully, switch off and unplug the power cord.",
                    "Hold the power button for some seconds to drain what is left.");
        });
        lines.add("Wear an antistatic wrist strap or touch bare metal of the case; "
                + "keep modules in their bags until used.");
        lines.add(runsHot(plan)
                ? "These modules run VERY hot: let them cool down before you touch them."
                : "Let hot modules cool down before you touch them.");
        lines.addAll(Handling.of(plan));
        return lines;
    }

    /** RDRAM and fully buffered modules (service manual of a RIMM desktop: "modules run very hot"). */
    private static boolean runsHot(MachinePlan plan) {
        return Stream.concat(plan.before().modules().stream(), plan.after().modules().stream())
                .anyMatch(Cautions::isHot);
    }

    private static boolean isHot(ModuleKind kind) {
        return kind.buffering().filter(Buffering.FULLY_BUFFERED::equals).isPresent()
                || kind.generation().filter(Generation.RDRAM::equals).isPresent();
    }
}
