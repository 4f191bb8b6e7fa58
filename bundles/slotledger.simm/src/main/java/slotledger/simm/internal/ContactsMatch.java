package slotledger.simm.internal;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.ContactMetal;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Gold goes to gold and tin to tin. */
@Component(service = MemoryRule.class)
@RuleId("simm-contacts")
public final class ContactsMatch extends SimmModuleRule {

    public ContactsMatch() {
        super(new RulePage(
                "simm-contacts",
                "The contacts of a module are of the same metal as those of its socket.",
                Source.of(Ground.PRACTICE),
                "Look at the edge of the module and into the socket in daylight: gold is yellow, tin is silver grey.",
                "Choose modules with contacts like the socket's. Where that can't be, clean and reseat them once a "
                        + "year.",
                "Gold modules in 4 tin sockets work on the first day. Tin oxide then settles on the gold (fretting), "
                        + "and after a year or 2 one module is counted only now and then."));
    }

    @Override
    Optional<Weight> weighInPageMode(Placed module) {
        Optional<ContactMetal> socket = module.way().contacts();
        return socket.isEmpty() ? SILENT : module.kind().contacts().equals(socket) ? PASSES : CAUTION;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String socket = module.way().contacts().orElseThrow().text();
        Statement statement = Statement.of(module.kind().contacts()
                        .map(metal -> "%s has %s contacts, its socket has %s: they may fret.".formatted(
                                module, metal.text(), socket))
                        .orElseGet(() -> "%s has contacts of a metal that is not known; its socket has %s."
                                .formatted(module, socket)))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.CONTACTS));
        return module.kind().contacts().isPresent()
                ? statement
                : statement.advising(MissingFact.CONTACTS.cheapestWay());
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("Modules and sockets have contacts of one metal.")
                .by(situation.board().sourceOf(BoardFact.CONTACTS));
    }
}
