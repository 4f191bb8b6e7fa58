package slotledger.model.trade;

/** For which packs a price by quantity holds. */
public enum PriceRule {

    /** The price of the quantity ordered holds for all packs. */
    ALL_PACKS,

    /** Each price holds for the packs from its quantity on; those before keep theirs. */
    FURTHER_PACKS
}
