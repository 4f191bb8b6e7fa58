package slotledger.rules.internal.rdram;

import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.EccOutcome;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A board that checks RDRAM wants 18-bit modules in all sockets, or its checking turned off. */
@Component(service = MemoryRule.class)
@RuleId("rimm-ecc")
public final class RimmEcc extends RdramRule {

    public RimmEcc() {
        super(new RulePage(
                "rimm-ecc",
                "ECC works only where every RIMM is an 18-bit one; an 18-bit RIMM works on a board without ECC, a "
                        + "16-bit one not where ECC is turned on.",
                Source.document("Intel Desktop Board D850GB manual", "section 1.5.3: ECC only if all modules are "
                        + "ECC; that 18-bit modules work without it is from memory"),
                "Chips of an 18-bit RIMM have 144 or 288 Mbit, those of a 16-bit one 128 or 256; the label says ECC.",
                "Use 18-bit RIMMs in all sockets, or turn ECC off in the firmware setup before a 16-bit one goes in.",
                "A board with ECC on holds 2 x 256 MB ECC. 2 x 128 MB without ECC go in only after ECC is turned "
                        + "off, and then nothing of the 768 MB is checked."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        boolean plain = false;
        boolean checked = false;
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.way().ecc() == EccOutcome.USED) {
                plain |= isPlain(module.kind());
                checked |= !isPlain(module.kind());
            }
        }
        if (plain) {
            collector.report(Weight.CAUTION, () -> Statement.of(
                            "The module in %s has no bits for ECC: the board starts only with ECC off in its setup."
                                    .formatted(String.join(", ", plain(modules))))
                    .in(plain(modules)));
        } else if (checked) {
            collector.report(Weight.PASSES, () -> Statement.of("No module is known to lack the bits for ECC."));
        }
    }

    private static boolean isPlain(ModuleKind kind) {
        return kind.errorCheck().isPresent()
                ? kind.errorCheck().get() == ErrorCheck.NONE
                : kind.chipWidth().isPresent() && kind.chipWidth().get() == ChipWidth.X16;
    }

    private static List<String> plain(List<Placed> modules) {
        List<String> labels = new ArrayList<>();
        for (Placed module : modules) {
            if (module.way().ecc() == EccOutcome.USED && isPlain(module.kind())) {
                labels.add(module.label());
            }
        }
        return labels;
    }
}
