package slotledger.model.trade;

/** For which packs a price by quantity holds. */
public enum PriceRule {

    /** The price of the quantity ordered holds for all packs. */
    ALL_PACKS("all packs"),

    /** Each price holds for the packs from its quantity on; those before keep theirs. */
    FURTHER_PACKS("further packs");

    private final String text;

    PriceRule(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
