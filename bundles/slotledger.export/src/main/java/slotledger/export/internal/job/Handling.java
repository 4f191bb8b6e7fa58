package slotledger.export.internal.job;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.MachinePlan;

/**
 * How the modules of a machine are taken out and put in, by the way their sockets hold them. Common practice of the
 * trade, no single source, unless a line says otherwise.
 */
enum Handling {
    /** DIMMs, SO-DIMMs, RIMMs and all others that latches hold. */
    LATCHED("Hold modules by their edges. Match the notch to the slot; never force a module. Press until the latches "
            + "close by themselves.",
            "that all latches are closed"),
    /** SIMMs. */
    TILTED("SIMMs: hold them by their edges. Out: open the clips at both ends, tilt the module, then lift it. In: "
            + "match the notch, set the module in at an angle, tilt it until the clips at both ends snap in by "
            + "themselves. Never force it: old clips break.",
            "that the clips at both ends of each SIMM are closed"),
    /** CAMM2 and LPCAMM2. */
    SCREWED("CAMM2 modules: never touch the land grid, neither the module's nor the board's, and keep it free of dust. "
            + "Loosen and tighten the screws bit by bit, in the order and as firmly as the maker's manual says.",
            "that all screws are tight"),
    /** RIMM sockets are never empty (service manual of a RIMM desktop; Abit CX6 manual). */
    NEVER_EMPTY("Every RIMM socket must hold a module or a continuity module before power-on. A continuity module is a "
            + "RIMM without chips; keep those you take out.",
            "that no RIMM socket is empty");

    private static final Set<Form> SIMMS = EnumSet.of(Form.SIMM_30, Form.SIMM_72);
    private static final Set<Form> CAMMS = EnumSet.of(Form.CAMM2, Form.LPCAMM2);
    private static final Set<Form> RIMMS = EnumSet.of(Form.RIMM_184, Form.RIMM_232);

    private final String caution;
    private final String check;

    Handling(String caution, String check) {
        this.caution = caution;
        this.check = check;
    }

    /** The cautions for what is handled in a machine. */
    static List<String> of(MachinePlan plan) {
        return ways(plan).stream().map(way -> way.caution).toList();
    }

    /** "that all latches are closed and that no RIMM socket is empty". */
    static String checks(MachinePlan plan) {
        return String.join(" and ", ways(plan).stream().map(way -> way.check).toList());
    }

    private static Set<Handling> ways(MachinePlan plan) {
        Set<Handling> ways = EnumSet.noneOf(Handling.class);
        plan.moves().forEach(move -> ways.add(way(move.content())));
        if (plan.after().contents().values().stream().anyMatch(Handling::isChained)) {
            ways.add(NEVER_EMPTY);
        }
        return ways;
    }

    private static Handling way(SlotContent content) {
        Optional<Form> form = content.module().flatMap(ModuleKind::form);
        if (form.filter(SIMMS::contains).isPresent()) {
            return TILTED;
        }
        return form.filter(CAMMS::contains).isPresent() ? SCREWED : LATCHED;
    }

    private static boolean isChained(SlotContent content) {
        return content.module().flatMap(ModuleKind::form).filter(RIMMS::contains).isPresent();
    }
}
