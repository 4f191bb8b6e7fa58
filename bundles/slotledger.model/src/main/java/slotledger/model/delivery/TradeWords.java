package slotledger.model.delivery;

import slotledger.model.machine.AssetTag;

/** What happened to an order, in words that go on after a person's name. */
public final class TradeWords {

    private TradeWords() {
    }

    /** "approved the order of plan 2, answered for by the head of school". */
    public static String of(TradeEvent event) {
        String order = "the order of plan " + event.plan();
        if (event instanceof TradeEvent.Approved approved) {
            return "approved " + order + ", answered for by " + approved.by();
        }
        if (event instanceof TradeEvent.Sent sent) {
            return "sent " + order + " to " + sent.supplier() + " on " + sent.day();
        }
        if (event instanceof TradeEvent.Confirmed said) {
            return said.supplier() + " confirmed " + order + " on " + said.day();
        }
        if (event instanceof TradeEvent.Received came) {
            return "received of " + came.offer() + ": " + came.good() + " good, " + came.wrong() + " wrong, "
                    + came.dead() + " dead" + (came.tested() ? ", tested" : "")
                    + (came.note().isEmpty() ? "" : " (" + came.note() + ")");
        }
        if (event instanceof TradeEvent.Drawn drawn) {
            return "drew " + of(drawn);
        }
        return "ended " + order + ": nothing more will come";
    }

    /** "2 x Alder/D4-8 on 2026-12-02 for K-17: dead on arrival". */
    public static String of(TradeEvent.Drawn drawn) {
        return drawn.modules() + " x " + drawn.offer() + " on " + drawn.day()
                + drawn.machine().map(AssetTag::value).map(tag -> " for " + tag).orElse("") + ": " + drawn.reason();
    }
}
