package slotledger.model.board;

/** How strictly a fill order binds. */
public enum Binding {
    /** The document says must: other populations are not allowed. */
    REQUIRED,
    /** The document recommends: other populations run, maybe slower. */
    RECOMMENDED
}
